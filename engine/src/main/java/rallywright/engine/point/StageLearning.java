package rallywright.engine.point;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import rallywright.engine.point.RallyChain.Winner;
import rallywright.engine.quantity.Source;
import rallywright.engine.score.Ending.Stage;
import rallywright.engine.skill.Estimate;

/**
 * What noted endings say about the stages of a point.
 *
 * <p><b>Card.</b> In: stages as assumed, noted rallies with the edges that the skills give. Out:
 * the two base logits of each stage with their covariance. Model: in each stage a rally ends for
 * the one side, for the other, or leaves the stage: three logistic odds with the skills' edge as a
 * fixed part, normal priors of SD {@link FirstStages#PRIOR_SD} around the assumed numbers. Few
 * endings therefore lean on the assumption and on the skills. Method: the mode by Newton's steps,
 * one stage at a time; the covariance is the inverse of the curvature there. Limits: how often a
 * rally stays in a stage cannot be seen in endings and is not learned; endings that were noted must
 * be a fair sample of all.
 */
public final class StageLearning {

  private static final int MOST_STEPS = 50;
  private static final double SMALL_STEP = 1e-12;

  private final PointStages stages;
  private final Map<Stage, Spread> spreads;
  private final int endings;

  /**
   * How unsure the base logits of a stage are.
   *
   * @param server the variance of s
   * @param receiver the variance of r
   * @param together their covariance
   */
  public record Spread(double server, double receiver, double together) {
    /** The variance of a derivative's worth of both. */
    double along(double byServer, double byReceiver) {
      return byServer * byServer * server
          + byReceiver * byReceiver * receiver
          + 2 * byServer * byReceiver * together;
    }
  }

  private StageLearning(PointStages stages, Map<Stage, Spread> spreads, int endings) {
    this.stages = stages;
    this.spreads = spreads;
    this.endings = endings;
  }

  /**
   * Learns from endings.
   *
   * @param assumed the stages to start with
   * @param rallies the noted rallies
   * @return what is known after them
   */
  public static StageLearning from(PointStages assumed, List<NotedRally> rallies) {
    PointStages learned = assumed;
    Map<Stage, Spread> spreads = new EnumMap<>(Stage.class);
    for (Stage stage : Stage.values()) {
      Newton newton = new Newton(assumed.of(stage), stage, rallies);
      newton.run();
      learned = learned.with(stage, assumed.of(stage).withLogits(newton.server, newton.receiver));
      spreads.put(stage, newton.spread());
    }
    if (!rallies.isEmpty()) {
      String words = "%s, updated by %d noted endings";
      learned = learned.from(new Source(words.formatted(assumed.source().words(), rallies.size())));
    }
    return new StageLearning(learned, spreads, rallies.size());
  }

  /**
   * The stages as now believed.
   *
   * @return the stages at the mode
   */
  public PointStages stages() {
    return stages;
  }

  /**
   * How unsure a stage is.
   *
   * @param stage which
   * @return variances and covariance of its base logits
   */
  public Spread spread(Stage stage) {
    return Objects.requireNonNull(spreads.get(stage));
  }

  /**
   * The logit that a rally which ends in a stage between equals ends for the server's side.
   *
   * @param stage the stage
   * @return mean and SD in logits
   */
  public Estimate balance(Stage stage) {
    StageContest contest = stages.of(stage);
    return new Estimate(
        contest.serverLogit() - contest.receiverLogit(), Math.sqrt(spread(stage).along(1, -1)));
  }

  /**
   * How many endings it rests on.
   *
   * @return 0 or more
   */
  public int endings() {
    return endings;
  }

  /** Newton's steps for the two logits of one stage. */
  private static final class Newton {
    private final StageContest assumed;
    private final Stage stage;
    private final List<NotedRally> rallies;
    private final double onward;
    private double server;
    private double receiver;
    private double slopeServer;
    private double slopeReceiver;
    private double curveServer;
    private double curveReceiver;
    private double curveBoth;

    Newton(StageContest assumed, Stage stage, List<NotedRally> rallies) {
      this.assumed = assumed;
      this.stage = stage;
      this.rallies = rallies.stream().filter(rally -> rally.stage().compareTo(stage) >= 0).toList();
      onward = 1 - assumed.again();
      server = assumed.serverLogit();
      receiver = assumed.receiverLogit();
    }

    void run() {
      double moved = 1;
      for (int step = 0; step < MOST_STEPS && moved > SMALL_STEP; step++) {
        gather();
        double det = curveServer * curveReceiver - curveBoth * curveBoth;
        double byServer = (curveReceiver * slopeServer - curveBoth * slopeReceiver) / det;
        double byReceiver = (curveServer * slopeReceiver - curveBoth * slopeServer) / det;
        double longest = Math.max(1, Math.max(Math.abs(byServer), Math.abs(byReceiver)));
        server = within(server + byServer / longest);
        receiver = within(receiver + byReceiver / longest);
        moved = Math.max(Math.abs(byServer), Math.abs(byReceiver));
      }
      gather();
    }

    private static double within(double logit) {
      double most = StageContest.LARGEST_LOGIT;
      return Math.max(-most, Math.min(most, logit));
    }

    private void gather() {
      double precision = 1 / (FirstStages.PRIOR_SD * FirstStages.PRIOR_SD);
      slopeServer = -precision * (server - assumed.serverLogit());
      slopeReceiver = -precision * (receiver - assumed.receiverLogit());
      curveServer = precision;
      curveReceiver = precision;
      curveBoth = 0;
      rallies.forEach(this::add);
    }

    private void add(NotedRally rally) {
      double edge = rally.expectation().edge(stage);
      double forServer = Math.exp(server + edge / 2);
      double forReceiver = Math.exp(receiver - edge / 2);
      double sum = onward + forServer + forReceiver;
      double chanceServer = forServer / sum;
      double chanceReceiver = forReceiver / sum;
      boolean endsHere = rally.stage() == stage;
      slopeServer += (endsHere && rally.winner() == Winner.SERVER ? 1 : 0) - chanceServer;
      slopeReceiver += (endsHere && rally.winner() == Winner.RECEIVER ? 1 : 0) - chanceReceiver;
      curveServer += chanceServer * (1 - chanceServer);
      curveReceiver += chanceReceiver * (1 - chanceReceiver);
      curveBoth -= chanceServer * chanceReceiver;
    }

    Spread spread() {
      double det = curveServer * curveReceiver - curveBoth * curveBoth;
      return new Spread(curveReceiver / det, curveServer / det, -curveBoth / det);
    }
  }
}
