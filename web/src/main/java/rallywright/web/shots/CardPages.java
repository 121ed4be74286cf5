package rallywright.web.shots;

import jakarta.servlet.http.HttpServletRequest;
import org.jspecify.annotations.Nullable;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import rallywright.engine.aim.ShotSetting;
import rallywright.engine.aim.TargetCard;
import rallywright.paper.CardSheet;
import rallywright.web.page.FormReader;
import rallywright.web.page.NotHere;
import rallywright.web.page.PrintedPages;
import rallywright.web.page.UnitChoice;
import rallywright.web.page.Units;

/** The card that says where cones and tape go, as PDF. */
@Controller
final class CardPages {

  private static final int LONGEST_TITLE = 60;

  private final ShotDesk desk;
  private final UnitChoice units;

  CardPages(ShotDesk desk, UnitChoice units) {
    this.desk = desk;
    this.units = units;
  }

  @GetMapping("/shots/card.pdf")
  ResponseEntity<byte[]> card(
      HttpServletRequest request, @RequestParam(defaultValue = "a4") String paper) {
    Units chosen = units.current();
    FormReader in = FormReader.of(request);
    String drill = in.line("drill", "The drill's name", LONGEST_TITLE);
    @Nullable ShotSetting setting = ShotForm.read(in, "", chosen);
    if (setting == null || in.failed()) {
      throw new NotHere(
          in.form().problems().fields().stream()
              .findFirst()
              .map(field -> in.form().problem(field))
              .orElse("The card's address is not complete. Maybe open it from the page again."));
    }
    TargetCard card =
        TargetCard.of(desk.full(setting))
            .orElseThrow(
                () ->
                    new NotHere(
                        "Nothing that can be hit from there does all that is asked, so there is no"
                            + " card. Maybe move the target."));
    return PrintedPages.shown(
        CardSheet.pdf(card, drill, chosen, PrintedPages.paper(paper)), "target-card.pdf");
  }
}
