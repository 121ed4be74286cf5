package rallywright.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import rallywright.engine.court.Lane;
import rallywright.engine.plan.PlannedBlock;

class CourtSheetTest {

  private static final double POINTS_PER_MM = 72 / 25.4;

  static Stream<Arguments> groupsOnBothPapers() {
    return IntStream.rangeClosed(2, 8)
        .boxed()
        .flatMap(
            players -> Stream.of(PaperSize.values()).map(paper -> Arguments.of(players, paper)));
  }

  @ParameterizedTest
  @MethodSource("groupsOnBothPapers")
  void usualSession_fitsOnOnePage_readableAndClearOfTheFold(int players, PaperSize paper)
      throws IOException {
    SampleSession session = SampleSession.usual(players);
    try (PrintedPage page = print(session.request(), paper)) {
      assertThat(page.pages()).isEqualTo(1);
      SheetLaws.assertNothingClipped(page, paper);
      assertThat(page.text())
          .contains("Line to baseline", "Tuesday 24 November 2026, 18:00–19:30", "18:10–18:22")
          .contains("Drop game", "back, may come forward", "up, stays", "every rally scores")
          .contains("call “ball”", "Stop at pain");
      assertThat(page.text()).contains("left");
    }
  }

  @Test
  void paper_ofBothSizes_hasTheSizeOfTheStandard() throws IOException {
    for (PaperSize paper : PaperSize.values()) {
      try (PrintedPage page = print(SampleSession.usual(4).request(), paper)) {
        var box = page.document().getPage(0).getMediaBox();
        assertThat(box.getWidth() / POINTS_PER_MM).isCloseTo(paper.longEdgeMm(), within(0.2));
        assertThat(box.getHeight() / POINTS_PER_MM).isCloseTo(paper.shortEdgeMm(), within(0.2));
      }
    }
  }

  @Test
  void everyGame_standsOnTheSheetWithBothNames() throws IOException {
    SampleSession session = SampleSession.usual(8);
    try (PrintedPage page = print(session.request(), PaperSize.A4)) {
      SheetLaws.assertEveryGameIsThere(page, session.request());
    }
  }

  @Test
  void code_readByAPhone_isTheAddressWithItsKey() throws Exception {
    for (PaperSize paper : PaperSize.values()) {
      try (PrintedPage page = print(SampleSession.usual(4).request(), paper)) {
        assertThat(page.decodedQr()).isEqualTo(SampleSession.ADDRESS.toString());
        assertThat(page.text()).doesNotContain(SampleSession.ADDRESS.getFragment());
      }
    }
  }

  @Test
  void sheet_withoutPublicAddress_hasNoCodeAndSaysWhy() throws Exception {
    SheetRequest request =
        SampleSession.usual(4).request(PhoneAccess.Closed.ON_THIS_COMPUTER_ONLY, Origin.OWN_CLUB);
    try (PrintedPage page = print(request, PaperSize.A4)) {
      assertThat(page.hasQr()).isFalse();
      assertThat(page.unbroken()).contains("Nocodeforphones").contains("--host");
    }
  }

  @Test
  void demo_isSaidOnTheSheet_andOnlyThere() throws IOException {
    SampleSession session = SampleSession.usual(4);
    SheetRequest demo = session.request(new PhoneAccess.Open(SampleSession.ADDRESS), Origin.DEMO);
    try (PrintedPage page = print(demo, PaperSize.A4);
        PrintedPage own = print(session.request(), PaperSize.A4)) {
      assertThat(page.text()).contains("Demo: an invented club with invented people.");
      assertThat(own.text()).doesNotContainIgnoringCase("demo");
    }
  }

  @Test
  void healthNotesLimitsAndFamilyNames_areNeverPrinted() throws IOException {
    try (PrintedPage page = print(SampleSession.usual(8).request(), PaperSize.A4)) {
      assertThat(page.text())
          .contains("Imke", "Tamsin")
          .doesNotContain(SampleSession.HEALTH_NOTE, "shoulder", "overheads")
          .doesNotContain("Vold", "Osterly", "Pell", "Okafor", "Quill", "Adeyo", "3.5");
    }
  }

  @Test
  void equalFirstNames_areToldApartByALetter() throws IOException {
    SampleSession session =
        SampleSession.of("Imke Vold", "Imke Arden", "Juno Pell", "Rafe Osterly")
            .drill(SampleDrills.DINK, 12, 2, Lane.STRAIGHT_LEFT, Lane.STRAIGHT_RIGHT);
    try (PrintedPage page = print(session.request(), PaperSize.A4)) {
      assertThat(page.text()).contains("Imke V.", "Imke A.").doesNotContain("Juno P.");
    }
  }

  @Test
  void longNames_andMarkup_areSetWholeInsideTheirCells() throws IOException {
    String longName = "Wilhelmina-Konstantina-Theodora";
    SampleSession session =
        SampleSession.of(longName, "<b>Ann&Bo</b>", "Žofie\u0007 Ø", "Şebnem-Åsa")
            .drill(SampleDrills.DROP, 12, 4, Lane.STRAIGHT_LEFT, Lane.STRAIGHT_RIGHT);
    try (PrintedPage page = print(session.request(), PaperSize.LETTER)) {
      SheetLaws.assertNothingClipped(page, PaperSize.LETTER);
      assertThat(page.unbroken()).contains(longName, "<b>Ann&Bo</b>", "Žofie", "Şebnem-Åsa");
    }
  }

  @Test
  void twelveBlocks_goOnOverPages_withHeadAndNothingLost() throws IOException {
    SampleSession session = SampleSession.usual(8);
    for (int block = 0; block < 4; block++) {
      session.drill(SampleDrills.DROP, 10, 4, Lane.STRAIGHT_LEFT, Lane.STRAIGHT_RIGHT);
    }
    List<PlannedBlock> blocks = session.session().plan().blocks();
    assertThat(blocks).hasSize(12);
    try (PrintedPage page = print(session.request(), PaperSize.A4)) {
      assertThat(page.pages()).isGreaterThan(1);
      assertThat(page.text()).contains("page 2 of " + page.pages());
      SheetLaws.assertEveryGameIsThere(page, session.request());
      SheetLaws.assertNothingClipped(page, PaperSize.A4);
    }
  }

  @Test
  void blockHigherThanAPage_isContinued() throws IOException {
    SampleSession session =
        SampleSession.of("Imke", "Rafe", "Juno", "Bram", "Wren", "Dov", "Solvei", "Tamsin")
            .drill(SampleDrills.DINK, 60, 20, Lane.STRAIGHT_LEFT, Lane.STRAIGHT_RIGHT);
    try (PrintedPage page = print(session.request(), PaperSize.LETTER)) {
      assertThat(page.text()).contains("Dink game, continued");
      SheetLaws.assertEveryGameIsThere(page, session.request());
      SheetLaws.assertNothingClipped(page, PaperSize.LETTER);
    }
  }

  @Test
  void sheet_isBlackAndWhite_withItsOwnFonts() throws IOException {
    try (PrintedPage page = print(SampleSession.usual(6).request(), PaperSize.A4)) {
      assertThat(page.fonts()).isNotEmpty().allMatch(PDFont::isEmbedded);
      assertThat(page.fonts()).allMatch(font -> font.getName().contains("SourceSans3"));
      BufferedImage picture = page.picture(60);
      for (int x = 0; x < picture.getWidth(); x++) {
        for (int y = 0; y < picture.getHeight(); y++) {
          int rgb = picture.getRGB(x, y);
          assertThat((rgb >> 16) & 0xFF).isEqualTo((rgb >> 8) & 0xFF).isEqualTo(rgb & 0xFF);
        }
      }
    }
  }

  @Test
  void sheet_isTaggedForScreenReaders_withTitleAndLanguage() throws IOException {
    try (PrintedPage page = print(SampleSession.usual(4).request(), PaperSize.A4)) {
      var catalog = page.document().getDocumentCatalog();
      assertThat(catalog.getMarkInfo().isMarked()).isTrue();
      assertThat(catalog.getLanguage()).isEqualTo("en");
      assertThat(catalog.getStructureTreeRoot().getKids()).isNotEmpty();
      assertThat(page.document().getDocumentInformation().getTitle())
          .startsWith("Line to baseline, Tuesday 24 November 2026");
    }
  }

  @Test
  void warmUp_printsWithoutHarm() {
    CourtSheet.warmUp();
    assertThat(CourtSheet.pdf(EmptySession.request(), PaperSize.A4)).startsWith('%', 'P', 'D', 'F');
  }

  private static PrintedPage print(SheetRequest request, PaperSize paper) throws IOException {
    return new PrintedPage(CourtSheet.pdf(request, paper));
  }
}
