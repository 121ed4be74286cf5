package rallywright.engine.point;

import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import rallywright.engine.point.StageContest.Tilt;
import rallywright.engine.score.Ending.Stage;

/**
 * One rally from the serve to its end, between two given sides.
 *
 * <p><b>Card.</b> In: the stages, and the edge of the server's side in each, in logits. Out: the
 * chance that the server's side wins; where rallies end and for whom; how the chance changes with
 * each edge, exactly. Method: {@link AbsorbingChain} over the five stages, with an exit for each
 * stage and winner. Limits: what happened in a stage leaves no trace in the next one, so a weak
 * return that is not punished at once does not make the third shot easier here beyond its weight.
 */
public final class RallyChain {

  private static final Stage[] STAGES = Stage.values();

  private final PointStages stages;
  private final Map<Stage, Double> edges;
  private final AbsorbingChain chain;

  private RallyChain(PointStages stages, Map<Stage, Double> edges) {
    this.stages = stages;
    this.edges = Collections.unmodifiableMap(new EnumMap<>(edges));
    int count = STAGES.length;
    double[][] steps = new double[count][count];
    double[][] exits = new double[count][2 * count];
    for (int stage = 0; stage < count; stage++) {
      StageChances chances = stages.of(STAGES[stage]).chances(edgeIn(STAGES[stage]));
      exits[stage][2 * stage] = chances.serverWins();
      exits[stage][2 * stage + 1] = chances.receiverWins();
      steps[stage][stage] = chances.again();
      if (stage + 1 < count) {
        steps[stage][stage + 1] = chances.onward();
      }
    }
    chain = AbsorbingChain.of(steps, exits);
  }

  /**
   * A rally.
   *
   * @param stages what is contested
   * @param edges η of each stage in logits; a stage that is missing is even
   * @return the rally
   */
  public static RallyChain of(PointStages stages, Map<Stage, Double> edges) {
    return new RallyChain(stages, edges);
  }

  /**
   * A rally of two players.
   *
   * @param stages what is contested
   * @param server the server
   * @param receiver the receiver
   * @return the rally
   */
  public static RallyChain between(PointStages stages, SkillProfile server, SkillProfile receiver) {
    Map<Stage, Double> edges = new EnumMap<>(Stage.class);
    for (Stage stage : STAGES) {
      edges.put(stage, stages.of(stage).edge(server, receiver));
    }
    return new RallyChain(stages, edges);
  }

  private double edgeIn(Stage stage) {
    return edges.getOrDefault(stage, 0.0);
  }

  private static int place(Stage stage) {
    return Arrays.asList(STAGES).indexOf(stage);
  }

  /**
   * The chance that the server's side wins the rally.
   *
   * @return from 0 to 1
   */
  public double serverWins() {
    double sum = 0;
    for (Stage stage : STAGES) {
      sum += endsIn(stage, Winner.SERVER);
    }
    return sum;
  }

  /** Who wins a rally. */
  public enum Winner {
    /** The server's side. */
    SERVER,
    /** The receiver's side. */
    RECEIVER;

    /**
     * The other side.
     *
     * @return who loses
     */
    public Winner loser() {
      return this == SERVER ? RECEIVER : SERVER;
    }
  }

  private static int exit(Stage stage, Winner winner) {
    return 2 * place(stage) + (winner == Winner.SERVER ? 0 : 1);
  }

  /**
   * The chance that the rally ends in a stage for a side.
   *
   * @param stage the stage
   * @param winner who wins
   * @return from 0 to 1; all of them sum to 1
   */
  public double endsIn(Stage stage, Winner winner) {
    return chain.exitChance(0, exit(stage, winner));
  }

  /**
   * The chance that the rally comes to a stage.
   *
   * @param stage the stage
   * @return from 0 to 1
   */
  public double reaches(Stage stage) {
    double stay = stages.of(stage).chances(edgeIn(stage)).again();
    return chain.visits(0, place(stage)) * (1 - stay);
  }

  /**
   * How the chance of the server's side changes with the edge in a stage: the exact derivative.
   *
   * @param stage the stage
   * @return per logit
   */
  public double slope(Stage stage) {
    AbsorbingChain.Change change = change(stage, Tilt.EDGE);
    double sum = 0;
    for (Stage end : STAGES) {
      sum += chain.slope(0, exit(end, Winner.SERVER), change);
    }
    return sum;
  }

  /**
   * How the chance of an ending changes with the logits of a stage: the exact derivative.
   *
   * @param end in which stage the rally ends
   * @param winner for whom
   * @param stage the stage whose logits change
   * @param tilt how they change
   * @return per logit
   */
  double slopeOfEnd(Stage end, Winner winner, Stage stage, Tilt tilt) {
    return chain.slope(0, exit(end, winner), change(stage, tilt));
  }

  private AbsorbingChain.Change change(Stage stage, Tilt tilt) {
    StageContest.StageSlopes slopes = stages.of(stage).slopes(edgeIn(stage), tilt);
    int row = place(stage);
    double[] steps = new double[STAGES.length];
    double[] exits = new double[2 * STAGES.length];
    steps[row] = slopes.again();
    if (row + 1 < STAGES.length) {
      steps[row + 1] = slopes.onward();
    }
    exits[2 * row] = slopes.serverWins();
    exits[2 * row + 1] = slopes.receiverWins();
    return new AbsorbingChain.Change(row, listed(steps), listed(exits));
  }

  private static List<Double> listed(double[] numbers) {
    return Arrays.stream(numbers).boxed().toList();
  }

  /**
   * The edges of this rally.
   *
   * @return η by stage, in logits
   */
  public Map<Stage, Double> edges() {
    return edges;
  }
}
