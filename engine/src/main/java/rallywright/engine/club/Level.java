package rallywright.engine.club;

/**
 * The coach's own estimate of a player on the trade's scale, about 2.5 (knows the rules) to 5.0 and
 * above (tournament play). It only starts the estimates; results take over.
 *
 * @param value from 1.0 to 7.0
 */
public record Level(double value) implements Comparable<Level> {

  /** Checks the range; the check is written so that NaN fails it. */
  public Level {
    if (!(value >= 1 && value <= 7)) {
      throw new IllegalArgumentException(
          "The level (" + value + ") must lie from 1.0 to 7.0. Maybe 3.5 was meant, not 35.");
    }
  }

  @Override
  public int compareTo(Level other) {
    return Double.compare(value, other.value);
  }
}
