package rallywright.paper;

import java.util.Locale;
import java.util.Map;
import rallywright.engine.aim.Measures;
import rallywright.engine.aim.TargetCard;
import rallywright.paper.press.PdfPress;
import rallywright.paper.press.Templates;

/**
 * The card that a coach takes to the court: where cones, tape and a string over the net go for a
 * shot at a player's level. One page, upright, black and white, the drawing to scale.
 */
public final class CardSheet {

  /** White around the page. */
  static final double EDGE_MM = 13;

  private static final String STYLE = Templates.stylesheet("card");

  private CardSheet() {}

  /**
   * Prints the card.
   *
   * @param card where everything goes
   * @param drill the drill that it is for, or an empty text
   * @param measures the coach's units
   * @param paper the paper in the printer
   * @return a PDF of one page, tagged for screen readers
   */
  public static byte[] pdf(TargetCard card, String drill, Measures measures, PaperSize paper) {
    String page =
        String.format(
            Locale.ROOT,
            "@page { size: %.1fmm %.1fmm; margin: %.1fmm; }%n",
            paper.shortEdgeMm(),
            paper.longEdgeMm(),
            EDGE_MM);
    return PdfPress.print(
        Templates.fill(
            "card/card",
            Map.of(
                "card",
                new CardWords(card, PrintableText.of(drill), measures).view(),
                "style",
                page + STYLE)));
  }
}
