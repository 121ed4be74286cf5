package rallywright.engine.point;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import rallywright.engine.point.NotedRally.Expectation;
import rallywright.engine.point.RallyChain.Winner;
import rallywright.engine.score.Ending.Stage;
import rallywright.engine.skill.Estimate;

class StageLearningTest {

  private static final StageContest ASSUMED = FirstStages.DOUBLES.of(Stage.NET_EXCHANGE);

  @Test
  void noEndings_leaveTheAssumption_withItsSpread() {
    StageLearning learning = StageLearning.from(FirstStages.DOUBLES, List.of());
    assertThat(learning.stages()).isEqualTo(FirstStages.DOUBLES);
    assertThat(learning.endings()).isZero();
    Estimate balance = learning.balance(Stage.THIRD_SHOT);
    assertThat(balance.mean()).isCloseTo(Math.log(0.05 / 0.16), within(1e-12));
    assertThat(balance.sd()).isCloseTo(0.5 * Math.sqrt(2), within(1e-12));
  }

  /** The mode and spread of one logit, by adding up the density over a fine grid. */
  @Test
  void net_isTheExactModeOfABinomialWithANormalPrior() {
    List<NotedRally> noted = rallies(Stage.NET_EXCHANGE, 30, 12);
    Estimate balance = StageLearning.from(FirstStages.DOUBLES, noted).balance(Stage.NET_EXCHANGE);
    double best = 0;
    double most = Double.NEGATIVE_INFINITY;
    for (double logit = -1; logit < 3; logit += 1e-4) {
      double chance = 1 / (1 + Math.exp(-logit));
      double prior = -logit * logit / (2 * 2 * 0.25);
      double log = 30 * Math.log(chance) + 12 * Math.log(1 - chance) + prior;
      if (log > most) {
        most = log;
        best = logit;
      }
    }
    assertThat(ASSUMED.serverLogit()).isEqualTo(ASSUMED.receiverLogit());
    assertThat(balance.mean()).isCloseTo(best, within(2e-4));
    double chance = 1 / (1 + Math.exp(-best));
    double curve = 42 * chance * (1 - chance) + 1 / (2 * 0.25);
    assertThat(balance.sd()).isCloseTo(Math.sqrt(1 / curve), within(1e-4));
  }

  private static List<NotedRally> rallies(Stage stage, int serverWon, int receiverWon) {
    List<NotedRally> noted = new ArrayList<>();
    for (int i = 0; i < serverWon + receiverWon; i++) {
      Winner winner = i < serverWon ? Winner.SERVER : Winner.RECEIVER;
      noted.add(new NotedRally(Expectation.EVEN, stage, winner));
    }
    return noted;
  }

  @ParameterizedTest
  @EnumSource(Stage.class)
  void manyEndings_showTheTruth(Stage stage) {
    PointStages truth = FirstStages.DOUBLES;
    for (Stage each : Stage.values()) {
      StageContest contest = truth.of(each);
      truth =
          truth.with(
              each, contest.withLogits(contest.serverLogit() - 0.4, contest.receiverLogit() + 0.3));
    }
    Expectation lead = new Expectation(Map.of(stage, 0.8), Map.of());
    List<NotedRally> noted = drawn(truth, lead, 20_000);
    StageLearning learned = StageLearning.from(FirstStages.DOUBLES, noted);
    StageContest contest = truth.of(stage);
    double balance = contest.serverLogit() - contest.receiverLogit();
    Estimate found = learned.balance(stage);
    assertThat(found.mean()).isCloseTo(balance, within(4 * found.sd()));
    assertThat(found.sd()).isLessThan(0.15);
    assertThat(learned.stages().source().words()).contains("updated by 20000 noted endings");
  }

  static List<NotedRally> drawn(PointStages truth, Expectation expectation, int count) {
    RallyChain chain = RallyChain.of(truth, expectation.edges());
    SplittableRandom random = new SplittableRandom(5);
    List<NotedRally> noted = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      noted.add(RallyDraws.draw(chain, expectation, random));
    }
    return noted;
  }

  @Test
  void fewEndings_leanOnTheSkills_manySpeakForThemselves() {
    assertThat(shift(List.of()).mean()).isZero();
    assertThat(shift(List.of()).sd()).isCloseTo(StageShift.PRIOR_SD, within(1e-12));
    double few = shift(rallies(Stage.NET_EXCHANGE, 2, 6)).mean();
    double many = shift(rallies(Stage.NET_EXCHANGE, 200, 600)).mean();
    double alone = Math.log(200.0 / 600);
    assertThat(few).isBetween(-0.3, -0.02);
    assertThat(many).isBetween(alone, 0.9 * alone);
  }

  private static Estimate shift(List<NotedRally> served) {
    return StageShift.of(FirstStages.DOUBLES, served, Winner.SERVER)
        .getOrDefault(Stage.NET_EXCHANGE, new Estimate(Double.MAX_VALUE, 0));
  }

  @Test
  void shift_ofTheReceiver_isInTheReceiversFavour() {
    List<NotedRally> received = rallies(Stage.NET_EXCHANGE, 50, 150);
    Estimate shift =
        StageShift.of(FirstStages.DOUBLES, received, Winner.RECEIVER)
            .getOrDefault(Stage.NET_EXCHANGE, new Estimate(0, 0));
    assertThat(shift.mean()).isGreaterThan(0.4);
  }
}
