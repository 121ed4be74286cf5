package rallywright.engine.flight;

import java.util.function.ToDoubleFunction;

/**
 * A number with what the spread of the ball's published drag and lift does to it.
 *
 * <p><b>Card.</b> In: conditions and any number that follows from them. Out: the number for the
 * central ball, and a range that holds four balls in five. Method: nine balls, three values each of
 * drag and lift (Gauss and Hermite's nodes 0 and ±√3 SD with weights 2/3 and 1/6), which is exact
 * for mean and SD of smooth answers up to the fifth order; the range is the mean ± 1.2816 SD.
 * Limits: drag and lift are taken as independent and normal; other doubts are not in it.
 *
 * @param low the lower end: one ball in ten lies below
 * @param central the answer for the central ball
 * @param high the upper end: one ball in ten lies above
 */
public record Ranged(double low, double central, double high) {

  private static final double[] NODES = {-Math.sqrt(3), 0, Math.sqrt(3)};
  private static final double[] WEIGHTS = {1.0 / 6, 2.0 / 3, 1.0 / 6};
  private static final double TEN_IN_A_HUNDRED = 1.2815515655446004;

  /**
   * An answer with its range.
   *
   * @param conditions whose ball carries the SDs of drag and lift
   * @param answer the number; NaN for a ball makes the range NaN
   * @return the range
   */
  public static Ranged over(Conditions conditions, ToDoubleFunction<Conditions> answer) {
    double mean = 0;
    double square = 0;
    double central = answer.applyAsDouble(conditions);
    for (int i = 0; i < NODES.length; i++) {
      for (int j = 0; j < NODES.length; j++) {
        double found =
            i == 1 && j == 1 ? central : answer.applyAsDouble(with(conditions, NODES[i], NODES[j]));
        double weight = WEIGHTS[i] * WEIGHTS[j];
        mean += weight * found;
        square += weight * (found - central) * (found - central);
      }
    }
    double shift = mean - central;
    double half = TEN_IN_A_HUNDRED * Math.sqrt(Math.max(0, square - shift * shift));
    return new Ranged(mean - half, central, mean + half);
  }

  private static Conditions with(Conditions conditions, double drags, double lifts) {
    Ball.Aero aero = conditions.ball().aero();
    Ball.Aero other =
        new Ball.Aero(
            Math.max(0, aero.drag() + drags * aero.dragSd()),
            aero.dragSd(),
            Math.max(0, aero.liftSlope() + lifts * aero.liftSlopeSd()),
            aero.liftSlopeSd());
    return new Conditions(conditions.ball().with(other), conditions.air(), conditions.wind());
  }
}
