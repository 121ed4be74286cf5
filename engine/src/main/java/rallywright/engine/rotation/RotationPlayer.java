package rallywright.engine.rotation;

import rallywright.engine.club.PlayerId;

/**
 * One who plays, how strong, and in which rounds.
 *
 * @param id who
 * @param strengthLogits strength in this game, in logits
 * @param firstRound the first round in which they are there, from 1
 * @param lastRound the last round in which they are there; {@link #TO_THE_END} if they stay
 */
public record RotationPlayer(PlayerId id, double strengthLogits, int firstRound, int lastRound) {

  /** The last round of a player who stays. */
  public static final int TO_THE_END = Integer.MAX_VALUE;

  /** Strengths lie within this many logits of 0: nobody wins or loses every rally. */
  public static final double STRONGEST_LOGITS = 10;

  /** Checks the ranges. */
  public RotationPlayer {
    if (!(Math.abs(strengthLogits) <= STRONGEST_LOGITS)) {
      throw new IllegalArgumentException(
          "The strength of %s (%s) must be from -10 to 10 logits. Maybe 0 for a middling player."
              .formatted(id, strengthLogits));
    }
    if (firstRound < 1 || lastRound < firstRound - 1) {
      throw new IllegalArgumentException(
          "The rounds of %s (%d to %d) must start at 1 or later and not end before they start."
                  .formatted(id, firstRound, lastRound)
              + " Maybe they are swapped.");
    }
  }

  /**
   * A player who is there from the first round to the last.
   *
   * @param id who
   * @param strengthLogits strength in this game, in logits
   * @return the player
   */
  public static RotationPlayer of(PlayerId id, double strengthLogits) {
    return new RotationPlayer(id, strengthLogits, 1, TO_THE_END);
  }

  /**
   * The same player, arriving late.
   *
   * @param round the first round in which they are there
   * @return the player
   */
  public RotationPlayer from(int round) {
    return new RotationPlayer(id, strengthLogits, round, lastRound);
  }

  /**
   * The same player, leaving early.
   *
   * @param round the last round in which they are there
   * @return the player
   */
  public RotationPlayer until(int round) {
    return new RotationPlayer(id, strengthLogits, firstRound, round);
  }

  /**
   * Whether they are there.
   *
   * @param round a round, from 1
   * @return true if they can play or sit out in it
   */
  public boolean isThere(int round) {
    return round >= firstRound && round <= lastRound;
  }
}
