package rallywright.engine.flight;

/**
 * A number with what the spread of the ball's published drag and lift does to it; see {@link
 * BallSpread}. All three are NaN, or the ends are, where some of the balls have no answer.
 *
 * @param low the lower end: one ball in ten lies below
 * @param central the answer for the central ball
 * @param high the upper end: one ball in ten lies above
 */
public record Ranged(double low, double central, double high) {

  /** A number that no ball changes. */
  public static Ranged always(double number) {
    return new Ranged(number, number, number);
  }

  /** Whether every ball that was tried has an answer. */
  public boolean isKnown() {
    return Double.isFinite(low) && Double.isFinite(high);
  }
}
