package rallywright.paper.press;

import com.openhtmltopdf.extend.FSCacheEx;
import com.openhtmltopdf.extend.FSCacheValue;
import com.openhtmltopdf.extend.impl.FSDefaultCacheStore;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PDFontSupplier;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder.CacheStore;
import com.openhtmltopdf.render.Box;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.w3c.dom.Element;

/**
 * Well-formed markup to PDF with the program's own typeface, tagged for screen readers (PDF/UA).
 *
 * <p>Nothing is fetched: pages refer to no file and no address.
 */
public final class PdfPress {

  /** The name of the typeface in stylesheets. */
  public static final String TYPEFACE = "Source Sans 3";

  private static final double MM_PER_POINT = 25.4 / 72;

  private static final FSCacheEx<String, FSCacheValue> FONT_METRICS = new FSDefaultCacheStore();

  static {
    XRLog.setLoggingEnabled(false);
  }

  private PdfPress() {}

  /**
   * Prints a page.
   *
   * @param markup well-formed markup with a title, a language and a description
   * @return the PDF
   */
  public static byte[] print(String markup) {
    ByteArrayOutputStream pdf = new ByteArrayOutputStream();
    try (PDDocument document = new PDDocument();
        PdfBoxRenderer renderer = renderer(document, markup, pdf)) {
      renderer.layout();
      renderer.createPDFWithoutClosing();
      document.save(pdf);
    } catch (IOException problem) {
      throw new UncheckedIOException("The page could not be printed.", problem);
    }
    return pdf.toByteArray();
  }

  /**
   * How high the parts of a page are when it is laid out.
   *
   * @param markup well-formed markup
   * @return the height in millimetres, margins left out, of each part that has an id; of a part
   *     that is laid out as several boxes the highest
   */
  public static Map<String, Double> heightsMm(String markup) {
    try (PDDocument document = new PDDocument();
        PdfBoxRenderer renderer = renderer(document, markup, new ByteArrayOutputStream())) {
      renderer.layout();
      Map<String, Double> heights = new HashMap<>();
      collect(renderer.getRootBox(), renderer.getDotsPerPoint(), heights);
      return heights;
    } catch (IOException problem) {
      throw new UncheckedIOException("The page could not be laid out.", problem);
    }
  }

  private static void collect(Box box, double dotsPerPoint, Map<String, Double> heights) {
    Element element = box.getElement();
    if (element != null && !element.getAttribute("id").isEmpty()) {
      double heightMm = box.getHeight() / dotsPerPoint * MM_PER_POINT;
      heights.merge(element.getAttribute("id"), heightMm, Math::max);
    }
    for (int place = 0; place < box.getChildCount(); place++) {
      collect(box.getChild(place), dotsPerPoint, heights);
    }
  }

  private static PdfBoxRenderer renderer(PDDocument document, String markup, OutputStream pdf)
      throws IOException {
    PdfRendererBuilder builder = new PdfRendererBuilder();
    builder.usePDDocument(document);
    builder.usePdfUaAccessibility(true);
    builder.useSVGDrawer(new BatikSVGDrawer());
    builder.useCacheStore(CacheStore.PDF_FONT_METRICS, FONT_METRICS);
    builder.withProducer("Rallywright");
    PDFont regular = font(document, "SourceSans3_400Regular");
    PDFont semibold = font(document, "SourceSans3_600SemiBold");
    builder.useFont(new PDFontSupplier(regular), TYPEFACE, 400, FontStyle.NORMAL, true);
    builder.useFont(new PDFontSupplier(semibold), TYPEFACE, 600, FontStyle.NORMAL, true);
    builder.withHtmlContent(markup, null);
    builder.toStream(pdf);
    return builder.buildPdfRenderer();
  }

  /**
   * A font without its ligatures: the PDF would not say which letters they stand for, so that
   * neither a screen reader nor a search finds the word "left".
   */
  private static PDFont font(PDDocument document, String name) throws IOException {
    try (InputStream file =
        Objects.requireNonNull(
            PdfPress.class.getResourceAsStream("/fonts/" + name + ".ttf"),
            () -> "The font " + name + " is missing in the program.")) {
      TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(file));
      font.setEnableGsub(false);
      return PDType0Font.load(document, font, true);
    }
  }
}
