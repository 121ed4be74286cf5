package rallywright.engine.rotation;

import rallywright.engine.club.PlayerId;

/**
 * Two different players, in no order.
 *
 * @param one the one whose id sorts first
 * @param other the other
 */
public record Pairing(PlayerId one, PlayerId other) {

  /** Puts the two in order and refuses a pair of one. */
  public Pairing {
    if (one.equals(other)) {
      throw new IllegalArgumentException(
          "A pair (%s and %s) must be two different players. Maybe one name is a slip."
              .formatted(one, other));
    }
    if (one.value().compareTo(other.value()) > 0) {
      PlayerId swapped = one;
      one = other;
      other = swapped;
    }
  }

  /**
   * Whether a player is one of the two.
   *
   * @param player any player
   * @return true if so
   */
  public boolean has(PlayerId player) {
    return one.equals(player) || other.equals(player);
  }
}
