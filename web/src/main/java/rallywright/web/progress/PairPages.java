package rallywright.web.progress;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import rallywright.engine.club.Player;
import rallywright.engine.club.PlayerId;
import rallywright.web.page.Form;
import rallywright.web.page.FormReader;
import rallywright.web.page.PageFrame;
import rallywright.web.page.PageFrames;

/** How four players would split into two pairs, and how even each game would be. */
@Controller
final class PairPages {

  private static final int UNPROCESSABLE = 422;
  private static final List<String> FIELDS = List.of("one", "two", "three", "four");

  private final ShownPlayers players;
  private final ClubReadings readings;
  private final PageFrames frames;

  PairPages(ShownPlayers players, ClubReadings readings, PageFrames frames) {
    this.players = players;
    this.readings = readings;
    this.frames = frames;
  }

  @GetMapping("/progress/pairs")
  String pairs(HttpServletRequest request, HttpServletResponse response, Model model) {
    List<Player> all = players.of(Optional.empty());
    boolean enough = all.size() >= FIELDS.size();
    FormReader in = FormReader.of(request);
    Form form = chosen(in) ? in.form() : firstFour(all, enough);
    List<PairSplit> splits = List.of();
    if (enough) {
      check(in, form, all);
      if (in.failed()) {
        response.setStatus(UNPROCESSABLE);
        form = in.form();
      } else {
        splits = PairSplit.of(four(form), readings.points(), players::firstName);
      }
    }
    model.addAttribute("frame", frames.frame("Two pairs", PageFrame.Part.PROGRESS, request));
    model.addAttribute("form", form);
    model.addAttribute("options", options(all));
    model.addAttribute("enough", enough);
    model.addAttribute("splits", splits);
    return "progress/pairs";
  }

  private static boolean chosen(FormReader in) {
    return FIELDS.stream().anyMatch(field -> !in.raw(field).isBlank());
  }

  private static Form firstFour(List<Player> all, boolean enough) {
    Form form = Form.empty();
    for (int place = 0; enough && place < FIELDS.size(); place++) {
      form = form.with(FIELDS.get(place), all.get(place).id().value());
    }
    return form;
  }

  /** Everybody chosen must be on the list, and on one place only. */
  private static void check(FormReader in, Form form, List<Player> all) {
    Map<String, String> names = options(all);
    for (int place = 0; place < FIELDS.size(); place++) {
      String field = FIELDS.get(place);
      String id = form.value(field);
      String name = names.get(id);
      if (name == null) {
        in.problem(field, "Nobody of the list stands here. Maybe choose a name.");
      } else if (FIELDS.subList(0, place).stream().anyMatch(one -> form.value(one).equals(id))) {
        in.problem(field, name + " stands on two places. Maybe choose somebody else here.");
      }
    }
  }

  private static List<PlayerId> four(Form form) {
    return FIELDS.stream().map(field -> new PlayerId(form.value(field))).toList();
  }

  private static Map<String, String> options(List<Player> all) {
    Map<String, String> options = new LinkedHashMap<>();
    all.forEach(player -> options.put(player.id().value(), player.name()));
    return options;
  }
}
