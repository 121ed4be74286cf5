package rallywright.web.shots;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import rallywright.engine.aim.PostRegion;
import rallywright.engine.aim.ShotSetting.Day;
import rallywright.engine.aim.UsualShot;
import rallywright.web.page.AllowedNumber;
import rallywright.web.page.Form;
import rallywright.web.page.FormReader;
import rallywright.web.page.PageFrame;
import rallywright.web.page.PageFrames;
import rallywright.web.page.Units;

/** From how wide a ball can be played round the post, in any wind. */
@Controller
final class PostPages {

  private static final int UNPROCESSABLE = 422;
  private static final String ANGLE = "angle";
  private static final double USUAL_ANGLE = 45;

  private static final AllowedNumber ANGLES =
      new AllowedNumber("The dink’s angle in degrees", 20, 75, "Maybe 45.");

  private final PageFrames frames;

  PostPages(PageFrames frames) {
    this.frames = frames;
  }

  @GetMapping("/shots/post")
  String post(HttpServletRequest request, HttpServletResponse response, Model model) {
    PageFrame frame = frames.frame("Round the post", PageFrame.Part.SHOTS, request);
    Units units = frame.units();
    FormReader in = FormReader.of(request);
    double wind = number(in, ShotField.WIND, units);
    double from = number(in, ShotField.WIND_FROM, units);
    double angle = in.number(ANGLE, ANGLES).orElse(USUAL_ANGLE);
    Day day = in.failed() ? Day.CALM : Day.CALM.withWind(wind, from);
    if (in.failed()) {
      response.setStatus(UNPROCESSABLE);
    }
    model.addAttribute("frame", frame);
    model.addAttribute("form", in.failed() ? in.form() : filled(day, angle, units));
    model.addAttribute(
        "post", PostView.of(PostRegion.of(day, Math.toRadians(angle)), angle, units));
    return "shots/post";
  }

  private static double number(FormReader in, ShotField field, Units units) {
    return in.number(field.field(), field.allowed(units, UsualShot.DINK_CROSS.usual())).stream()
        .map(shown -> field.metric(shown, units))
        .findFirst()
        .orElse(0);
  }

  private static Form filled(Day day, double angle, Units units) {
    var setting = UsualShot.DINK_CROSS.usual().on(day);
    return Form.empty()
        .with("wind", ShotField.WIND.shown(setting, units))
        .with("from", ShotField.WIND_FROM.shown(setting, units))
        .with(ANGLE, String.valueOf(Math.round(angle)));
  }
}
