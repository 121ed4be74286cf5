package rallywright.engine.plan;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import rallywright.engine.club.PlayerId;
import rallywright.engine.drill.DrillKey;

/**
 * One stretch of a session: a warm-up, one drill with its games, a yardstick or a break.
 *
 * @param id the block's id, unique in the plan
 * @param kind what sort of block it is
 * @param drill the drill, warm-up or yardstick that is played
 * @param end how it ends
 * @param time how long it takes with everything that belongs to it
 * @param games the games of all lanes, by turn; empty where nothing is scored
 * @param sitting who sits out, by turn: the list at place t belongs to turn t + 1
 * @param reason why it is in the plan, as one sentence for the coach
 */
public record PlannedBlock(
    BlockId id,
    Kind kind,
    DrillKey drill,
    End end,
    BlockTime time,
    List<PlannedGame> games,
    List<List<PlayerId>> sitting,
    String reason) {

  /** The sorts of block. */
  public enum Kind {
    /** Getting warm, without or with a paddle. */
    WARM_UP,
    /** A scored drill game. */
    DRILL,
    /** Players work together for a time; nothing is scored. */
    TOGETHER,
    /** A half-court or full game with serve and return. */
    FULL_GAME,
    /** A closed test of n balls. */
    YARDSTICK,
    /** Rest and water. */
    BREAK
  }

  /** How a block ends. */
  public enum End {
    /** At a fixed time, by a horn; games cut off are kept as they stand. */
    BY_CLOCK,
    /** When its last lane is done. */
    LAST_LANE
  }

  /** Copies the lists. */
  public PlannedBlock {
    games = List.copyOf(games);
    sitting = sitting.stream().map(List::copyOf).toList();
  }

  /**
   * This block with other games.
   *
   * @param otherEnd how it ends then
   * @param otherGames the games of all lanes, by turn
   * @param otherSitting who sits out, by turn
   * @return the changed block, its time not yet counted anew
   */
  PlannedBlock withGames(
      End otherEnd, List<PlannedGame> otherGames, List<List<PlayerId>> otherSitting) {
    return new PlannedBlock(id, kind, drill, otherEnd, time, otherGames, otherSitting, reason);
  }

  /**
   * This block with another time.
   *
   * @param other how long it takes
   * @return the changed block
   */
  PlannedBlock withTime(BlockTime other) {
    return new PlannedBlock(id, kind, drill, end, other, games, sitting, reason);
  }

  /**
   * Who neither plays nor sits out in a turn: who is not there by then.
   *
   * @param present who takes part in the session
   * @param turn the turn, from 1
   * @return those players, in the order of the session
   */
  public List<PlayerId> away(List<PlayerId> present, int turn) {
    Set<PlayerId> there = new HashSet<>(turn <= sitting.size() ? sitting.get(turn - 1) : present);
    for (PlannedGame game : games) {
      if (game.turn() == turn) {
        there.addAll(game.a().players());
        there.addAll(game.b().players());
      }
    }
    return present.stream().filter(player -> !there.contains(player)).toList();
  }

  /** How many turns its games take. */
  int turns() {
    return sitting.size();
  }
}
