package rallywright.web.rotation;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Objects;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import rallywright.engine.club.Group;
import rallywright.engine.club.PlayerId;
import rallywright.engine.rotation.DayStyle;
import rallywright.engine.rotation.PlayDay;
import rallywright.engine.rotation.SavedDay;
import rallywright.store.ClubStore;
import rallywright.web.page.Confirmation;
import rallywright.web.page.DayWords;
import rallywright.web.page.Form;
import rallywright.web.page.FormReader;
import rallywright.web.page.PageFrame;
import rallywright.web.page.PageFrames;

/** The list of days of games, and the form for a new one. */
@Controller
final class RotationPages {

  private static final int UNPROCESSABLE = 422;

  private static final int USUAL_COURTS = 3;

  private final ClubStore store;
  private final RotationDesk desk;
  private final PageFrames frames;

  RotationPages(ClubStore store, RotationDesk desk, PageFrames frames) {
    this.store = store;
    this.desk = desk;
    this.frames = frames;
  }

  @GetMapping("/rotations")
  String list(HttpServletRequest request, Model model) {
    model.addAttribute("frame", frames.frame("Rotations", PageFrame.Part.SESSIONS, request));
    model.addAttribute("lines", desk.all().stream().map(RotationPages::line).toList());
    return "rotation/list";
  }

  private static RotationLine line(SavedDay saved) {
    return new RotationLine(
        saved.id(), saved.name(), DayWords.of(saved.date()), state(saved.day()));
  }

  private static String state(PlayDay day) {
    if (day.now() == 0) {
      return "planned";
    }
    return day.isOver() ? "last round" : "round " + day.now();
  }

  @GetMapping("/rotations/new")
  String blank(HttpServletRequest request, Model model) {
    String group = Objects.toString(request.getParameter("group"), "");
    String[] ticked =
        store.groups().all().stream()
            .filter(each -> each.id().value().equals(group))
            .flatMap(each -> each.members().stream())
            .map(PlayerId::value)
            .toArray(String[]::new);
    Form form =
        Form.empty()
            .with("who", ticked)
            .with("name", "Games")
            .with("date", LocalDate.now(ZoneId.systemDefault()).toString())
            .with("minutes", "90")
            .with("each", "12")
            .with("courts", String.valueOf(Math.max(1, Math.min(12, ticked.length / 4))))
            .with("style", DayStyle.NEW_PARTNERS.name())
            .with("game", RotationForm.DOUBLES)
            .with("even", RotationForm.EVEN)
            .with("group", group);
    return show(form, List.of(), request, model);
  }

  @PostMapping("/rotations/new")
  String make(
      HttpServletRequest request,
      HttpServletResponse response,
      RedirectAttributes redirect,
      Model model) {
    FormReader in = FormReader.of(request);
    RotationForm.Wished wished = desk.form().read(in);
    if (wished == null) {
      response.setStatus(UNPROCESSABLE);
      return show(in.form(), List.of(), request, model);
    }
    RotationDesk.Outcome outcome = desk.make(wished);
    if (!outcome.refused().isEmpty()) {
      response.setStatus(UNPROCESSABLE);
      return show(in.form(), outcome.refused(), request, model);
    }
    Confirmation.say(redirect, "The rounds are ready. Print them, or begin round 1.");
    return "redirect:/rotations/" + outcome.id();
  }

  private String show(Form form, List<String> refused, HttpServletRequest request, Model model) {
    model.addAttribute("frame", frames.frame("Make a rotation", PageFrame.Part.SESSIONS, request));
    model.addAttribute("form", form);
    model.addAttribute("refused", refused);
    model.addAttribute("players", desk.form().players());
    RoundTimes times = desk.roundTimes(courts(form));
    model.addAttribute("games", times.games());
    model.addAttribute("styles", StyleChoice.all());
    model.addAttribute("roundHint", times.hint());
    model.addAttribute("groups", groups());
    return "rotation/new";
  }

  /** The courts of the form, or the usual number where no number stands there yet. */
  private static int courts(Form form) {
    String courts = form.value("courts");
    boolean known = courts.matches("[1-9]|1[0-2]");
    return known ? Integer.parseInt(courts) : USUAL_COURTS;
  }

  private List<Group> groups() {
    return store.groups().all();
  }
}
