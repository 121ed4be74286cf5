package rallywright.engine.simulation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.random.RandomGenerator;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.DrillForm;
import rallywright.engine.drill.DrillSide;
import rallywright.engine.drill.SecondsPrior;
import rallywright.engine.drill.Serving;
import rallywright.engine.plan.PlannedGame;
import rallywright.engine.score.BySide;
import rallywright.engine.score.Ending;
import rallywright.engine.score.GameFormat;
import rallywright.engine.score.GameState;
import rallywright.engine.score.Rally;
import rallywright.engine.score.Side;

/**
 * One game played from the truth.
 *
 * @param rallies the rallies in order
 * @param seconds when each rally ended, in seconds since the game began
 * @param last the state after the last rally
 */
public record SimulatedGame(List<Rally> rallies, List<Double> seconds, GameState last) {

  /** A game is stopped here whatever its score, so that a level one cannot go on for ever. */
  private static final int MOST_RALLIES = 300;

  private static final double NOTED = 0.5;

  /** Whole points are watched more closely than drills. */
  private static final double NOTED_OF_POINTS = 0.9;

  private static final double ERRORS = 0.6;

  /** Keeps copies. */
  public SimulatedGame {
    rallies = List.copyOf(rallies);
    seconds = List.copyOf(seconds);
  }

  /**
   * Plays a game until it is won or the given number of rallies was played.
   *
   * @param truth who is how good
   * @param drill the drill, scored
   * @param game who plays
   * @param format how it counts
   * @param random the seeded source of chance
   * @return the whole game
   */
  public static SimulatedGame play(
      ClubTruth truth, Drill drill, PlannedGame game, GameFormat format, RandomGenerator random) {
    DrillForm.Scored scored = drill.scored().orElseThrow();
    double noted = scored.serving() == Serving.FEED ? NOTED : NOTED_OF_POINTS;
    TrueStages stages = TrueStages.of(truth.skills(), scored, game);
    List<Rally> rallies = new ArrayList<>();
    List<Double> seconds = new ArrayList<>();
    double clock = 0;
    GameState state = GameState.start(format);
    while (!state.isOver() && rallies.size() < MOST_RALLIES) {
      Side server = state.serve().side();
      Side winner = random.nextDouble() < truth.chanceOfA(drill, game, server) ? Side.A : Side.B;
      Rally rally = Rally.wonBy(winner);
      if (random.nextDouble() < noted) {
        rally =
            rally.withEnding(
                ending(
                    stages.drawn(server, winner, random),
                    new BySide<>(
                        role(scored, game, server, Side.A), role(scored, game, server, Side.B)),
                    winner,
                    random));
      }
      clock += drawn(scored.seconds().between(), random);
      clock += drawn(scored.seconds().inPlay(), random);
      rallies.add(rally);
      seconds.add(clock);
      state = state.after(rally);
    }
    return new SimulatedGame(rallies, seconds, state);
  }

  /**
   * The game as it stood after some rallies.
   *
   * @param count how many rallies, at most all
   * @return the cut game, its clock still running
   */
  public SimulatedGame first(int count) {
    GameState state = GameState.start(last.format());
    for (Rally rally : rallies.subList(0, count)) {
      state = state.after(rally);
    }
    return new SimulatedGame(rallies.subList(0, count), seconds.subList(0, count), state);
  }

  /** The task that a side had in a rally. */
  private static DrillSide role(DrillForm.Scored scored, PlannedGame game, Side server, Side side) {
    DrillSide first = scored.layout().sides().a();
    boolean isFirst =
        scored.serving() != Serving.FEED
            ? side == server
            : (side == Side.A ? game.a() : game.b()).role() == first.role();
    return isFirst ? first : scored.layout().sides().b();
  }

  /** Missed with a stroke of the loser's task, or beaten by one of the winner's. */
  private static Ending ending(
      Optional<Ending.Stage> stage, BySide<DrillSide> tasks, Side winner, RandomGenerator random) {
    Ending.Manner manner =
        random.nextDouble() < ERRORS ? Ending.Manner.ERROR : Ending.Manner.BEATEN;
    DrillSide striker = tasks.of(manner == Ending.Manner.ERROR ? winner.opponent() : winner);
    List<Ending.Stroke> strokes = striker.strokes().stream().sorted().toList();
    Ending.Stroke stroke = strokes.get(random.nextInt(strokes.size()));
    return new Ending(stage, Optional.of(stroke), Optional.of(manner));
  }

  private static double drawn(SecondsPrior time, RandomGenerator random) {
    return Math.exp(time.logMean() + time.logSd() * random.nextGaussian());
  }
}
