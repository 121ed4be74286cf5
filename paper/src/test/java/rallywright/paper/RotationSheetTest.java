package rallywright.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import rallywright.engine.rotation.RotationGame;
import rallywright.engine.rotation.RotationMatch;
import rallywright.engine.rotation.RotationRound;

class RotationSheetTest {

  private static final double POINTS_PER_MM = 72 / 25.4;

  /** Players, courts, rounds. */
  static Stream<Arguments> rotations() {
    return Stream.of(
            List.of(32, 8, 12),
            List.of(13, 3, 8),
            List.of(4, 1, 3),
            List.of(40, 6, 14),
            List.of(40, 10, 14))
        .flatMap(
            size ->
                Stream.of(PaperSize.values())
                    .map(paper -> Arguments.of(size.get(0), size.get(1), size.get(2), paper)));
  }

  @ParameterizedTest
  @MethodSource("rotations")
  void rotation_upToFourteenRounds_fitsOnOnePage(
      int players, int courts, int rounds, PaperSize paper) throws IOException {
    RotationRequest request = SampleRotations.of(RotationGame.DOUBLES, players, courts, rounds);
    try (PrintedPage page = new PrintedPage(RotationSheet.pdf(request, paper))) {
      assertThat(page.pages()).isEqualTo(1);
      assertInsideTheMargins(page, paper);
      assertEveryPlaceIsThere(page, request);
    }
  }

  @Test
  void thirtyTwoPlayersAndTwelveRounds_haveNamesOfTenPointsAndMore() throws IOException {
    for (PaperSize paper : PaperSize.values()) {
      RotationRequest request = SampleRotations.of(RotationGame.DOUBLES, 32, 8, 12);
      try (PrintedPage page = new PrintedPage(RotationSheet.pdf(request, paper))) {
        long names = page.letters().stream().filter(RotationSheetTest::isSemibold).count();
        long large =
            page.letters().stream()
                .filter(RotationSheetTest::isSemibold)
                .filter(letter -> letter.getYScale() >= 10)
                .count();
        assertThat(names).isGreaterThan(12 * 32 * 3);
        assertThat((double) large / names).isGreaterThan(0.8);
      }
    }
  }

  private static boolean isSemibold(TextPosition letter) {
    return letter.getFont().getName().contains("SemiBold");
  }

  @Test
  void lanes_andHeadStarts_standInTheirCells() throws IOException {
    RotationRequest request = SampleRotations.of(RotationGame.LANES, 9, 2, 6);
    try (PrintedPage page = new PrintedPage(RotationSheet.pdf(request, PaperSize.A4))) {
      assertThat(page.text())
          .contains("Court 1 left", "Court 2 right", "Sit out")
          .containsPattern("\\+[1-4]");
      assertThat(page.text()).contains("starts with 2 points");
      assertInsideTheMargins(page, PaperSize.A4);
    }
  }

  @Test
  void thirtyRounds_goOnOverPages() throws IOException {
    RotationRequest request = SampleRotations.of(RotationGame.DOUBLES, 12, 3, 30);
    try (PrintedPage page = new PrintedPage(RotationSheet.pdf(request, PaperSize.LETTER))) {
      assertThat(page.pages()).isEqualTo(3);
      assertThat(page.text()).contains("page 3 of 3");
      assertEveryPlaceIsThere(page, request);
      assertInsideTheMargins(page, PaperSize.LETTER);
    }
  }

  @Test
  void sheet_isBlackAndWhite_tagged_andSaysThatPeopleAreInvented() throws IOException {
    RotationRequest request = SampleRotations.of(RotationGame.DOUBLES, 13, 3, 8);
    try (PrintedPage page = new PrintedPage(RotationSheet.pdf(request, PaperSize.A4))) {
      assertThat(page.text()).contains("Demo: an invented club with invented people.");
      assertThat(page.document().getDocumentCatalog().getMarkInfo().isMarked()).isTrue();
      assertThat(page.document().getDocumentCatalog().getLanguage()).isEqualTo("en");
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

  private static void assertInsideTheMargins(PrintedPage page, PaperSize paper) {
    double edge = (RotationWriter.EDGE_MM - 1) * POINTS_PER_MM;
    for (TextPosition letter : page.letters()) {
      String what = letter.getUnicode() + " at " + letter.getX() + ", " + letter.getY();
      assertThat(letter.getYScale()).as(what).isGreaterThanOrEqualTo(7.5f);
      assertThat((double) letter.getX()).as(what).isGreaterThan(edge);
      assertThat((double) letter.getX() + letter.getWidth())
          .as(what)
          .isLessThan(paper.longEdgeMm() * POINTS_PER_MM - edge);
      assertThat((double) letter.getY())
          .as(what)
          .isBetween(edge, paper.shortEdgeMm() * POINTS_PER_MM - edge);
    }
  }

  private static void assertEveryPlaceIsThere(PrintedPage page, RotationRequest request) {
    int letters = 0;
    for (RotationRound round : request.schedule().rounds()) {
      for (RotationMatch match : round.matches()) {
        letters += match.players().stream().mapToInt(p -> name(request, p).length()).sum();
      }
      letters += round.sitting().stream().mapToInt(p -> name(request, p).length()).sum();
    }
    assertThat(page.unbroken().length()).isGreaterThan(letters);
    request.names().values().forEach(name -> assertThat(page.text()).contains(name));
  }

  private static String name(RotationRequest request, rallywright.engine.club.PlayerId player) {
    return request.names().getOrDefault(player, "?");
  }
}
