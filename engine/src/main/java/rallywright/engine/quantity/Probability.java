package rallywright.engine.quantity;

/**
 * A chance: a number from 0 (never) to 1 (always), both included.
 *
 * @param value the chance, dimensionless
 */
public record Probability(double value) implements Comparable<Probability> {

  /** An even chance. */
  public static final Probability EVEN = new Probability(0.5);

  /** Checks the range; the check is written so that NaN fails it. */
  public Probability {
    if (!(value >= 0 && value <= 1)) {
      throw new IllegalArgumentException(
          "The chance ("
              + value
              + ") must lie from 0 to 1. Maybe it was meant in percent: 55 % is"
              + " 0.55.");
    }
  }

  /**
   * The chance as a value.
   *
   * @param value from 0 to 1
   * @return the chance
   * @throws IllegalArgumentException if the value lies outside 0 to 1 or is not a number
   */
  public static Probability of(double value) {
    return new Probability(value);
  }

  /**
   * The chance of the opposite.
   *
   * @return 1 minus this chance
   */
  public Probability complement() {
    return new Probability(1 - value);
  }

  @Override
  public int compareTo(Probability other) {
    return Double.compare(value, other.value);
  }
}
