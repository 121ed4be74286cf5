package rallywright.web.shots;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import rallywright.engine.aim.LineTable;
import rallywright.engine.aim.UsualShot;
import rallywright.web.page.FormReader;
import rallywright.web.page.PageFrame;
import rallywright.web.page.PageFrames;
import rallywright.web.page.Units;

/** Straight against cross-court, computed for a level. */
@Controller
final class LinePages {

  private static final int UNPROCESSABLE = 422;

  private final ShotDesk desk;
  private final PageFrames frames;

  LinePages(ShotDesk desk, PageFrames frames) {
    this.desk = desk;
    this.frames = frames;
  }

  @GetMapping("/shots/lines")
  String lines(HttpServletRequest request, HttpServletResponse response, Model model) {
    PageFrame frame = frames.frame("Straight or cross-court", PageFrame.Part.SHOTS, request);
    Units units = frame.units();
    FormReader in = FormReader.of(request);
    UsualShot usual = UsualShot.DROP_STRAIGHT;
    double level =
        in.number("level", ShotField.LEVEL.allowed(units, usual.usual()))
            .orElse(usual.usual().level());
    if (in.failed()) {
      response.setStatus(UNPROCESSABLE);
    }
    model.addAttribute("frame", frame);
    model.addAttribute(
        "form",
        in.failed()
            ? in.form()
            : in.form().with("level", ShotField.LEVEL.shown(usual.usual().at(level), units)));
    model.addAttribute("rows", rows(desk.lines(level), units));
    return "shots/lines";
  }

  private static List<LineRow> rows(List<LineTable> tables, Units units) {
    return tables.stream()
        .flatMap(
            table ->
                List.of(
                    LineRow.of(table.shot(), "straight", table.straight(), units),
                    LineRow.of(table.shot(), "cross-court", table.cross(), units))
                    .stream())
        .toList();
  }
}
