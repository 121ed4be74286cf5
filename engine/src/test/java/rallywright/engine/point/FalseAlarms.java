package rallywright.engine.point;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import rallywright.engine.point.BreakdownLine.InStage;
import rallywright.engine.point.NotedRally.Expectation;
import rallywright.engine.point.NotedStroke.Context;
import rallywright.engine.point.NotedStroke.FirstShares;
import rallywright.engine.point.RallyChain.Winner;
import rallywright.engine.score.Ending.Manner;
import rallywright.engine.score.Ending.Stage;
import rallywright.engine.score.Ending.Stroke;

/**
 * Clubs in which nothing breaks down, or one thing does: how often is a breakdown named?
 *
 * <p>Truth: the stages' base logits lie around the assumed ones with the prior's SD, one draw a
 * club; a player's edge in a stage lies around 0 with an SD of 0.4, known to the tool only with
 * that SD; strokes of a setting are shared with one draw a club. Each player has 60 to 240 noted
 * rallies.
 */
final class FalseAlarms {

  private static final double EDGE_SD = 0.4;
  private static final double WEAK_LOGITS = -1.5;
  private static final Context SETTING = new Context("game", "SERVER", Manner.ERROR);
  private static final List<Stroke> STROKES =
      List.of(Stroke.DROP, Stroke.DRIVE, Stroke.RESET, Stroke.DINK, Stroke.ATTACK, Stroke.LOB);

  private FalseAlarms() {}

  /**
   * What was named.
   *
   * @param players how many players
   * @param alarmed of how many something was named that was not so
   * @param found of how many weak players, one a club, the weakness was named
   */
  record Count(int players, int alarmed, int found) {}

  static Count simulate(int clubs, int players, long seed, Optional<Stage> weakness) {
    SplittableRandom random = new SplittableRandom(seed);
    int alarmed = 0;
    int found = 0;
    for (int club = 0; club < clubs; club++) {
      Club drawn = new Club(random.split(), players, weakness);
      for (int player = 0; player < players; player++) {
        List<BreakdownLine> named = drawn.breakdown(player).breakdowns();
        Optional<Stage> truth = player == 0 ? weakness : Optional.empty();
        boolean right = named.stream().anyMatch(line -> isTrue(line, truth));
        found += right ? 1 : 0;
        alarmed += named.stream().anyMatch(line -> !isTrue(line, truth)) ? 1 : 0;
      }
    }
    return new Count(clubs * players, alarmed, found);
  }

  private static boolean isTrue(BreakdownLine line, Optional<Stage> weakness) {
    return line.topic() instanceof InStage in
        && in.role() == Winner.SERVER
        && weakness.equals(Optional.of(in.stage()));
  }

  private static final class Club {
    private final SplittableRandom random;
    private final List<List<NotedRally>> served = new ArrayList<>();
    private final List<List<NotedRally>> received = new ArrayList<>();
    private final List<List<NotedStroke>> strokes = new ArrayList<>();
    private final StageLearning learning;

    Club(SplittableRandom random, int players, Optional<Stage> weakness) {
      this.random = random;
      PointStages truth = FirstStages.HALF_COURT;
      for (Stage stage : Stage.values()) {
        StageContest contest = truth.of(stage);
        truth =
            truth.with(
                stage,
                contest.withLogits(
                    contest.serverLogit() + FirstStages.PRIOR_SD * random.nextGaussian(),
                    contest.receiverLogit() + FirstStages.PRIOR_SD * random.nextGaussian()));
      }
      double[] habits = new double[STROKES.size()];
      for (int i = 0; i < habits.length; i++) {
        habits[i] = Math.exp(0.5 * random.nextGaussian());
      }
      List<NotedRally> all = new ArrayList<>();
      for (int player = 0; player < players; player++) {
        int count = 30 + random.nextInt(91);
        served.add(rallies(truth, count, player == 0 ? weakness : Optional.empty()));
        received.add(rallies(truth, count, Optional.empty()));
        strokes.add(drawnStrokes(habits, 15 + random.nextInt(46)));
        all.addAll(served.get(player));
        all.addAll(received.get(player));
      }
      learning = StageLearning.from(FirstStages.HALF_COURT, all);
    }

    private List<NotedRally> rallies(PointStages truth, int count, Optional<Stage> weakness) {
      Map<Stage, Double> edges = new EnumMap<>(Stage.class);
      Map<Stage, Double> variances = new EnumMap<>(Stage.class);
      for (Stage stage : Stage.values()) {
        edges.put(stage, EDGE_SD * random.nextGaussian());
        variances.put(stage, EDGE_SD * EDGE_SD);
      }
      weakness.ifPresent(stage -> edges.merge(stage, WEAK_LOGITS, Double::sum));
      Expectation known = new Expectation(Map.of(), variances);
      RallyChain chain = RallyChain.of(truth, edges);
      List<NotedRally> rallies = new ArrayList<>();
      for (int i = 0; i < count; i++) {
        rallies.add(RallyDraws.draw(chain, known, random));
      }
      return rallies;
    }

    private List<NotedStroke> drawnStrokes(double[] habits, int count) {
      double sum = 0;
      for (double habit : habits) {
        sum += habit;
      }
      List<NotedStroke> drawn = new ArrayList<>();
      for (int i = 0; i < count; i++) {
        double left = sum * random.nextDouble();
        int place = 0;
        while (place < habits.length - 1 && left >= habits[place]) {
          left -= habits[place];
          place++;
        }
        drawn.add(new NotedStroke(SETTING, STROKES.get(place), Map.of()));
      }
      return drawn;
    }

    Breakdown breakdown(int player) {
      List<NotedStroke> others = new ArrayList<>();
      for (int other = 0; other < strokes.size(); other++) {
        if (other != player) {
          others.addAll(strokes.get(other));
        }
      }
      Map<Stroke, Double> first = new EnumMap<>(Stroke.class);
      STROKES.forEach(stroke -> first.put(stroke, 1.0));
      return Breakdown.of(
          new Breakdown.Own(served.get(player), received.get(player), strokes.get(player)),
          new Breakdown.Others(learning, Map.of(SETTING, new FirstShares(first)), others));
    }
  }

  /** The larger run of the model card: rates over 2,400 players of 200 clubs, three settings. */
  public static void main(String[] arguments) {
    for (Optional<Stage> weakness :
        List.of(
            Optional.<Stage>empty(),
            Optional.of(Stage.THIRD_SHOT),
            Optional.of(Stage.NET_EXCHANGE))) {
      Count count = simulate(200, 12, 20_261, weakness);
      System.out.printf("weakness %s: %s%n", weakness, count);
    }
  }
}
