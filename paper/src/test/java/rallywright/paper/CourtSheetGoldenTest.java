package rallywright.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** The whole text of one sheet, so that every change of its words is seen and accepted. */
class CourtSheetGoldenTest {

  @Test
  void sheetOfFour_readsAsAccepted() throws IOException {
    byte[] pdf = CourtSheet.pdf(SampleSession.usual(4).request(), PaperSize.A4);
    try (PrintedPage page = new PrintedPage(pdf)) {
      assertThat(page.text().strip()).isEqualTo(accepted().strip());
    }
  }

  private static String accepted() throws IOException {
    try (InputStream file =
        Objects.requireNonNull(
            CourtSheetGoldenTest.class.getResourceAsStream("/golden/sheet-of-four.txt"))) {
      return new String(file.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
