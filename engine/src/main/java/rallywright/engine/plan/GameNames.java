package rallywright.engine.plan;

import rallywright.engine.court.CourtLane;

/**
 * Ids of blocks and games that follow from what they are: the same game in the same block and turn
 * keeps its id when a plan is made anew, another game gets another one.
 */
final class GameNames {

  private static final long FNV_START = 0xcbf29ce484222325L;
  private static final long FNV_PRIME = 0x100000001b3L;

  private GameNames() {}

  static GameId of(BlockId block, int turn, CourtLane place, Seat a, Seat b) {
    String content = String.join("|", block.value(), place.words(), words(a), words(b));
    return new GameId(block + "-t" + turn + "-" + Long.toString(hash(content) >>> 24, 36));
  }

  private static String words(Seat seat) {
    return seat.role() + ":" + seat.players();
  }

  /** The 64-bit hash of Fowler, Noll and Vo (FNV-1a, from memory). */
  private static long hash(String text) {
    long hash = FNV_START;
    for (int i = 0; i < text.length(); i++) {
      hash = (hash ^ text.charAt(i)) * FNV_PRIME;
    }
    return hash;
  }
}
