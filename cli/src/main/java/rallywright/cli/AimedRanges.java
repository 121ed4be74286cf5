package rallywright.cli;

import java.util.List;
import rallywright.engine.aim.Closer;
import rallywright.engine.flight.Ranged;

/**
 * What the spread of the ball's drag and lift does to where to aim: the lower end, the number and
 * the upper end, between the ends lie four balls in five.
 *
 * @param chance of success with the best aim of each ball
 * @param overNet_m air between the net and the ball
 * @param landX_m where it lands, beyond the net
 * @param speed_mps off the paddle
 * @param forgivesPace what the window forgives, as a share of the pace
 * @param forgivesElevation_deg what it forgives, up or down
 * @param windowArea in m/s × degrees
 * @param opponentMeets_s after contact
 * @param opponentStep_m how far they can step
 */
record AimedRanges(
    List<Double> chance,
    List<Double> overNet_m,
    List<Double> landX_m,
    List<Double> speed_mps,
    List<Double> forgivesPace,
    List<Double> forgivesElevation_deg,
    List<Double> windowArea,
    List<Double> opponentMeets_s,
    List<Double> opponentStep_m) {

  static AimedRanges of(Closer closer) {
    double degree = Math.toDegrees(1);
    return new AimedRanges(
        ends(closer.aim().chance(), 1),
        ends(closer.aim().clearance(), 1),
        ends(closer.aim().depth(), 1),
        ends(closer.aim().pace(), 1),
        ends(closer.forgives().pace(), 1),
        ends(closer.forgives().elevation(), degree),
        ends(closer.forgives().area(), 1),
        ends(closer.opponent().seconds(), 1),
        ends(closer.opponent().step(), 1));
  }

  private static List<Double> ends(Ranged range, double unit) {
    return List.of(unit * range.low(), unit * range.central(), unit * range.high());
  }
}
