package rallywright.engine.calibration;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.random.RandomGenerator;
import rallywright.engine.skill.Club;
import rallywright.engine.skill.Contest;
import rallywright.engine.skill.Entrant;
import rallywright.engine.skill.SharedEffect;
import rallywright.engine.skill.SkillGroups;
import rallywright.engine.skill.SkillPrior;
import rallywright.engine.skill.Weights;

/**
 * What is known of an invented season before it begins: 6 to 10 players, some joining later, three
 * in four with a level; 5 to 8 weeks; all skills of the trade; five drills with weights chosen by
 * lot; two yardsticks. The sizes are those of a small club, an assumption of this project.
 *
 * @param club players, skills and what they share
 * @param weeks how many weeks it lasts
 * @param drills the scored drills; the gain of each has its number
 * @param yardsticks what is tested
 */
record Season(Club club, int weeks, List<PlayedDrill> drills, List<Test> yardsticks) {
  /** What is believed before the season, and what it is drawn from. */
  static final SkillPrior PRIOR = SkillPrior.DEFAULT;

  private static final int WEIGHTED_SKILLS = 3;
  private static final int USUAL_GAINS = 3;

  /** Prior SD of a gain, forty times that of the tool: only for this check. */
  private static final double WIDE = 40 * SharedEffect.GAIN_SD;

  private static final List<SharedEffect> EFFECTS =
      List.of(
          new SharedEffect("advantage of a drill", -0.85, PRIOR.effectSd()),
          new SharedEffect("one direction", 0, 0.2),
          new SharedEffect("the other direction", 0, 0.2),
          new SharedEffect("advantage of another drill", 0.3, PRIOR.effectSd()),
          new SharedEffect("advantage of the server", -0.2, PRIOR.effectSd()),
          new SharedEffect("yardstick", -0.2, PRIOR.effectSd()),
          new SharedEffect("another yardstick", 0.6, PRIOR.effectSd()));

  /**
   * A closed test.
   *
   * @param skill what it tests
   * @param difficulty number of its difficulty among the shared effects
   */
  record Test(int skill, int difficulty) {}

  Season {
    drills = List.copyOf(drills);
    yardsticks = List.copyOf(yardsticks);
  }

  static Season drawn(RandomGenerator random) {
    int weeks = 5 + random.nextInt(4);
    List<Entrant> entrants = new ArrayList<>();
    for (int players = 6 + random.nextInt(5); players > 0; players--) {
      double level = 2.5 + 0.5 * random.nextInt(6);
      boolean known = random.nextInt(4) > 0;
      int firstWeek = random.nextInt(5) > 0 ? 0 : random.nextInt(weeks - 1);
      entrants.add(
          new Entrant(known ? OptionalDouble.of(level) : OptionalDouble.empty(), firstWeek));
    }
    SkillGroups skills = SkillGroups.ofTheTrade();
    int count = skills.skills();
    List<PlayedDrill> drills =
        List.of(
            PlayedDrill.even(weights(count, random)),
            uneven(Contest.Roles.BY_SIDE, 0, List.of(1, 2), random),
            uneven(Contest.Roles.BY_SERVE, 4, List.of(), random),
            uneven(Contest.Roles.BY_SIDE, 3, List.of(), random),
            PlayedDrill.even(weights(count, random)));
    List<SharedEffect> gains = new ArrayList<>();
    for (int drill = 0; drill < drills.size(); drill++) {
      gains.add(
          drill < USUAL_GAINS
              ? SharedEffect.gain("a drill")
              : new SharedEffect("a drill", SharedEffect.GAIN_MEAN, WIDE));
    }
    return new Season(
        new Club(skills, entrants, EFFECTS, gains),
        weeks,
        drills,
        List.of(new Test(random.nextInt(count), 5), new Test(random.nextInt(count), 6)));
  }

  private static PlayedDrill uneven(
      Contest.Roles roles, int advantage, List<Integer> directions, RandomGenerator random) {
    int skills = SkillGroups.ofTheTrade().skills();
    Weights first = weights(skills, random);
    return new PlayedDrill(first, weights(skills, random), roles, advantage, directions);
  }

  private static Weights weights(int skills, RandomGenerator random) {
    double[] shares = new double[skills];
    double sum = 0;
    for (int i = 0; i < WEIGHTED_SKILLS; i++) {
      double share = 0.1 + random.nextDouble();
      shares[random.nextInt(skills)] += share;
      sum += share;
    }
    for (int skill = 0; skill < skills; skill++) {
      shares[skill] /= sum;
    }
    return Weights.of(shares);
  }

  int players() {
    return club.entrants().size();
  }

  int skills() {
    return club.skills().skills();
  }

  int firstWeek(int player) {
    return club.entrants().get(player).firstWeek();
  }

  boolean isYardstick(int effect) {
    return yardsticks.stream().anyMatch(test -> test.difficulty() == effect);
  }

  boolean isWideGain(int gain) {
    return gain >= USUAL_GAINS;
  }

  /** Variance of every skill of a player as the model first meets them. */
  double startVariance(int player) {
    boolean known = club.entrants().get(player).level().isPresent();
    return square(PRIOR.levelSd())
        + (known ? 0 : square(PRIOR.levelStep()))
        + square(PRIOR.groupSd())
        + square(PRIOR.skillSd());
  }

  private static double square(double x) {
    return x * x;
  }
}
