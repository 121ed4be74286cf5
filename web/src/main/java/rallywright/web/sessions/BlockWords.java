package rallywright.web.sessions;

import java.util.List;
import rallywright.engine.plan.PlannedBlock;
import rallywright.engine.session.CourtEvent.YardstickCounted;
import rallywright.web.oncourt.OpenSession;

/**
 * One block in words.
 *
 * @param title what it is called
 * @param minutes how long it usually takes, in whole minutes
 * @param reason why it is in the plan
 * @param games its games in the order of the court sheet
 * @param counts what was counted of a yardstick, one line a player
 */
public record BlockWords(
    String title, long minutes, String reason, List<GameWords> games, List<String> counts) {

  /** All blocks of a session in order. */
  static List<BlockWords> of(OpenSession open) {
    return open.plan().blocks().stream().map(block -> of(open, block)).toList();
  }

  private static BlockWords of(OpenSession open, PlannedBlock block) {
    return new BlockWords(
        open.title(block),
        Math.round(block.time().mean()),
        block.reason(),
        GameWords.of(open, block),
        open.progress().yardsticks(block.id()).stream().map(count -> words(open, count)).toList());
  }

  private static String words(OpenSession open, YardstickCounted count) {
    return open.names().of(count.player()) + ": " + count.hits() + " of " + count.balls();
  }
}
