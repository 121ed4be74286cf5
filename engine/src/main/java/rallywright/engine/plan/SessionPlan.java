package rallywright.engine.plan;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rallywright.engine.club.PlayerId;

/**
 * A planned session: blocks in the order in which they are played.
 *
 * @param minutes the booked time in minutes, 10 to 480
 * @param courts how many courts are booked, 1 to 40
 * @param present who takes part
 * @param blocks the blocks in order; warm-ups come first
 */
public record SessionPlan(
    int minutes, int courts, List<PlayerId> present, List<PlannedBlock> blocks) {

  /** The shortest booking that is planned, in minutes. */
  public static final int SHORTEST_MINUTES = 10;

  /** The most courts of a session that is kept; fewer are planned for. */
  static final int MOST_COURTS_KEPT = 40;

  /** The longest booking that is planned, in minutes. */
  public static final int LONGEST_MINUTES = 480;

  /** Checks the ranges and copies the lists. */
  public SessionPlan {
    if (minutes < SHORTEST_MINUTES || minutes > LONGEST_MINUTES) {
      throw new IllegalArgumentException(
          "The booked time ("
              + minutes
              + " min) must be from "
              + SHORTEST_MINUTES
              + " to "
              + LONGEST_MINUTES
              + " minutes.");
    }
    if (courts < 1 || courts > MOST_COURTS_KEPT) {
      throw new IllegalArgumentException(
          "The number of courts (" + courts + ") must be from 1 to " + MOST_COURTS_KEPT + ".");
    }
    present = List.copyOf(present);
    blocks = List.copyOf(blocks);
  }

  /**
   * The block with this id.
   *
   * @param block the block's id
   * @return the block, or empty if the plan has none of that id
   */
  public Optional<PlannedBlock> block(BlockId block) {
    return blocks.stream().filter(each -> each.id().equals(block)).findFirst();
  }

  /**
   * The game with this id.
   *
   * @param game the game's id
   * @return the game, or empty if the plan has none of that id
   */
  public Optional<PlannedGame> game(GameId game) {
    return blocks.stream()
        .flatMap(block -> block.games().stream())
        .filter(each -> each.id().equals(game))
        .findFirst();
  }

  /**
   * This plan with other blocks.
   *
   * @param others the new blocks in order
   * @return the new plan
   */
  public SessionPlan withBlocks(List<PlannedBlock> others) {
    return new SessionPlan(minutes, courts, present, others);
  }

  /**
   * This plan with somebody more who is there. Nobody loses a seat: the late-comer sits out until
   * games are added or somebody changes places.
   *
   * @param player who came
   * @return the new plan; this one if the player takes part already
   */
  public SessionPlan withArrival(PlayerId player) {
    if (present.contains(player)) {
      return this;
    }
    List<PlannedBlock> sittingOut =
        blocks.stream()
            .map(
                block ->
                    block.withGames(
                        block.end(),
                        block.games(),
                        block.sitting().stream().map(turn -> with(turn, player)).toList()))
            .toList();
    return new SessionPlan(minutes, courts, with(present, player), sittingOut);
  }

  private static List<PlayerId> with(List<PlayerId> players, PlayerId player) {
    return Stream.concat(players.stream(), Stream.of(player)).toList();
  }
}
