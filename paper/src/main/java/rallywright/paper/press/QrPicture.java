package rallywright.paper.press;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import java.net.URI;
import java.util.Map;

/**
 * An address as a QR code (ISO/IEC 18004), drawn as one path of unit squares.
 *
 * @param size modules along one edge, with the quiet zone
 * @param path the dark modules as SVG path data, one rectangle for each run in a row
 */
public record QrPicture(int size, String path) {

  /** Light modules on each side that the standard asks for. */
  private static final int QUIET_ZONE = 4;

  /**
   * The code of an address.
   *
   * @param address any address of up to about 2,000 characters
   * @return the picture
   * @throws IllegalArgumentException if the address is too long for a code
   */
  public static QrPicture of(URI address) {
    try {
      BitMatrix modules =
          new QRCodeWriter()
              .encode(
                  address.toASCIIString(),
                  BarcodeFormat.QR_CODE,
                  0,
                  0,
                  Map.of(
                      EncodeHintType.MARGIN,
                      QUIET_ZONE,
                      EncodeHintType.ERROR_CORRECTION,
                      ErrorCorrectionLevel.M));
      return new QrPicture(modules.getWidth(), darkRuns(modules));
    } catch (WriterException problem) {
      throw new IllegalArgumentException(
          "The address has "
              + address.toASCIIString().length()
              + " characters, too many for a code that a phone can read."
              + " Maybe a shorter host name.",
          problem);
    }
  }

  private static String darkRuns(BitMatrix modules) {
    StringBuilder path = new StringBuilder();
    for (int row = 0; row < modules.getHeight(); row++) {
      int from = 0;
      while (from < modules.getWidth()) {
        int to = from;
        while (to < modules.getWidth() && modules.get(to, row)) {
          to++;
        }
        if (to > from) {
          path.append("M%d %dh%dv1h-%dz".formatted(from, row, to - from, to - from));
        }
        from = to + 1;
      }
    }
    return path.toString();
  }
}
