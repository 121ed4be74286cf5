package rallywright.engine.point;

import rallywright.engine.point.RallyChain.Winner;
import rallywright.engine.score.Ending.Manner;
import rallywright.engine.score.Ending.Stage;
import rallywright.engine.score.Ending.Stroke;
import rallywright.engine.skill.Estimate;

/**
 * How often rallies are lost in one way, beside what was to be expected.
 *
 * @param topic the way in which they are lost
 * @param lost how many noted lost rallies were lost so
 * @param of of how many noted lost rallies
 * @param low the lower end of the 80 % interval of the share
 * @param high its upper end
 * @param expected the share to be expected, with its SD
 * @param chance the chance to see so many or more if nothing were wrong, 0 to 1
 * @param verdict whether it may be called a breakdown
 */
public record BreakdownLine(
    Topic topic,
    int lost,
    int of,
    double low,
    double high,
    Estimate expected,
    double chance,
    Verdict verdict) {

  /** The standard normal value that bounds an 80 % interval. */
  private static final double SDS = 1.2815515655446004;

  /** What may be said. */
  public enum Verdict {
    /** It survives the check for chance among many looks: it may be named to the coach. */
    BREAKDOWN,
    /** Nothing that chance would not bring. */
    AS_EXPECTED,
    /** Too few noted rallies to look at. */
    TOO_FEW
  }

  /** A way in which a rally is lost. */
  public sealed interface Topic {
    /**
     * The way in a coach's words.
     *
     * @return for example "at the third shot, serving"
     */
    String words();
  }

  /**
   * In a stage of the point.
   *
   * @param role whether the player's side served
   * @param stage the stage
   */
  public record InStage(Winner role, Stage stage) implements Topic {
    @Override
    public String words() {
      String where =
          switch (stage) {
            case SERVE -> "with the serve";
            case RETURN -> "with the return";
            case THIRD_SHOT -> "at the third shot";
            case TRANSITION -> "on the way to the line";
            case NET_EXCHANGE -> "at the line";
          };
      return (role == Winner.SERVER ? "serving, " : "receiving, ") + where;
    }
  }

  /**
   * With a stroke.
   *
   * @param stroke the player's own after an error, the opponents' after being beaten
   * @param manner error or beaten
   */
  public record WithStroke(Stroke stroke, Manner manner) implements Topic {
    @Override
    public String words() {
      String name = stroke.name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
      return manner == Manner.ERROR ? "by a missed " + name : "beaten by a " + name;
    }
  }

  /** A line before the check among many looks; the interval is Wilson's (1927). */
  static BreakdownLine of(Topic topic, int lost, int of, Estimate expected) {
    double n = Math.max(1, of);
    double centre = (lost + SDS * SDS / 2) / (n + SDS * SDS);
    double half = SDS * Math.sqrt(lost * (n - lost) / n + SDS * SDS / 4) / (n + SDS * SDS);
    double chance = 1;
    Verdict verdict = Verdict.TOO_FEW;
    if (of >= Breakdown.FEWEST_LOST && expected.mean() > 0 && expected.mean() < 1) {
      chance = BetaBinomial.of(of, expected.mean(), expected.sd() * expected.sd()).atLeast(lost);
      verdict = Verdict.AS_EXPECTED;
    }
    return new BreakdownLine(
        topic,
        lost,
        of,
        Math.max(0, centre - half),
        Math.min(1, centre + half),
        expected,
        chance,
        verdict);
  }

  BreakdownLine named() {
    return new BreakdownLine(topic, lost, of, low, high, expected, chance, Verdict.BREAKDOWN);
  }

  /**
   * The share of lost rallies that were lost so.
   *
   * @return 0 to 1; 0 where none was noted
   */
  public double share() {
    return of == 0 ? 0 : (double) lost / of;
  }

  /**
   * The line for the coach.
   *
   * @return one sentence
   */
  public String sentence() {
    return "Lost %s: %d of %d noted lost rallies; about %d were to be expected."
        .formatted(topic.words(), lost, of, Math.round(expected.mean() * of));
  }
}
