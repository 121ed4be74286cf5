package rallywright.web.settings;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.LinkedHashMap;
import java.util.Map;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import rallywright.web.page.Confirmation;
import rallywright.web.page.Form;
import rallywright.web.page.FormReader;
import rallywright.web.page.PageFrames;
import rallywright.web.page.UnitChoice;
import rallywright.web.page.Units;
import rallywright.web.signin.CoachPassword;
import rallywright.web.signin.SignedIn;
import rallywright.web.signin.Visitor;

/** The settings of the club. */
@Controller
final class SettingsPages {

  private static final int UNPROCESSABLE = 422;

  private final PageFrames frames;
  private final UnitChoice units;
  private final CoachPassword password;
  private final SignedIn signedIn;

  SettingsPages(PageFrames frames, UnitChoice units, CoachPassword password, SignedIn signedIn) {
    this.frames = frames;
    this.units = units;
    this.password = password;
    this.signedIn = signedIn;
  }

  @GetMapping("/settings")
  String page(HttpServletRequest request, Model model) {
    return show(Form.empty(), request, model);
  }

  @PostMapping("/settings/units")
  String chooseUnits(
      HttpServletRequest request,
      HttpServletResponse response,
      RedirectAttributes redirect,
      Model model) {
    FormReader in = FormReader.of(request);
    Units chosen = in.choice("units", "The unit", units.current());
    if (in.failed()) {
      response.setStatus(UNPROCESSABLE);
      return show(in.form(), request, model);
    }
    units.choose(chosen);
    Confirmation.say(redirect, "Pages are written in " + chosen.words() + " now.");
    return "redirect:/settings";
  }

  @PostMapping("/settings/password")
  String changePassword(
      HttpServletRequest request,
      HttpServletResponse response,
      RedirectAttributes redirect,
      Model model) {
    FormReader in = FormReader.of(request);
    if (password.isSet() && !password.matches(in.raw("current"))) {
      in.problem("current", "This is not the password that is set now. Type it once more.");
    }
    if (!in.raw("fresh").equals(in.raw("again"))) {
      in.problem("again", "The two new passwords differ. Type the new one twice.");
    }
    if (!in.failed()) {
      in.built(
          "fresh",
          () -> {
            password.set(in.raw("fresh"));
            return password;
          });
    }
    if (in.failed()) {
      response.setStatus(UNPROCESSABLE);
      return show(in.form(), request, model);
    }
    signedIn.enter(new Visitor.Coach(), request, response);
    Confirmation.say(redirect, "The password is set. Every other device has to sign in again.");
    return "redirect:/settings";
  }

  private String show(Form form, HttpServletRequest request, Model model) {
    model.addAttribute("frame", frames.frame("Settings", null, request));
    model.addAttribute("form", form.with("units", units.current().name()));
    Map<String, String> offered = new LinkedHashMap<>();
    for (Units each : Units.values()) {
      offered.put(each.name(), each.words());
    }
    model.addAttribute("units", offered);
    model.addAttribute("passwordSet", password.isSet());
    return "settings/settings";
  }
}
