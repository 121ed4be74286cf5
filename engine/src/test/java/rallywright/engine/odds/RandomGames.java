package rallywright.engine.odds;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import rallywright.engine.odds.RallyChances.PairChances;
import rallywright.engine.quantity.Probability;
import rallywright.engine.score.GameFormat;
import rallywright.engine.score.GameState;
import rallywright.engine.score.Goal;
import rallywright.engine.score.Places;
import rallywright.engine.score.Rally;
import rallywright.engine.score.Score;
import rallywright.engine.score.Scoring;
import rallywright.engine.score.Side;
import rallywright.engine.score.WinBy;

/** Formats, chances and live states drawn at random from a seed. */
record RandomGames(Random random) {

  static RandomGames seeded(long seed) {
    return new RandomGames(new Random(seed));
  }

  GameFormat format(int largestTarget) {
    Scoring scoring = List.of(Scoring.values()).get(random.nextInt(Scoring.values().length));
    GameFormat format = TestFormats.format(scoring, 1 + random.nextInt(largestTarget), 1);
    if (scoring.everyRallyScores() && random.nextBoolean()) {
      format = format.withPlaces(Places.PAIRS);
    }
    format = format.withGoal(goal(format.goal(), largestTarget));
    format = format.withFirstServer(side());
    int startA = random.nextInt(format.goal().targets().a());
    int startB = random.nextInt(format.goal().targets().b());
    return format.withStart(random.nextInt(3) == 0 ? Score.of(startA, startB) : Score.LOVE_ALL);
  }

  private Goal goal(Goal goal, int largestTarget) {
    int target = goal.targets().a();
    return switch (random.nextInt(4)) {
      case 0 -> goal;
      case 1 -> Goal.unequal(target, 1 + random.nextInt(largestTarget));
      case 2 -> goal.withWinBy(WinBy.TWO).withCap(target + random.nextInt(5));
      default -> goal.withWinBy(WinBy.TWO);
    };
  }

  RallyChances chances(GameFormat format) {
    int kind = random.nextInt(3);
    if (kind == 0 && format.scoring().hasTwoServers()) {
      return RallyChances.ofServers(
          new PairChances(chance(), chance()), new PairChances(chance(), chance()));
    }
    return kind == 1 ? RallyChances.ofRally(chance()) : RallyChances.ofServe(chance(), chance());
  }

  /** A state that some rallies lead to. */
  GameState liveState(GameFormat format) {
    GameState state = GameState.start(format);
    int rallies = random.nextInt(40);
    List<GameState> seen = new ArrayList<>(List.of(state));
    for (int i = 0; i < rallies && !state.isOver(); i++) {
      state = state.after(Rally.wonBy(side()));
      seen.add(state);
    }
    return state.isOver() ? seen.get(seen.size() - 2) : state;
  }

  Probability chance() {
    return Probability.of(0.05 + 0.9 * random.nextDouble());
  }

  Side side() {
    return random.nextBoolean() ? Side.A : Side.B;
  }
}
