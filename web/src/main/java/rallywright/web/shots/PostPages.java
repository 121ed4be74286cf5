package rallywright.web.shots;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import rallywright.engine.aim.ShotSetting;
import rallywright.engine.aim.ShotSetting.Day;
import rallywright.engine.aim.UsualShot;
import rallywright.web.page.AllowedNumber;
import rallywright.web.page.Form;
import rallywright.web.page.PageFrames;
import rallywright.web.page.Units;

/** From how wide a ball can be played round the post, in any wind. */
@Controller
final class PostPages {

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
    Asked asked = Asked.of(frames, "Round the post", request);
    Units units = asked.units();
    ShotSetting usual = UsualShot.DINK_CROSS.usual();
    double wind = asked.number(ShotField.WIND, usual);
    double from = asked.number(ShotField.WIND_FROM, usual);
    double angle = asked.in().number(ANGLE, ANGLES).orElse(USUAL_ANGLE);
    Day day = asked.in().failed() ? Day.CALM : Day.CALM.withWind(wind, from);
    asked.show(model, response, filled(usual.on(day), angle, units));
    model.addAttribute("post", PostView.of(day, angle, units));
    return "shots/post";
  }

  private static Form filled(ShotSetting setting, double angle, Units units) {
    return Form.empty()
        .with("wind", ShotField.WIND.shown(setting, units))
        .with("from", ShotField.WIND_FROM.shown(setting, units))
        .with(ANGLE, String.valueOf(Math.round(angle)));
  }
}
