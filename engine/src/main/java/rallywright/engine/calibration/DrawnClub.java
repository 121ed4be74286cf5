package rallywright.engine.calibration;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import rallywright.engine.skill.Clarity;
import rallywright.engine.skill.Contest;
import rallywright.engine.skill.Evidence;
import rallywright.engine.skill.Practice;
import rallywright.engine.skill.Sides;
import rallywright.engine.skill.YardstickResult;

/**
 * An invented club that plays its season: each week those present play games of all sorts, count
 * yardsticks and practise; what was practised and chance move their skills to the next week.
 */
final class DrawnClub {
  private static final int BALLS = 20;
  private static final int GAMES_EACH = 2;
  private static final double MINUTES_OF_A_GAME = 6;

  private final Season season;
  private final Truth truth;
  private final RandomGenerator random;
  private final List<Evidence> evidence = new ArrayList<>();

  private DrawnClub(Season season, RandomGenerator random) {
    this.season = season;
    this.random = random;
    truth = Truth.drawn(season, random);
  }

  static DrawnClub of(Season season, RandomGenerator random) {
    DrawnClub club = new DrawnClub(season, random);
    for (int week = 0; week < season.weeks(); week++) {
      club.play(week);
    }
    return club;
  }

  Season season() {
    return season;
  }

  Truth truth() {
    return truth;
  }

  List<Evidence> evidence() {
    return List.copyOf(evidence);
  }

  private void play(int week) {
    double[][] minutes = new double[season.players()][season.drills().size()];
    List<Integer> present = new ArrayList<>();
    for (int player = 0; player < season.players(); player++) {
      if (season.firstWeek(player) == week) {
        truth.join(player, random);
      }
      if (season.firstWeek(player) <= week && random.nextInt(5) > 0) {
        present.add(player);
      }
    }
    if (present.size() > 1) {
      for (int game = 0; game < GAMES_EACH * present.size(); game++) {
        addGame(week, present, minutes);
      }
    }
    for (int player : present) {
      practise(minutes[player]);
      count(week, player);
    }
    step(week, minutes);
  }

  private void addGame(int week, List<Integer> present, double[][] minutes) {
    int half = present.size() > 3 && random.nextInt(4) == 0 ? 2 : 1;
    List<Integer> waiting = new ArrayList<>(present);
    List<Integer> seated = new ArrayList<>();
    while (seated.size() < 2 * half) {
      seated.add(waiting.remove(random.nextInt(waiting.size())));
    }
    Sides sides = new Sides(seated.subList(0, half), seated.subList(half, 2 * half));
    int drill = random.nextInt(season.drills().size());
    Clarity clarity =
        random.nextInt(5) > 0 ? Clarity.FULL : new Clarity(0.6 + 0.4 * random.nextDouble());
    Contest contest = season.drills().get(drill).contest(random);
    evidence.add(GamePlay.of(new Meeting(week, contest, sides, clarity), truth, random));
    seated.forEach(player -> minutes[player][drill] += MINUTES_OF_A_GAME);
  }

  /** Half of the drills also get some minutes that nobody counts points in. */
  private void practise(double[] minutes) {
    for (int drill = 0; drill < minutes.length; drill++) {
      if (random.nextBoolean()) {
        minutes[drill] += 5 + 25 * random.nextDouble();
      }
    }
  }

  private void count(int week, int player) {
    if (random.nextInt(3) == 0) {
      Season.Test test = season.yardsticks().get(random.nextInt(season.yardsticks().size()));
      double chance = truth.chanceOfHit(player, week, test);
      int hits = 0;
      for (int ball = 0; ball < BALLS; ball++) {
        hits += random.nextDouble() < chance ? 1 : 0;
      }
      YardstickResult.Test who = new YardstickResult.Test(player, test.skill(), test.difficulty());
      evidence.add(new YardstickResult(week, who, hits, BALLS));
    }
  }

  private void step(int week, double[][] minutes) {
    for (int player = 0; player < season.players(); player++) {
      double[] effective = new double[minutes[player].length];
      for (int drill = 0; drill < effective.length; drill++) {
        if (minutes[player][drill] > 0) {
          effective[drill] = 25 * (1 - Math.exp(-minutes[player][drill] / 25));
          evidence.add(
              new Practice(
                  week, player, drill, season.drills().get(drill).load(), minutes[player][drill]));
        }
      }
      if (season.firstWeek(player) <= week && week + 1 < season.weeks()) {
        truth.walk(player, week, effective, random);
      }
    }
  }
}
