package rallywright.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.Locale;
import java.util.stream.Stream;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import rallywright.engine.aim.Measures;
import rallywright.engine.aim.ShotAnswer;
import rallywright.engine.aim.ShotSetting;
import rallywright.engine.aim.ShotStudy;
import rallywright.engine.aim.ShotWords;
import rallywright.engine.aim.TargetCard;
import rallywright.engine.aim.UsualShot;

class CardSheetTest {

  private static final double POINTS_PER_MM = 72 / 25.4;

  /** Metres with two digits: the longest way to write a length. */
  private static final Measures METRES =
      new Measures() {
        @Override
        public String length(double metres) {
          return String.format(Locale.ROOT, "%.2f m", metres);
        }

        @Override
        public String about(double metres) {
          return String.format(Locale.ROOT, "%.1f m", metres);
        }

        @Override
        public String small(double metres) {
          return Math.round(100 * metres) + " cm";
        }

        @Override
        public String speed(double metresPerSecond) {
          return Math.round(3.6 * metresPerSecond) + " km/h";
        }
      };

  static Stream<Arguments> cards() {
    return Stream.of(UsualShot.values())
        .map(CardSheetTest::card)
        .flatMap(card -> Stream.of(PaperSize.values()).map(paper -> Arguments.of(card, paper)));
  }

  private static TargetCard card(UsualShot shot) {
    ShotSetting usual = shot.usual();
    ShotAnswer answer = ShotStudy.full(usual.on(usual.day().withWind(4, 45)));
    return TargetCard.of(answer).orElseThrow();
  }

  @ParameterizedTest
  @MethodSource("cards")
  void card_ofEveryUsualShot_fitsOnOnePage(TargetCard card, PaperSize paper) throws IOException {
    byte[] pdf = CardSheet.pdf(card, "A drill with a name of forty characters..", METRES, paper);
    try (PrintedPage page = new PrintedPage(pdf)) {
      assertThat(page.pages()).isEqualTo(1);
      double edge = (CardSheet.EDGE_MM - 1) * POINTS_PER_MM;
      for (TextPosition letter : page.letters()) {
        String what = letter.getUnicode() + " at " + letter.getX() + ", " + letter.getY();
        assertThat((double) letter.getX()).as(what).isGreaterThan(edge);
        assertThat((double) letter.getX() + letter.getWidth())
            .as(what)
            .isLessThan(paper.shortEdgeMm() * POINTS_PER_MM - edge);
        assertThat((double) letter.getY())
            .as(what)
            .isBetween(edge, paper.longEdgeMm() * POINTS_PER_MM - edge);
      }
      String advice = ShotWords.of(card.answer(), METRES).advice();
      assertThat(page.unbroken()).contains(advice.replaceAll("\\s+", ""));
    }
  }

  @Test
  void card_saysWhereConesAndTapeGo_andIsBlackAndWhiteAndTagged() throws IOException {
    byte[] pdf = CardSheet.pdf(card(UsualShot.DROP_STRAIGHT), "", METRES, PaperSize.A4);
    try (PrintedPage page = new PrintedPage(pdf)) {
      assertThat(page.text().replaceAll("\\s+", " "))
          .contains("Cone A under the net, on the centre line")
          .contains("Cone C on the kitchen line, on the right side line")
          .contains("Hitter 0.15 m behind the baseline, 1.52 m right of the centre line")
          .containsPattern("Cross [^;]*; from ball to ball [0-9.]+ m? ?to [0-9.]+ m from the net")
          .containsPattern("String [^;]*; from ball to ball [0-9]+ to [0-9]+ cm above the tape")
          .contains("brackets hold four balls in five", "we assume, unmeasured")
          .contains("Worked out for a wind of 14 km/h from ahead on the right");
      assertThat(page.document().getDocumentCatalog().getMarkInfo().isMarked()).isTrue();
      assertThat(page.fonts()).isNotEmpty().allMatch(PDFont::isEmbedded);
      BufferedImage picture = page.picture(60);
      for (int x = 0; x < picture.getWidth(); x++) {
        for (int y = 0; y < picture.getHeight(); y++) {
          int rgb = picture.getRGB(x, y);
          assertThat((rgb >> 16) & 0xFF).isEqualTo((rgb >> 8) & 0xFF).isEqualTo(rgb & 0xFF);
        }
      }
    }
  }
}
