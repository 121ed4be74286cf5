package rallywright.engine.skill;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import rallywright.engine.score.Goal;
import rallywright.engine.score.Score;
import rallywright.engine.score.Side;

/** A club drawn from the prior with a seed: the truth, and games and yardsticks played from it. */
final class SimulatedClub {
  static final SkillPrior PRIOR = SkillPrior.DEFAULT;
  private static final int SKILLS = 6;

  final Club club;
  final Set<Integer> weeks;
  final List<Evidence> evidence = new ArrayList<>();
  final double[] effects = {0, 0, 0};
  final double[] gains = {0, 0};
  private final double[][][] truth;
  private final int skills;
  private final Random random;
  private final Random atPractice;

  /** Chance of the game types, and how many players, weeks and games a week. */
  record Size(int players, int weeks, int gamesAWeek, int skills) {
    static Size small(int players, int weeks, int gamesAWeek) {
      return new Size(players, weeks, gamesAWeek, SKILLS);
    }
  }

  SimulatedClub(Size size, long seed) {
    random = new Random(seed);
    atPractice = new Random(~seed);
    skills = size.skills;
    List<Entrant> entrants = new ArrayList<>();
    for (int player = 0; player < size.players; player++) {
      boolean known = random.nextInt(4) > 0;
      double level = 3 + 0.5 * random.nextInt(4);
      entrants.add(new Entrant(known ? OptionalDouble.of(level) : OptionalDouble.empty(), 0));
    }
    List<SharedEffect> shared =
        List.of(
            new SharedEffect("back v up", -0.85, 0.4),
            new SharedEffect("server v receiver", -0.2, 0.4),
            new SharedEffect("drop yardstick", -0.2, 0.5));
    for (int effect = 0; effect < shared.size(); effect++) {
      effects[effect] = shared.get(effect).mean() + shared.get(effect).sd() * random.nextGaussian();
    }
    List<Integer> groups = IntStream.range(0, skills).mapToObj(skill -> skill / 2).toList();
    List<SharedEffect> pushes =
        List.of(
            new SharedEffect("a minute of one drill", 0.01, 0.02),
            new SharedEffect("a minute of another", 0, 0.02));
    for (int gain = 0; gain < gains.length; gain++) {
      gains[gain] = pushes.get(gain).mean() + pushes.get(gain).sd() * atPractice.nextGaussian();
    }
    club = new Club(new SkillGroups(groups), entrants, shared, pushes);
    weeks = IntStream.range(0, size.weeks).boxed().collect(Collectors.toSet());
    truth = new double[size.players][size.weeks][skills];
    for (int player = 0; player < size.players; player++) {
      drawSkills(player, truth[player]);
    }
    for (int week = 0; week < size.weeks; week++) {
      for (int game = 0; game < size.gamesAWeek; game++) {
        play(week, size.players);
      }
      test(week, random.nextInt(size.players));
    }
  }

  double skill(SkillSum.Key key) {
    return truth[key.player()][key.week()][key.skill()];
  }

  private void drawSkills(int player, double[][] byWeek) {
    Entrant entrant = club.entrants().get(player);
    double level = PRIOR.levelSd() * random.nextGaussian() + PRIOR.mean(entrant);
    if (entrant.level().isEmpty()) {
      level += PRIOR.levelStep() * random.nextGaussian();
    }
    double[] group = IntStream.range(0, skills).mapToDouble(i -> random.nextGaussian()).toArray();
    for (int skill = 0; skill < skills; skill++) {
      byWeek[0][skill] =
          level + PRIOR.groupSd() * group[skill / 2] + PRIOR.skillSd() * random.nextGaussian();
      for (int week = 1; week < byWeek.length; week++) {
        byWeek[week][skill] = byWeek[week - 1][skill] + PRIOR.weeklySd() * random.nextGaussian();
      }
    }
    double[] pushed = new double[skills];
    for (int week = 0; week < byWeek.length; week++) {
      for (int skill = 0; skill < skills; skill++) {
        byWeek[week][skill] += pushed[skill];
      }
      practise(week, player, pushed);
    }
  }

  /** Some minutes of either drill, or of none; what they push shows from the next week on. */
  private void practise(int week, int player, double[] pushed) {
    for (int gain = 0; gain < gains.length; gain++) {
      if (atPractice.nextInt(3) > 0) {
        double[] load = new double[skills];
        load[atPractice.nextInt(skills)] += 0.7;
        load[atPractice.nextInt(skills)] += 0.3;
        Practice practice =
            new Practice(week, player, gain, Weights.of(load), 5 + 30 * atPractice.nextDouble());
        evidence.add(practice);
        for (int skill = 0; skill < skills; skill++) {
          pushed[skill] += gains[gain] * practice.effectiveMinutes() * load[skill];
        }
      }
    }
  }

  private void play(int week, int players) {
    int a = random.nextInt(players);
    int b = (a + 1 + random.nextInt(players - 1)) % players;
    Sides sides = Sides.of(a, b);
    switch (random.nextInt(4)) {
      case 0 -> evidence.add(everyRally(week, even(), sides));
      case 1 -> evidence.add(everyRally(week, backVersusUp(), sides));
      case 2 -> evidence.add(sideOut(week, sides, true));
      default -> evidence.add(sideOut(week, sides, false));
    }
  }

  private Contest even() {
    double[] weights = new double[skills];
    weights[random.nextInt(skills)] += 0.5;
    weights[random.nextInt(skills)] += 0.5;
    return Contest.even(Weights.of(weights));
  }

  private Contest backVersusUp() {
    double[] back = new double[skills];
    double[] up = new double[skills];
    back[0] = 0.8;
    back[1] = 0.2;
    up[2] = 0.4;
    up[3] = 0.6;
    return new Contest(Weights.of(back), Weights.of(up), Contest.Roles.BY_SIDE, List.of(0));
  }

  private Contest serverVersusReceiver() {
    double[] server = new double[skills];
    double[] receiver = new double[skills];
    server[0] = 0.6;
    server[4] = 0.4;
    receiver[1] = 0.5;
    receiver[5] = 0.5;
    return new Contest(
        Weights.of(server), Weights.of(receiver), Contest.Roles.BY_SERVE, List.of(1));
  }

  private double chance(SkillSum sum) {
    double[] eta = {0};
    sum.forEachSkill((key, weight) -> eta[0] += weight * skill(key));
    sum.forEachEffect((effect, weight) -> eta[0] += weight * effects[effect]);
    return Logistic.chance(eta[0]);
  }

  private Game everyRally(int week, Contest contest, Sides sides) {
    double chance = chance(contest.serverEdge(sides, week, Side.A));
    int a = 0;
    int b = 0;
    while (Math.max(a, b) < 5) {
      if (random.nextDouble() < chance) {
        a++;
      } else {
        b++;
      }
    }
    return new Game(week, contest, sides, new RalliesWon(a, b));
  }

  private Game sideOut(int week, Sides sides, boolean logged) {
    Contest contest = serverVersusReceiver();
    double whenA = chance(contest.serverEdge(sides, week, Side.A));
    double whenB = chance(contest.serverEdge(sides, week, Side.B));
    boolean aServes = random.nextBoolean();
    ScorePath.FirstServer first = aServes ? ScorePath.FirstServer.A : ScorePath.FirstServer.B;
    int[] points = {0, 0};
    int[] served = {0, 0};
    while (Math.max(points[0], points[1]) < 5) {
      int side = aServes ? 0 : 1;
      served[side]++;
      if (random.nextDouble() < (aServes ? whenA : whenB)) {
        points[side]++;
      } else {
        aServes = !aServes;
      }
    }
    Result result =
        logged
            ? new RalliesByServer(served[0], points[0], served[1], points[1])
            : new ScorePath(
                ScorePath.Counting.SERVER_ONLY,
                Score.LOVE_ALL,
                Score.of(points[0], points[1]),
                Goal.firstTo(5),
                ScorePath.Ending.FINISHED,
                first);
    return new Game(week, contest, sides, result);
  }

  private void test(int week, int player) {
    double chance = Logistic.chance(truth[player][week][1] - effects[2]);
    int hits = (int) IntStream.range(0, 20).filter(i -> random.nextDouble() < chance).count();
    evidence.add(new YardstickResult(week, new YardstickResult.Test(player, 1, 2), hits, 20));
  }
}
