package rallywright.web.sessions;

import java.util.List;
import java.util.stream.IntStream;
import rallywright.engine.plan.PlannedBlock;
import rallywright.engine.session.CourtEvent.YardstickCounted;
import rallywright.web.oncourt.OpenSession;

/**
 * One block in words.
 *
 * @param id its id
 * @param number its place in the session, from 1
 * @param title what it is called
 * @param minutes how long it usually takes, in whole minutes
 * @param reason why it is in the plan
 * @param games its games in the order of the court sheet
 * @param counts what was counted of a yardstick, one line a player
 */
public record BlockWords(
    String id,
    int number,
    String title,
    long minutes,
    String reason,
    List<GameWords> games,
    List<String> counts) {

  /** All blocks of a session in order. */
  static List<BlockWords> of(OpenSession open) {
    List<PlannedBlock> blocks = open.plan().blocks();
    return IntStream.range(0, blocks.size())
        .mapToObj(at -> of(open, at + 1, blocks.get(at)))
        .toList();
  }

  private static BlockWords of(OpenSession open, int number, PlannedBlock block) {
    return new BlockWords(
        block.id().value(),
        number,
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
