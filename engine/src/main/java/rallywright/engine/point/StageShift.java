package rallywright.engine.point;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import rallywright.engine.point.RallyChain.Winner;
import rallywright.engine.score.Ending.Stage;
import rallywright.engine.skill.Estimate;

/**
 * How far a player's own endings in a stage depart from what the skills lead one to expect.
 *
 * <p><b>Card.</b> One shift of η for each stage, in logits, for the rallies that the player's side
 * serves or for those that it receives. Prior: normal with mean 0 and SD {@link #PRIOR_SD}, so that
 * few endings lean on the skills. Method: the mode by Newton's steps; the SD from the curvature.
 */
public final class StageShift {

  /** How far players usually depart from their skills in a stage: an assumption. */
  public static final double PRIOR_SD = 0.3;

  private static final int MOST_STEPS = 50;
  private static final double SMALL_STEP = 1e-12;

  private StageShift() {}

  /**
   * The shifts of a player in one role.
   *
   * @param stages the stages of the club
   * @param rallies noted rallies that the player's side served, or such as it received
   * @param own the role of the player's side in them
   * @return for each stage the shift in the player's favour, in logits
   */
  public static Map<Stage, Estimate> of(PointStages stages, List<NotedRally> rallies, Winner own) {
    Map<Stage, Estimate> shifts = new EnumMap<>(Stage.class);
    for (Stage stage : Stage.values()) {
      List<NotedRally> reached =
          rallies.stream().filter(rally -> rally.stage().compareTo(stage) >= 0).toList();
      shifts.put(stage, shift(stages.of(stage), stage, reached, own));
    }
    return shifts;
  }

  private static Estimate shift(
      StageContest contest, Stage stage, List<NotedRally> reached, Winner own) {
    double sign = own == Winner.SERVER ? 1 : -1;
    double shift = 0;
    double curve = 1;
    double moved = 1;
    for (int step = 0; step < MOST_STEPS && moved > SMALL_STEP; step++) {
      double slope = -shift / (PRIOR_SD * PRIOR_SD);
      curve = 1 / (PRIOR_SD * PRIOR_SD);
      for (NotedRally rally : reached) {
        StageChances chances = contest.chances(rally.expectation().edge(stage) + sign * shift);
        double left = 1 - chances.again();
        double server = chances.serverWins() / left;
        double receiver = chances.receiverWins() / left;
        double lead = (server - receiver) / 2;
        slope += sign * (half(rally, stage) - lead);
        curve += (server + receiver) / 4 - lead * lead;
      }
      moved = Math.abs(slope / curve);
      shift += slope / curve;
    }
    return new Estimate(shift, Math.sqrt(1 / curve));
  }

  private static double half(NotedRally rally, Stage stage) {
    if (rally.stage() != stage) {
      return 0;
    }
    return rally.winner() == Winner.SERVER ? 0.5 : -0.5;
  }
}
