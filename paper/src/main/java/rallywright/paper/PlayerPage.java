package rallywright.paper;

import java.util.Map;
import rallywright.paper.press.PdfPress;
import rallywright.paper.press.Templates;
import rallywright.paper.sheet.PlayerHandout;

/**
 * The page that a coach hands to a player: black and white, upright, in words first.
 *
 * <p>Every estimate is drawn as a bar with soft ends beside its sentence, never as one number.
 */
public final class PlayerPage {

  private static final String STYLE = Templates.stylesheet("player");

  private PlayerPage() {}

  /**
   * Prints the page.
   *
   * @param handout what stands on it
   * @param paper the paper in the printer
   * @return a PDF, tagged for screen readers
   */
  public static byte[] pdf(PlayerHandout handout, PaperSize paper) {
    String page =
        String.format(
            java.util.Locale.ROOT,
            "@page { size: %.1fmm %.1fmm; margin: 15mm 16mm; }%n",
            paper.shortEdgeMm(),
            paper.longEdgeMm());
    return PdfPress.print(
        Templates.fill("player/page", Map.of("page", handout, "style", page + STYLE)));
  }
}
