package rallywright.paper;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.NotFoundException;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** A PDF as a reader finds it. */
final class PrintedPage implements AutoCloseable {

  private final PDDocument document;
  private final List<TextPosition> letters = new ArrayList<>();
  private final String text;

  PrintedPage(byte[] pdf) throws IOException {
    document = Loader.loadPDF(pdf);
    PDFTextStripper stripper =
        new PDFTextStripper() {
          @Override
          protected void processTextPosition(TextPosition letter) {
            letters.add(letter);
            super.processTextPosition(letter);
          }
        };
    text = stripper.getText(document);
  }

  PDDocument document() {
    return document;
  }

  int pages() {
    return document.getNumberOfPages();
  }

  String text() {
    return text;
  }

  /** The text without any white space, for words that may be broken over lines. */
  String unbroken() {
    return text.replaceAll("\\s+", "");
  }

  List<TextPosition> letters() {
    return letters;
  }

  List<PDFont> fonts() throws IOException {
    List<PDFont> fonts = new ArrayList<>();
    for (PDPage page : document.getPages()) {
      for (COSName name : page.getResources().getFontNames()) {
        fonts.add(page.getResources().getFont(name));
      }
    }
    return fonts;
  }

  BufferedImage picture(float dotsPerInch) throws IOException {
    return new PDFRenderer(document).renderImageWithDPI(0, dotsPerInch);
  }

  String decodedQr() throws Exception {
    return new QRCodeReader().decode(bitmap()).getText();
  }

  boolean hasQr() throws Exception {
    try {
      decodedQr();
      return true;
    } catch (NotFoundException none) {
      return false;
    }
  }

  /** The head of the sheet, at which a phone is pointed. */
  private BinaryBitmap bitmap() throws IOException {
    BufferedImage page = picture(200);
    BufferedImage picture = page.getSubimage(0, 0, page.getWidth() / 2, page.getHeight() / 5);
    int width = picture.getWidth();
    int height = picture.getHeight();
    int[] pixels = picture.getRGB(0, 0, width, height, null, 0, width);
    return new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(width, height, pixels)));
  }

  @Override
  public void close() throws IOException {
    document.close();
  }
}
