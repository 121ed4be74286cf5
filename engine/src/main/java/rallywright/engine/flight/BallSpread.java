package rallywright.engine.flight;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/**
 * Answers for the balls that stand for the spread of published drag and lift.
 *
 * <p><b>Card.</b> In: conditions and any answer that follows from them. Out: for each number of the
 * answer that of the central ball, and a range that holds four balls in five. Method: three values
 * of drag (Gauss and Hermite's nodes 0 and ±√3 SD with weights 2/3 and 1/6) at the central lift and
 * three of lift at the central drag, five balls together; without spin there is no lift and three
 * are enough. Mean and SD are exact, up to the fifth order, for what drag and lift add to a number
 * each by itself; the range is the mean ± 1.2816 SD. Limits: what drag and lift do only together is
 * left out; both are taken as independent and normal; other doubts are not in it.
 *
 * @param <T> the answer
 */
public final class BallSpread<T> {

  private static final double NODE = Math.sqrt(3);
  private static final double OUTER_WEIGHT = 1.0 / 6;
  private static final double TEN_IN_A_HUNDRED = 1.2815515655446004;

  private final T central;

  /** Less and more of drag, then less and more of lift where it matters. */
  private final List<T> outer = new ArrayList<>();

  private BallSpread(Conditions conditions, boolean spins, Function<Conditions, T> answer) {
    central = answer.apply(conditions);
    outer.add(answer.apply(with(conditions, -NODE, 0)));
    outer.add(answer.apply(with(conditions, NODE, 0)));
    if (spins) {
      outer.add(answer.apply(with(conditions, 0, -NODE)));
      outer.add(answer.apply(with(conditions, 0, NODE)));
    }
  }

  /**
   * Answers, one for each ball; that of the central ball is asked for first.
   *
   * @param conditions whose ball carries the SDs of drag and lift
   * @param spins whether the ball spins, so that there is lift
   * @param answer for a ball
   * @param <T> the answer
   * @return the answers
   */
  public static <T> BallSpread<T> of(
      Conditions conditions, boolean spins, Function<Conditions, T> answer) {
    return new BallSpread<>(conditions, spins, answer);
  }

  /**
   * The answer for the central ball.
   *
   * @return the answer
   */
  public T central() {
    return central;
  }

  /**
   * The range of a number.
   *
   * @param number of an answer; NaN for a ball makes the ends NaN
   * @return the number with its range
   */
  public Ranged range(ToDoubleFunction<T> number) {
    double middle = number.applyAsDouble(central);
    double mean = middle;
    double variance = 0;
    for (int i = 0; i < outer.size(); i += 2) {
      double less = number.applyAsDouble(outer.get(i)) - middle;
      double more = number.applyAsDouble(outer.get(i + 1)) - middle;
      double shift = OUTER_WEIGHT * (less + more);
      mean += shift;
      variance += OUTER_WEIGHT * (less * less + more * more) - shift * shift;
    }
    double half = TEN_IN_A_HUNDRED * Math.sqrt(variance);
    return new Ranged(mean - half, middle, mean + half);
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
