package rallywright.paper;

import java.util.Locale;
import java.util.Map;
import rallywright.paper.press.PdfPress;
import rallywright.paper.press.Templates;
import rallywright.paper.rotation.RotationView;

/**
 * The printed rotation: black and white, laid across, a line for each round and a column for each
 * court, to be read from the fence.
 *
 * <p>Up to {@value RotationWriter#ROUNDS_ON_A_PAGE} rounds stand on one page; more go on over
 * pages. Names are as large as their cell allows.
 */
public final class RotationSheet {

  private static final String STYLE = Templates.stylesheet("rotation");

  private RotationSheet() {}

  /**
   * Prints the sheet.
   *
   * @param request the rotation and what belongs to it
   * @param paper the paper in the printer
   * @return a PDF, tagged for screen readers
   */
  public static byte[] pdf(RotationRequest request, PaperSize paper) {
    RotationWriter writer = new RotationWriter(request, paper);
    RotationView view = writer.view();
    return PdfPress.print(
        Templates.fill(
            "rotation/sheet", Map.of("view", view, "style", measures(writer, paper) + STYLE)));
  }

  private static String measures(RotationWriter writer, PaperSize paper) {
    return String.format(
        Locale.ROOT,
        "@page { size: %.1fmm %.1fmm; margin: %.1fmm; }%n"
            + ".rounds tbody tr { height: %.2fmm; }%n"
            + ".rounds .number { width: %.1fmm; }%n"
            + ".rounds th.sitting { width: %.1fmm; }%n",
        paper.longEdgeMm(),
        paper.shortEdgeMm(),
        RotationWriter.EDGE_MM,
        writer.rowMm(),
        RotationWriter.NUMBER_MM,
        writer.sittingMm());
  }
}
