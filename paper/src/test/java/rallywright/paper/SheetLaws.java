package rallywright.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.regex.Pattern;
import org.apache.pdfbox.text.TextPosition;
import rallywright.engine.club.Player;
import rallywright.engine.club.PlayerId;
import rallywright.engine.plan.PlannedBlock;
import rallywright.paper.sheet.Frame;

/** What holds of every sheet. */
final class SheetLaws {

  private static final double POINTS_PER_MM = 72 / 25.4;

  private SheetLaws() {}

  /** Every letter is large enough, inside the margins and clear of the fold. */
  static void assertNothingClipped(PrintedPage page, PaperSize paper) {
    double edge = (Frame.EDGE_MM - 1) * POINTS_PER_MM;
    double right = paper.longEdgeMm() * POINTS_PER_MM - edge;
    double bottom = paper.shortEdgeMm() * POINTS_PER_MM - edge;
    double fold = paper.longEdgeMm() / 2 * POINTS_PER_MM;
    double clear = (Frame.FOLD_MM - 2) * POINTS_PER_MM;
    assertThat(page.letters()).isNotEmpty();
    for (TextPosition letter : page.letters()) {
      String what = letter.getUnicode() + " at " + letter.getX() + ", " + letter.getY();
      assertThat(letter.getYScale()).as(what).isGreaterThanOrEqualTo(7.5f);
      assertThat((double) letter.getX()).as(what).isBetween(edge, right);
      assertThat((double) letter.getX() + letter.getWidth()).as(what).isLessThan(right);
      assertThat((double) letter.getY()).as(what).isBetween(edge, bottom);
      assertThat(letter.getX() + letter.getWidth() < fold - clear || letter.getX() > fold + clear)
          .as(what)
          .isTrue();
    }
  }

  /**
   * Each name stands once among those present and once for every game and every turn sat out that
   * it belongs to.
   */
  static void assertEveryGameIsThere(PrintedPage page, SheetRequest request) {
    List<PlannedBlock> blocks = request.session().plan().blocks();
    FirstNames names = FirstNames.of(request.players());
    for (Player player : request.players()) {
      long games =
          blocks.stream()
              .flatMap(block -> block.games().stream())
              .filter(
                  game ->
                      game.a().players().contains(player.id())
                          || game.b().players().contains(player.id()))
              .count();
      assertThat(timesIn(page.text(), names.of(player.id())))
          .as(names.of(player.id()))
          .isGreaterThanOrEqualTo(1 + games)
          .isLessThanOrEqualTo(1 + games + sitting(blocks, player.id()));
    }
  }

  /** Turns sat out, and a box for the count of each yardstick. */
  private static long sitting(List<PlannedBlock> blocks, PlayerId player) {
    long turns =
        blocks.stream()
            .flatMap(block -> block.sitting().stream())
            .filter(turn -> turn.contains(player))
            .count();
    return turns
        + blocks.stream().filter(block -> block.kind() == PlannedBlock.Kind.YARDSTICK).count();
  }

  private static long timesIn(String text, String name) {
    return Pattern.compile("(?<!\\p{L})" + Pattern.quote(name) + "(?!\\p{L})")
        .matcher(text)
        .results()
        .count();
  }
}
