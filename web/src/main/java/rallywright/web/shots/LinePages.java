package rallywright.web.shots;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import rallywright.engine.aim.LineTable;
import rallywright.engine.aim.ShotSetting;
import rallywright.engine.aim.UsualShot;
import rallywright.web.page.Form;
import rallywright.web.page.PageFrames;
import rallywright.web.page.Units;

/** Straight against cross-court, computed for a level. */
@Controller
final class LinePages {

  private final ShotDesk desk;
  private final PageFrames frames;

  LinePages(ShotDesk desk, PageFrames frames) {
    this.desk = desk;
    this.frames = frames;
  }

  @GetMapping("/shots/lines")
  String lines(HttpServletRequest request, HttpServletResponse response, Model model) {
    Asked asked = Asked.of(frames, "Straight or cross-court", request);
    ShotSetting usual = UsualShot.DROP_STRAIGHT.usual();
    double level = asked.number(ShotField.LEVEL, usual);
    asked.show(
        model,
        response,
        Form.empty().with("level", ShotField.LEVEL.shown(usual.at(level), asked.units())));
    model.addAttribute("rows", rows(desk.lines(level), asked.units()));
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
