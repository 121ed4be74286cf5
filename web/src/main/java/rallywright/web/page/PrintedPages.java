package rallywright.web.page;

import java.util.Locale;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import rallywright.paper.PaperSize;

/** What is printed: which paper an address asks for, and the PDF as an answer. */
public final class PrintedPages {

  private PrintedPages() {}

  /**
   * The paper by its name in an address.
   *
   * @throws NotHere if it is another paper than A4 or Letter
   */
  public static PaperSize paper(String name) {
    return switch (name.toLowerCase(Locale.ROOT)) {
      case "a4" -> PaperSize.A4;
      case "letter" -> PaperSize.LETTER;
      default ->
          throw new NotHere(
              "The paper (%s) must be a4 or letter. Maybe a4.".formatted(FormReader.echo(name)));
    };
  }

  /** A PDF that the browser shows at once, and saves under this name. */
  public static ResponseEntity<byte[]> shown(byte[] pdf, String fileName) {
    return ResponseEntity.ok()
        .contentType(MediaType.APPLICATION_PDF)
        .header(
            HttpHeaders.CONTENT_DISPOSITION,
            ContentDisposition.inline().filename(fileName).build().toString())
        .body(pdf);
  }
}
