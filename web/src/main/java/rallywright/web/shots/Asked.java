package rallywright.web.shots;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.springframework.ui.Model;
import rallywright.engine.aim.ShotSetting;
import rallywright.web.page.Form;
import rallywright.web.page.FormReader;
import rallywright.web.page.PageFrame;
import rallywright.web.page.PageFrames;
import rallywright.web.page.Units;

/**
 * What was asked of one of the pages of shots: its frame, and its fields as they come in.
 *
 * @param frame what stands around the page
 * @param in the fields
 */
record Asked(PageFrame frame, FormReader in) {

  private static final int UNPROCESSABLE = 422;

  static Asked of(PageFrames frames, String title, HttpServletRequest request) {
    return new Asked(frames.frame(title, PageFrame.Part.SHOTS, request), FormReader.of(request));
  }

  Units units() {
    return frame.units();
  }

  /** A number of a shot in metric units; that of the usual shot where the field is missing. */
  double number(ShotField field, ShotSetting usual) {
    return field.read(in, "", units(), usual);
  }

  /** Gives the page its frame and its form: what was typed where something in it is wrong. */
  void show(Model model, HttpServletResponse response, Form worked) {
    if (in.failed()) {
      response.setStatus(UNPROCESSABLE);
    }
    model.addAttribute("frame", frame);
    model.addAttribute("form", in.failed() ? in.form() : worked);
  }
}
