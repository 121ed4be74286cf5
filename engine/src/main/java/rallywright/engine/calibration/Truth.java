package rallywright.engine.calibration;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.random.RandomGenerator;
import rallywright.engine.score.Side;
import rallywright.engine.skill.Contest;
import rallywright.engine.skill.Entrant;
import rallywright.engine.skill.SharedEffect;
import rallywright.engine.skill.SkillPrior;
import rallywright.engine.skill.SkillSum;
import rallywright.engine.skill.Weights;

/**
 * The numbers behind an invented season, drawn from what the model believes, and the chances that
 * follow from them. Written from the definition of the model, one independent normal number for
 * each of its spreads; it shares no line with the code that reads scores.
 */
final class Truth {
  private final Season season;
  private final double[][][] skills;
  private final double[][][][] practised;
  private final double[] effects;
  private final double[] gains;

  private Truth(Season season, RandomGenerator random) {
    this.season = season;
    skills = new double[season.players()][season.weeks()][season.skills()];
    practised =
        new double[season.players()][season.weeks()][season.skills()][season.club().gains().size()];
    for (double[][] byWeek : skills) {
      Arrays.stream(byWeek).forEach(week -> Arrays.fill(week, Double.NaN));
    }
    effects = drawn(season.club().effects(), random);
    gains = drawn(season.club().gains(), random);
  }

  static Truth drawn(Season season, RandomGenerator random) {
    return new Truth(season, random);
  }

  private static double[] drawn(List<SharedEffect> shared, RandomGenerator random) {
    return shared.stream()
        .mapToDouble(each -> each.mean() + each.sd() * random.nextGaussian())
        .toArray();
  }

  /** A player as the model first meets them. */
  void join(int player, RandomGenerator random) {
    SkillPrior prior = Season.PRIOR;
    Entrant entrant = season.club().entrants().get(player);
    double stepsOfLevel =
        entrant.level().isPresent()
            ? (entrant.level().getAsDouble() - 3.5) / 0.5
            : random.nextGaussian();
    double all = prior.levelStep() * stepsOfLevel + prior.levelSd() * random.nextGaussian();
    List<Double> byGroup = new ArrayList<>();
    for (int skill = 0; skill < season.skills(); skill++) {
      int group = season.club().skills().groupOf().get(skill);
      while (byGroup.size() <= group) {
        byGroup.add(prior.groupSd() * random.nextGaussian());
      }
      skills[player][entrant.firstWeek()][skill] =
          all + byGroup.get(group) + prior.skillSd() * random.nextGaussian();
    }
  }

  /** One week on: what practice brought, in effective minutes of each drill, and a random step. */
  void walk(int player, int week, double[] effectiveMinutes, RandomGenerator random) {
    for (int skill = 0; skill < season.skills(); skill++) {
      double pushed = 0;
      for (int drill = 0; drill < gains.length; drill++) {
        double minutes = effectiveMinutes[drill] * season.drills().get(drill).load().of(skill);
        practised[player][week + 1][skill][drill] = practised[player][week][skill][drill] + minutes;
        pushed += gains[drill] * minutes;
      }
      skills[player][week + 1][skill] =
          skills[player][week][skill] + pushed + Season.PRIOR.weeklySd() * random.nextGaussian();
    }
  }

  double skill(SkillSum.Key key) {
    return skills[key.player()][key.week()][key.skill()];
  }

  double rise(SkillSum.Key late, int since) {
    return skill(late) - skills[late.player()][since][late.skill()];
  }

  /** How unsure the model is, before the season, of what a skill will have become. */
  double priorSd(SkillSum.Key key) {
    return Math.sqrt(season.startVariance(key.player()) + walkVariance(key));
  }

  /** The same of its rise since the player's first week. */
  double priorSdOfRise(SkillSum.Key key) {
    return Math.sqrt(walkVariance(key));
  }

  private double walkVariance(SkillSum.Key key) {
    int weeks = key.week() - season.firstWeek(key.player());
    double variance = weeks * Season.PRIOR.weeklySd() * Season.PRIOR.weeklySd();
    for (int gain = 0; gain < gains.length; gain++) {
      double pushSd =
          season.club().gains().get(gain).sd()
              * practised[key.player()][key.week()][key.skill()][gain];
      variance += pushSd * pushSd;
    }
    return variance;
  }

  double effect(int effect) {
    return effects[effect];
  }

  double gain(int gain) {
    return gains[gain];
  }

  /** The chance that the side that serves wins a rally; without a serve, that the side does. */
  double chanceOfServer(Meeting meeting, Side server) {
    Contest contest = meeting.contest();
    boolean firstIsA = contest.roles() == Contest.Roles.BY_SIDE || server == Side.A;
    List<Integer> firsts = firstIsA ? meeting.sides().a() : meeting.sides().b();
    List<Integer> seconds = firstIsA ? meeting.sides().b() : meeting.sides().a();
    double edge =
        strength(firsts, meeting.week(), contest.first())
            - strength(seconds, meeting.week(), contest.second());
    for (int effect : contest.effects()) {
      edge += effects[effect];
    }
    double ofFirst = chance(meeting.clarity().share() * edge);
    boolean firstServes = firstIsA == (server == Side.A);
    return firstServes ? ofFirst : 1 - ofFirst;
  }

  private double strength(List<Integer> players, int week, Weights weights) {
    double sum = 0;
    for (int player : players) {
      for (int skill = 0; skill < season.skills(); skill++) {
        sum += weights.of(skill) * skills[player][week][skill];
      }
    }
    return sum / players.size();
  }

  double chanceOfHit(int player, int week, Season.Test test) {
    return chance(skills[player][week][test.skill()] - effects[test.difficulty()]);
  }

  private static double chance(double logits) {
    return 1 / (1 + Math.exp(-logits));
  }
}
