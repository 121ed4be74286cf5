package rallywright.web.shots;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import rallywright.engine.aim.ShotAnswer;
import rallywright.engine.aim.ShotSetting;
import rallywright.engine.aim.UsualShot;
import rallywright.web.page.Form;
import rallywright.web.page.FormReader;
import rallywright.web.page.PageFrames;
import rallywright.web.page.Units;

/** What a shot allows: the page with one shot or two, and the answers while one is dragged. */
@Controller
final class ShotPages {

  private static final int UNPROCESSABLE = 422;

  private final ShotDesk desk;
  private final PageFrames frames;

  ShotPages(ShotDesk desk, PageFrames frames) {
    this.desk = desk;
    this.frames = frames;
  }

  @GetMapping("/shots")
  String page(HttpServletRequest request, HttpServletResponse response, Model model) {
    Asked asked = asked(request);
    return show(asked, settings(asked.in(), asked.units()), response, model);
  }

  /** Takes the landings that were typed for one of the shots; the address then has the scatter. */
  @GetMapping("/shots/landings")
  String landings(HttpServletRequest request, HttpServletResponse response, Model model) {
    Asked asked = asked(request);
    Units units = asked.units();
    FormReader in = asked.in();
    List<ShotSetting> settings = settings(in, units);
    int place = in.raw("of").equals("b") ? settings.size() - 1 : 0;
    if (!in.failed()) {
      String prefix = place == 0 ? "" : ShotForm.SECOND;
      settings.set(place, OwnScatter.measured(in, prefix, settings.get(place), units));
    }
    return in.failed()
        ? show(asked, settings, response, model)
        : "redirect:" + address(settings, units) + typed(in);
  }

  private Asked asked(HttpServletRequest request) {
    return Asked.of(frames, "What a shot allows", request);
  }

  private static List<ShotSetting> settings(FormReader in, Units units) {
    List<String> prefixes = new ArrayList<>(List.of(""));
    if (ShotForm.hasSecond(in)) {
      prefixes.add(ShotForm.SECOND);
    }
    List<ShotSetting> settings = new ArrayList<>();
    for (String prefix : prefixes) {
      @Nullable ShotSetting setting = ShotForm.read(in, prefix, units);
      settings.add(setting == null ? asked(in, prefix).usual() : setting);
    }
    return settings;
  }

  /** The landings as typed, as parts of an address. */
  private static String typed(FormReader in) {
    StringBuilder parts = new StringBuilder();
    for (String prefix : List.of("", ShotForm.SECOND)) {
      String name = prefix + OwnScatter.LANDINGS;
      if (!in.raw(name).isBlank()) {
        String text = URLEncoder.encode(in.raw(name), StandardCharsets.UTF_8);
        parts.append('&').append(name).append('=').append(text);
      }
    }
    return parts.toString();
  }

  private String show(
      Asked asked, List<ShotSetting> settings, HttpServletResponse response, Model model) {
    Units units = asked.units();
    asked.show(model, response, filled(asked.in(), settings, units));
    model.addAttribute("shots", views(settings, units));
    model.addAttribute("choices", choices(settings, units));
    model.addAttribute("second", second(settings, units));
    return "shots/page";
  }

  private static UsualShot asked(FormReader in, String prefix) {
    for (UsualShot shot : UsualShot.values()) {
      if (shot.name().equals(in.raw(prefix + "shot"))) {
        return shot;
      }
    }
    return UsualShot.DROP_STRAIGHT;
  }

  private static Form filled(FormReader in, List<ShotSetting> settings, Units units) {
    Form form = Form.empty();
    for (int place = 0; place < settings.size(); place++) {
      String prefix = place == 0 ? "" : ShotForm.SECOND;
      String typed = prefix + OwnScatter.LANDINGS;
      form = ShotForm.filled(form, settings.get(place), prefix, units).with(typed, in.raw(typed));
    }
    return form;
  }

  private List<ShotView> views(List<ShotSetting> settings, Units units) {
    List<ShotView> views = new ArrayList<>();
    for (ShotSetting setting : settings) {
      String prefix = views.isEmpty() ? "" : ShotForm.SECOND;
      views.add(ShotView.of(desk.full(setting), prefix, units));
    }
    return views;
  }

  /** For each shot on the page the usual shots with their addresses; the other one stays. */
  private static List<Map<String, String>> choices(List<ShotSetting> settings, Units units) {
    List<Map<String, String>> all = new ArrayList<>();
    for (int place = 0; place < settings.size(); place++) {
      Map<String, String> choices = new LinkedHashMap<>();
      for (UsualShot shot : UsualShot.values()) {
        ShotSetting now = settings.get(place);
        ShotSetting other = shot.usual().on(now.day()).at(now.level());
        List<ShotSetting> then = new ArrayList<>(settings);
        then.set(place, other);
        choices.put(shot.words(), address(then, units));
      }
      all.add(choices);
    }
    return all;
  }

  private static String address(List<ShotSetting> settings, Units units) {
    String first = "/shots?" + ShotForm.query(settings.get(0), "", units);
    return settings.size() == 1
        ? first
        : first + "&" + ShotForm.query(settings.get(1), ShotForm.SECOND, units);
  }

  /** The address with a second shot, or without it where there is one. */
  private static String second(List<ShotSetting> settings, Units units) {
    ShotSetting first = settings.get(0);
    return settings.size() > 1
        ? address(List.of(first), units)
        : address(List.of(first, first), units);
  }

  /**
   * What the pictures of one shot show now.
   *
   * @param asked the number of the question, given back
   * @param parts attributes by part
   * @param words sentences by their places
   * @param more the sentences of a full answer
   * @param query the shot as part of an address
   * @param problems a sentence for each field that is wrong
   */
  record Answer(
      String asked,
      Map<String, Map<String, String>> parts,
      Map<String, String> words,
      List<String> more,
      String query,
      Map<String, String> problems) {}

  @GetMapping("/shots/answer")
  ResponseEntity<Answer> answer(HttpServletRequest request) {
    Asked question = asked(request);
    Units units = question.units();
    FormReader in = question.in();
    String asked = in.line("asked", "The number of the question", 12);
    boolean live = in.raw("detail").equals("live");
    @Nullable ShotSetting setting = ShotForm.read(in, "", units);
    if (setting == null || in.failed()) {
      return ResponseEntity.status(UNPROCESSABLE).body(refused(asked, in.form()));
    }
    ShotAnswer answer = live ? desk.live(setting) : desk.full(setting);
    WindowFigure figure = WindowFigure.of(setting.shot().style(), units);
    ShotView.Words words = ShotView.Words.of(answer, units);
    return ResponseEntity.ok(
        new Answer(
            asked,
            ShotPicture.parts(answer, figure),
            words.byPlace(),
            words.more(),
            ShotForm.query(setting, "", units),
            Map.of()));
  }

  private static Answer refused(String asked, Form form) {
    Map<String, String> problems = new LinkedHashMap<>();
    form.problems().fields().forEach(field -> problems.put(field, form.problem(field)));
    return new Answer(asked, Map.of(), Map.of(), List.of(), "", problems);
  }
}
