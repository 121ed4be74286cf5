package rallywright.paper;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import rallywright.paper.press.PdfPress;
import rallywright.paper.press.Templates;
import rallywright.paper.sheet.Density;
import rallywright.paper.sheet.Frame;
import rallywright.paper.sheet.Leaf;
import rallywright.paper.sheet.Setting;
import rallywright.paper.sheet.SheetView;
import rallywright.paper.sheet.Typesetter;

/**
 * The printed page of a session: black and white, laid across, folded once.
 *
 * <p>The sheet is set anew, each time closer, until it fits on one page; if it does not even then,
 * pages follow one another and nothing is cut off. First names only; no health notes and no limits.
 */
public final class CourtSheet {

  private static final String STYLE = Templates.stylesheet("sheet");

  private CourtSheet() {}

  /**
   * Prints the sheet of a session.
   *
   * @param request the session and what belongs to it
   * @param paper the paper in the printer
   * @return a PDF, tagged for screen readers
   */
  public static byte[] pdf(SheetRequest request, PaperSize paper) {
    return PdfPress.print(markup(request, paper));
  }

  /** Does once, in the background, what would make the first sheet slow. */
  public static void warmUp() {
    PdfPress.print(markup(EmptySession.request(), PaperSize.A4));
  }

  private static String markup(SheetRequest request, PaperSize paper) {
    SheetView view = SheetWriter.write(request);
    Frame frame = new Frame(paper.longEdgeMm(), paper.shortEdgeMm());
    Setting setting = onePage(view, frame).orElseGet(() -> manyPages(request, view, frame));
    return Templates.fill(
        "sheet/sheet", Map.of("view", view, "setting", setting, "style", frame.style() + STYLE));
  }

  private static Optional<Setting> onePage(SheetView view, Frame frame) {
    for (Density density : Density.values()) {
      Optional<Leaf> page = typesetter(view, frame, density).onePage();
      if (page.isPresent()) {
        return Optional.of(new Setting(density, List.of(page.get())));
      }
    }
    return Optional.empty();
  }

  /** The fewest pages; blocks are broken more often only where that saves one. */
  private static Setting manyPages(SheetRequest request, SheetView whole, Frame frame) {
    List<Leaf> fewest = typesetter(whole, frame, Density.CLOSE).manyPages();
    for (int rows : SheetWriter.FEWER_ROWS) {
      SheetView broken = SheetWriter.write(request, rows);
      List<Leaf> pages = typesetter(broken, frame, Density.CLOSE).manyPages();
      if (pages.size() < fewest.size()) {
        fewest = pages;
      }
    }
    return new Setting(Density.CLOSE, fewest);
  }

  private static Typesetter typesetter(SheetView view, Frame frame, Density density) {
    String measured =
        Templates.fill(
            "sheet/measure",
            Map.of("view", view, "density", density, "style", frame.measuringStyle() + STYLE));
    return new Typesetter(frame, PdfPress.heightsMm(measured), view.blocks());
  }
}
