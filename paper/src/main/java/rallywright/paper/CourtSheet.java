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
    Frame frame = new Frame(paper.longEdgeMm(), paper.shortEdgeMm());
    Setting setting = onePage(request, frame).orElseGet(() -> manyPages(request, frame));
    return Templates.fill(
        "sheet/sheet",
        Map.of(
            "view",
            SheetWriter.write(request),
            "setting",
            setting,
            "style",
            frame.style() + STYLE));
  }

  /** One page with the most room that it leaves; the closest density is tried with closer rows. */
  private static Optional<Setting> onePage(SheetRequest request, Frame frame) {
    SheetView usual = SheetWriter.write(request);
    for (Density density : Density.values()) {
      Optional<Setting> page = onePage(usual, frame, density);
      if (page.isPresent()) {
        return page;
      }
    }
    return Arrangement.CLOSER.stream()
        .map(closer -> onePage(SheetWriter.write(request, closer), frame, Density.FULLEST))
        .flatMap(Optional::stream)
        .findFirst();
  }

  private static Optional<Setting> onePage(SheetView view, Frame frame, Density density) {
    return typesetter(view, frame, density)
        .onePage()
        .map(page -> new Setting(density, List.of(page)));
  }

  /** The fewest pages; blocks are broken more often only where that saves one. */
  private static Setting manyPages(SheetRequest request, Frame frame) {
    List<Leaf> whole = typesetter(SheetWriter.write(request), frame, Density.CLOSE).manyPages();
    List<Leaf> broken =
        typesetter(SheetWriter.write(request, Arrangement.BROKEN), frame, Density.CLOSE)
            .manyPages();
    return new Setting(Density.CLOSE, broken.size() < whole.size() ? broken : whole);
  }

  private static Typesetter typesetter(SheetView view, Frame frame, Density density) {
    String measured =
        Templates.fill(
            "sheet/measure",
            Map.of("view", view, "density", density, "style", frame.measuringStyle() + STYLE));
    return new Typesetter(frame, PdfPress.heightsMm(measured), view.blocks());
  }
}
