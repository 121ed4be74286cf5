package rallywright.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import rallywright.engine.drill.Skill;
import rallywright.engine.skill.Club;
import rallywright.engine.skill.Contest;
import rallywright.engine.skill.Entrant;
import rallywright.engine.skill.Evidence;
import rallywright.engine.skill.Game;
import rallywright.engine.skill.Practice;
import rallywright.engine.skill.RalliesWon;
import rallywright.engine.skill.SharedEffect;
import rallywright.engine.skill.Sides;
import rallywright.engine.skill.SkillGroups;
import rallywright.engine.skill.SkillPrior;
import rallywright.engine.skill.Weights;

/**
 * A club invented for measuring: groups of 12 to 20 players who meet once a week, a share of games
 * with a guest of another group, drills of the kinds that coaches use, scores played from skills
 * that wander. Everything follows from a seed.
 */
final class BigClub {
  private static final int SKILLS = Skill.values().length;
  private static final double PRESENT = 0.75;
  private static final int DRILLS = 12;
  private static final int RALLIES_OF_A_GAME = 8;
  private static final double MINUTES_OF_A_GAME = 2.4;

  /**
   * How large the club is.
   *
   * @param players how many players
   * @param weeks how many weeks
   * @param rallies about how many rallies in all
   * @param guests the share of games with a guest of another group, 0 to 1
   */
  record Size(int players, int weeks, int rallies, double guests) {}

  private final Size size;
  private final SplittableRandom random;
  private final List<Contest> contests = new ArrayList<>();
  private final List<List<Integer>> groups = new ArrayList<>();
  private final double[][] skills;
  private final double[] effects;
  private final Club club;

  BigClub(Size size, long seed) {
    this.size = size;
    random = new SplittableRandom(seed);
    List<SharedEffect> advantages = new ArrayList<>();
    List<SharedEffect> gains = new ArrayList<>();
    for (int drill = 0; drill < DRILLS; drill++) {
      gains.add(SharedEffect.gain("drill " + drill));
      contests.add(contest(drill, advantages));
    }
    effects =
        advantages.stream()
            .mapToDouble(each -> each.mean() + 0.4 * random.nextGaussian())
            .toArray();
    List<Entrant> entrants = new ArrayList<>();
    skills = new double[size.players][SKILLS];
    for (int player = 0; player < size.players; player++) {
      double level = 2.5 + 0.5 * random.nextInt(5);
      entrants.add(Entrant.atLevel(level));
      double common = 0.9 * (level - 3.5) + 0.5 * random.nextGaussian();
      for (int skill = 0; skill < SKILLS; skill++) {
        skills[player][skill] = common + 0.4 * random.nextGaussian();
      }
    }
    for (int first = 0; first < size.players; ) {
      int last = Math.min(size.players, first + 12 + random.nextInt(9));
      groups.add(IntStream.range(first, last).boxed().toList());
      first = last;
    }
    club = new Club(SkillGroups.ofTheTrade(), entrants, advantages, gains);
  }

  private Contest contest(int drill, List<SharedEffect> advantages) {
    Weights first = weights();
    if (drill % 2 == 0) {
      return Contest.even(first);
    }
    advantages.add(new SharedEffect("advantage of drill " + drill, -0.5, 0.4));
    return new Contest(first, weights(), Contest.Roles.BY_SIDE, List.of(advantages.size() - 1));
  }

  private Weights weights() {
    double[] values = new double[SKILLS];
    int main = random.nextInt(SKILLS);
    values[main] = 0.6;
    values[(main + 1 + random.nextInt(SKILLS - 1)) % SKILLS] += 0.4;
    return Weights.of(values);
  }

  Club club() {
    return club;
  }

  /** All weeks. */
  List<Evidence> season() {
    List<Evidence> evidence = new ArrayList<>();
    for (int week = 0; week < size.weeks; week++) {
      for (int group = 0; group < groups.size(); group++) {
        evidence.addAll(session(group, week));
      }
      wander();
    }
    return evidence;
  }

  /** One session of a group; the skills stay. */
  List<Evidence> session(int group, int week) {
    List<Evidence> evidence = new ArrayList<>();
    List<Integer> present = new ArrayList<>();
    for (int player : groups.get(group)) {
      if (random.nextDouble() < PRESENT) {
        present.add(player);
      }
    }
    if (present.size() < 2) {
      return evidence;
    }
    double games =
        size.rallies
            / (double) RALLIES_OF_A_GAME
            / size.weeks
            * groups.get(group).size()
            / size.players;
    double[][] minutes = new double[size.players][DRILLS];
    for (int game = 0; game < Math.round(games); game++) {
      evidence.add(game(group, present, week, minutes));
    }
    for (int player : present) {
      for (int drill = 0; drill < DRILLS; drill++) {
        if (minutes[player][drill] > 0) {
          Weights load = contests.get(drill).first();
          evidence.add(new Practice(week, player, drill, load, minutes[player][drill]));
        }
      }
    }
    return evidence;
  }

  private Game game(int group, List<Integer> present, int week, double[][] minutes) {
    int a = present.get(random.nextInt(present.size()));
    int b = a;
    while (b == a) {
      b =
          random.nextDouble() < size.guests
              ? guest(group)
              : present.get(random.nextInt(present.size()));
    }
    int drill = random.nextInt(DRILLS);
    Contest contest = contests.get(drill);
    double edge = contest.effects().isEmpty() ? 0 : effects[contest.effects().get(0)];
    for (int skill = 0; skill < SKILLS; skill++) {
      edge += contest.first().of(skill) * skills[a][skill];
      edge -= contest.second().of(skill) * skills[b][skill];
    }
    int won = 0;
    for (int rally = 0; rally < RALLIES_OF_A_GAME; rally++) {
      won += random.nextDouble() < 1 / (1 + Math.exp(-edge)) ? 1 : 0;
    }
    minutes[a][drill] += MINUTES_OF_A_GAME;
    minutes[b][drill] += MINUTES_OF_A_GAME;
    return new Game(week, contest, Sides.of(a, b), new RalliesWon(won, RALLIES_OF_A_GAME - won));
  }

  private int guest(int group) {
    int other = random.nextInt(size.players);
    return groups.get(group).contains(other) && groups.size() > 1 ? guest(group) : other;
  }

  private void wander() {
    for (double[] own : skills) {
      for (int skill = 0; skill < SKILLS; skill++) {
        own[skill] += SkillPrior.DEFAULT.weeklySd() * random.nextGaussian();
      }
    }
  }

  int groups() {
    return groups.size();
  }

  List<Integer> group(int number) {
    return groups.get(number);
  }
}
