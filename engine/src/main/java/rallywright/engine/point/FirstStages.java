package rallywright.engine.point;

import static rallywright.engine.drill.Skill.ATTACK;
import static rallywright.engine.drill.Skill.COUNTER;
import static rallywright.engine.drill.Skill.DINK;
import static rallywright.engine.drill.Skill.DRIVE;
import static rallywright.engine.drill.Skill.DROP;
import static rallywright.engine.drill.Skill.LOB;
import static rallywright.engine.drill.Skill.OVERHEAD;
import static rallywright.engine.drill.Skill.PRESSING_VOLLEY;
import static rallywright.engine.drill.Skill.RESET;
import static rallywright.engine.drill.Skill.RETURN;
import static rallywright.engine.drill.Skill.SERVE;

import java.util.Map;
import rallywright.engine.drill.SkillWeights;
import rallywright.engine.quantity.Source;
import rallywright.engine.score.Ending.Stage;

/**
 * The stages to start with, before any ending was noted.
 *
 * <p><b>Card.</b> Every number here is an assumption of this project; no measurement stands behind
 * any of them. The idea: few serves and returns end a rally; the third shot is where the server's
 * side loses most; whoever comes through the transition plays on level terms at the line. The
 * weights say which skills of each side decide a stage. Endings noted on court replace the odds
 * ({@link StageLearning}); the weights stay.
 */
public final class FirstStages {

  /** How far the odds of a stage may lie from the numbers here, in logits: an assumption. */
  public static final double PRIOR_SD = 0.5;

  private static final double ERRORS = 0.6;

  /** A point of doubles. */
  public static final PointStages DOUBLES =
      new PointStages(
          "doubles",
          Map.of(
              Stage.SERVE, serve(),
              Stage.RETURN, returnOfServe(),
              Stage.THIRD_SHOT, thirdShot(0.05, 0.16),
              Stage.TRANSITION, transition(0.09, 0.14, 0.3),
              Stage.NET_EXCHANGE, net(0.13)),
          ERRORS,
          Source.ASSUMPTION);

  /** A point of two players on half a court: fewer balls out of reach, more in the transition. */
  public static final PointStages HALF_COURT =
      new PointStages(
          "half court",
          Map.of(
              Stage.SERVE, serve(),
              Stage.RETURN, returnOfServe(),
              Stage.THIRD_SHOT, thirdShot(0.06, 0.14),
              Stage.TRANSITION, transition(0.10, 0.14, 0.4),
              Stage.NET_EXCHANGE, net(0.13)),
          ERRORS,
          Source.ASSUMPTION);

  private FirstStages() {}

  private static StageContest serve() {
    return StageContest.betweenEquals(
        0.01, 0.05, 0, SkillWeights.only(SERVE), SkillWeights.only(RETURN));
  }

  private static StageContest returnOfServe() {
    return StageContest.betweenEquals(
        0.06, 0.02, 0, new SkillWeights(Map.of(SERVE, 0.8, DRIVE, 0.2)), SkillWeights.only(RETURN));
  }

  private static StageContest thirdShot(double serverWins, double receiverWins) {
    return StageContest.betweenEquals(
        serverWins,
        receiverWins,
        0,
        new SkillWeights(Map.of(DROP, 0.60, DRIVE, 0.35, LOB, 0.05)),
        new SkillWeights(
            Map.of(RETURN, 0.25, PRESSING_VOLLEY, 0.45, COUNTER, 0.20, OVERHEAD, 0.10)));
  }

  private static StageContest transition(double serverWins, double receiverWins, double again) {
    return StageContest.betweenEquals(
        serverWins,
        receiverWins,
        again,
        new SkillWeights(Map.of(RESET, 0.45, DROP, 0.35, DRIVE, 0.10, COUNTER, 0.10)),
        new SkillWeights(
            Map.of(PRESSING_VOLLEY, 0.50, ATTACK, 0.20, COUNTER, 0.15, OVERHEAD, 0.15)));
  }

  private static StageContest net(double either) {
    SkillWeights both =
        new SkillWeights(
            Map.of(
                DINK, 0.38,
                ATTACK, 0.20,
                COUNTER, 0.22,
                RESET, 0.08,
                PRESSING_VOLLEY, 0.06,
                LOB, 0.03,
                OVERHEAD, 0.03));
    return StageContest.betweenEquals(either, either, 1, both, both);
  }
}
