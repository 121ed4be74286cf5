package rallywright.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.net.URI;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import rallywright.engine.club.Player;
import rallywright.engine.club.PlayerId;
import rallywright.engine.court.Lane;
import rallywright.paper.sheet.BlockView;
import rallywright.paper.sheet.Frame;
import rallywright.paper.sheet.GameCell;
import rallywright.paper.sheet.GameStretch;
import rallywright.paper.sheet.IntervalBar;
import rallywright.paper.sheet.Leaf;
import rallywright.paper.sheet.SheetView;
import rallywright.paper.sheet.Typesetter;

class SmallPartsTest {

  @Test
  void firstNames_equalWithoutDifferentInitials_getLettersInOrder() {
    List<Player> players =
        SampleSession.of("Ann Lee", "ann Low", "Bo", "Bo Hill").request().players();
    FirstNames names = FirstNames.of(players);
    assertThat(players.stream().map(player -> names.of(player.id())))
        .containsExactly("Ann (a)", "ann (b)", "Bo (a)", "Bo (b)");
    assertThat(names.of(new PlayerId("stranger"))).isEqualTo("?");
  }

  @Test
  void address_withoutKeyInTheFragment_isRefused() {
    assertThatThrownBy(() -> new PhoneAccess.Open(URI.create("https://h/x?key=abc")))
        .hasMessageContaining("after a #");
    assertThatThrownBy(() -> new PhoneAccess.Open(URI.create("file:///x#abc")))
        .hasMessageContaining("http:// or https://");
    assertThat(new PhoneAccess.Open(SampleSession.ADDRESS).toString()).doesNotContain("kq3v");
  }

  @Test
  void bar_thatDoesNotRise_isRefused() {
    assertThatThrownBy(() -> new IntervalBar(0.5, 0.4, 0.8)).hasMessageContaining("must rise");
    assertThatThrownBy(() -> new IntervalBar(0, Double.NaN, 1)).hasMessageContaining("must rise");
    assertThat(new IntervalBar(0.2, 0.5, 0.6).wide(0.5)).isEqualTo("20.00");
  }

  @Test
  void blockTimes_areTheMeansAddedUp_roundedToTheMinute() {
    SampleSession session = SampleSession.of("Ann", "Bo").rest(4.4).rest(4.4).rest(4.4);
    assertThat(SheetWriter.write(session.request()).blocks())
        .extracting(BlockView::clock)
        .containsExactly("18:00–18:04", "18:04–18:09", "18:09–18:13");
  }

  @Test
  void games_standInTheOrderOfPlay_firstRoleSolid() {
    SampleSession session =
        SampleSession.of("Ann", "Bo", "Cy", "Di", "Ed", "Flo")
            .drill(SampleDrills.DROP, 10, 2, Lane.STRAIGHT_LEFT, Lane.STRAIGHT_RIGHT);
    BlockView block = SheetWriter.write(session.request()).blocks().get(0);
    GameStretch stretch = block.stretches().get(0);
    assertThat(stretch.columns()).containsExactly("court 1 right", "court 1 left", "court 2 left");
    assertThat(stretch.rows()).hasSize(2).allMatch(row -> row.size() == 3);
    assertThat(stretch.rows().get(0)).allMatch(game -> "1".equals(game.turn()));
    assertThat(stretch.rows().get(1)).allMatch(game -> "2".equals(game.turn()));
    for (List<GameCell> row : stretch.rows()) {
      assertThat(row).extracting(GameCell::place).isEqualTo(stretch.columns());
    }
    assertThat(stretch.rows().get(0).get(0).near().mark().words()).isEqualTo("solid");
    assertThat(stretch.rows().get(0).get(0).far().mark().words()).isEqualTo("outlined");
  }

  @Test
  void typesetter_withBlocksThatFit_fillsBothHalvesEvenly() {
    List<BlockView> blocks =
        SheetWriter.write(SampleSession.of("Ann", "Bo").rest(5).rest(5).rest(5).rest(5).request())
            .blocks();
    Map<String, Double> heights =
        Map.of(
            "head",
            20.0,
            "short-head",
            5.0,
            "foot",
            20.0,
            "note-line",
            6.0,
            "block-1",
            60.0,
            "block-2",
            60.0,
            "block-3",
            60.0,
            "block-4",
            60.0);
    Frame frame = new Frame(297, 210);
    Leaf leaf = new Typesetter(frame, heights, blocks).onePage().orElseThrow();
    assertThat(leaf.left().blocks()).hasSize(2);
    assertThat(leaf.right().blocks()).hasSize(2);
    Frame small = new Frame(297, 150);
    assertThat(new Typesetter(small, heights, blocks).onePage()).isEmpty();
    assertThat(new Typesetter(small, heights, blocks).manyPages())
        .flatExtracting(each -> each.left().blocks(), each -> each.right().blocks())
        .hasSize(4);
  }

  @Test
  void preview_hasNoInlineStyleAndNoScript() {
    SheetRequest request = SampleSession.usual(4).request();
    assertThat(SheetHtml.page(request, "/css/sheet.css"))
        .contains("href=\"/css/sheet.css\"", "Drop game", "<svg")
        .doesNotContain("style=", "<style", "<script");
    assertThat(SheetHtml.stylesheet()).contains(".block");
  }

  @Test
  void unknownDrill_isNamedByItsKey() {
    SheetRequest known = SampleSession.usual(4).request();
    SheetView view =
        SheetWriter.write(
            new SheetRequest(
                known.session(),
                known.players(),
                EmptySession.request().drills(),
                known.access(),
                known.origin()));
    assertThat(view.blocks()).extracting(BlockView::title).contains("drop game", "dink game");
  }

  @Test
  void playerPage_saysEverythingOnOnePage() throws IOException {
    for (PaperSize paper : PaperSize.values()) {
      byte[] pdf = PlayerPage.pdf(SheetSamples.handout(), paper);
      try (PrintedPage page = new PrintedPage(pdf)) {
        assertThat(page.pages()).isEqualTo(1);
        assertThat(page.text())
            .contains("Imke", "Demo", "About 6 rallies in 10", "even with a 3.0 player")
            .contains("Drop game, back, with Rafe", "3-5", "2-5", "Play the reset game");
      }
    }
  }
}
