package rallywright.engine.plan;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;
import rallywright.engine.club.Limit;
import rallywright.engine.club.PlayerId;
import rallywright.engine.practice.PlayerStanding;

/**
 * One player who will be there, throughout or for a part of the session.
 *
 * @param id the player's id
 * @param standing what is known of the player's skills
 * @param limits what the player should not be asked to do
 * @param weight how much the player's practice counts beside that of the others, 0 to 10; 1 is
 *     usual
 * @param part whether the player comes to practise or to make up a number
 * @param stay from when to when the player is there
 */
public record Attendee(
    PlayerId id, PlayerStanding standing, Set<Limit> limits, double weight, Part part, Stay stay) {

  /** The largest weight. */
  public static final double MOST_WEIGHT = 10;

  /** Whether somebody comes to practise or to make up a number. */
  public enum Part {
    /** Comes to practise. */
    PRACTISES,
    /**
     * Plays or feeds where a number does not come out even, such as the coach; sits out before
     * anybody else.
     */
    FILLS_IN
  }

  /** Copies the limits and checks the weight; the check is written so that NaN fails it. */
  public Attendee {
    EnumSet<Limit> copy = EnumSet.noneOf(Limit.class);
    copy.addAll(limits);
    limits = Collections.unmodifiableSet(copy);
    if (!(weight >= 0 && weight <= MOST_WEIGHT)) {
      throw new IllegalArgumentException(
          "The weight of %s (%s) must be from 0 to 10. Maybe 1, as for everybody."
              .formatted(standing.name(), weight));
    }
  }

  /**
   * A player who comes to practise and counts like everybody.
   *
   * @param id the player's id
   * @param standing what is known of the player's skills
   * @param limits what the player should not be asked to do
   */
  public Attendee(PlayerId id, PlayerStanding standing, Set<Limit> limits) {
    this(id, standing, limits, 1, Part.PRACTISES, Stay.THROUGHOUT);
  }

  /**
   * This player with another weight.
   *
   * @param other 0 to 10
   * @return the changed attendee
   */
  public Attendee withWeight(double other) {
    return new Attendee(id, standing, limits, other, part, stay);
  }

  /**
   * This player as one who makes up a number and whose own practice does not count.
   *
   * @return the changed attendee
   */
  public Attendee fillingIn() {
    return new Attendee(id, standing, limits, 0, Part.FILLS_IN, stay);
  }

  /**
   * This player, there only for a part of the session.
   *
   * @param other from when to when
   * @return the changed attendee
   */
  public Attendee during(Stay other) {
    return new Attendee(id, standing, limits, weight, part, other);
  }

  /**
   * The name used in sentences.
   *
   * @return the name
   */
  public String name() {
    return standing.name();
  }

  boolean practises() {
    return part == Part.PRACTISES;
  }
}
