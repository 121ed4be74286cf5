package rallywright.benchmarks.rotation;

import java.util.ArrayList;
import java.util.List;
import rallywright.engine.club.PlayerId;
import rallywright.engine.odds.FairGame.HeadStart;
import rallywright.engine.rotation.RotationMatch;
import rallywright.engine.rotation.RotationRound;
import rallywright.engine.rotation.RotationWish;

/**
 * The cost of a doubles rotation in which everybody plays, in thousandths of a point: the same
 * numbers as the engine's, written down once more so that a model can be checked against it.
 */
final class Weights {

  static final long PARTNER_AGAIN = 2_000_000;
  static final long OPPONENT_AGAIN = 100_000;
  static final long HALF_MILLILOGIT = 50;
  static final long LIMIT_HALF_MILLILOGITS = 1600;
  static final long BEYOND = 3;

  private Weights() {}

  static long ofDifference(long halfMillilogits) {
    long beyond = Math.max(0, halfMillilogits - LIMIT_HALF_MILLILOGITS);
    return HALF_MILLILOGIT * (halfMillilogits + BEYOND * beyond);
  }

  static long millilogits(RotationWish wish, int place) {
    return Math.round(1000 * wish.players().get(place).strengthLogits());
  }

  /** Rounds from places: four for each table, the first two against the last two. */
  static List<RotationRound> rounds(RotationWish wish, int[][] lines) {
    List<RotationRound> rounds = new ArrayList<>();
    for (int[] line : lines) {
      List<RotationMatch> matches = new ArrayList<>();
      for (int first = 0; first < line.length; first += 4) {
        matches.add(
            new RotationMatch(
                first / 4 + 1,
                1,
                List.of(id(wish, line[first]), id(wish, line[first + 1])),
                List.of(id(wish, line[first + 2]), id(wish, line[first + 3])),
                new HeadStart(0, 0, 0.5)));
      }
      rounds.add(new RotationRound(rounds.size() + 1, matches, List.of()));
    }
    return rounds;
  }

  private static PlayerId id(RotationWish wish, int place) {
    return wish.players().get(place).id();
  }
}
