package rallywright.engine.point;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import rallywright.engine.point.BreakdownLine.InStage;
import rallywright.engine.point.BreakdownLine.Verdict;
import rallywright.engine.point.BreakdownLine.WithStroke;
import rallywright.engine.point.NotedRally.Expectation;
import rallywright.engine.point.NotedStroke.Context;
import rallywright.engine.point.NotedStroke.FirstShares;
import rallywright.engine.point.RallyChain.Winner;
import rallywright.engine.score.Ending.Manner;
import rallywright.engine.score.Ending.Stage;
import rallywright.engine.score.Ending.Stroke;
import rallywright.engine.skill.Estimate;

class BreakdownTest {

  private static final Context DROPS = new Context("drops", "BACK", Manner.ERROR);

  /**
   * The fifteen chances of Benjamini and Hochberg (1995), JRSS-B 57, section 3.2, cited from
   * memory: at 0.05 their rule keeps the four smallest.
   */
  @Test
  void falseDiscovery_ofThePaper_keepsFour() {
    List<Double> chances =
        List.of(
            0.0001, 0.0004, 0.0019, 0.0095, 0.0201, 0.0278, 0.0298, 0.0344, 0.0459, 0.3240, 0.4262,
            0.5719, 0.6528, 0.7590, 1.0000);
    assertThat(FalseDiscovery.kept(chances, 0.05)).containsExactly(0, 1, 2, 3);
    assertThat(FalseDiscovery.kept(List.of(), 0.05)).isEmpty();
  }

  @Test
  void falseDiscovery_stepsUp_overAChanceThatAloneWouldFail() {
    assertThat(FalseDiscovery.kept(List.of(0.09, 0.06, 0.5), 0.14)).containsExactly(1, 0);
    assertThatThrownBy(() -> FalseDiscovery.kept(List.of(Double.NaN), 0.1))
        .hasMessageContaining("NaN");
    assertThatThrownBy(() -> FalseDiscovery.kept(List.of(), 1)).hasMessageContaining("(1.0)");
  }

  /** A beta of mean 1/2 and variance 1/12 is even, and so is the count: 1/(n + 1) each. */
  @Test
  void betaBinomial_ofAnEvenBeta_isEven() {
    BetaBinomial even = BetaBinomial.of(10, 0.5, 1.0 / 12);
    for (int x = 0; x <= 10; x++) {
      assertThat(even.of(x)).isCloseTo(1.0 / 11, within(1e-12));
    }
    BetaBinomial binomial = BetaBinomial.of(4, 0.5, 0);
    assertThat(binomial.of(2)).isCloseTo(6.0 / 16, within(1e-12));
    assertThat(binomial.atLeast(3)).isCloseTo(5.0 / 16, within(1e-12));
    assertThat(binomial.atLeast(0)).isCloseTo(1, within(1e-12));
  }

  /** The exact derivatives of the shares, held against differences. */
  @Test
  void spreadOfAShare_isThatOfTheDerivatives() {
    Expectation unsure = new Expectation(Map.of(), Map.of(Stage.THIRD_SHOT, 0.25));
    List<NotedRally> many = StageLearningTest.drawn(FirstStages.DOUBLES, unsure, 200_000);
    StageLearning learned = StageLearning.from(FirstStages.DOUBLES, many);
    List<NotedRally> one = List.of(new NotedRally(unsure, Stage.SERVE, Winner.RECEIVER));
    Estimate share = new ExpectedEndings(learned, Winner.SERVER).share(Stage.THIRD_SHOT, one);
    double step = 1e-4;
    double slope = (share(learned, step) - share(learned, -step)) / (2 * step);
    double others = 0;
    for (Stage stage : Stage.values()) {
      double each = slope(learned, stage, step) * ExpectedEndings.LEFT_OUT_SD;
      others += each * each;
    }
    double expected = Math.sqrt(slope * slope * 0.25 + others);
    assertThat(share.sd()).isCloseTo(expected, within(0.03 * expected));
  }

  private static double slope(StageLearning learned, Stage moved, double step) {
    return (share(learned, moved, step) - share(learned, moved, -step)) / (2 * step);
  }

  private static double share(StageLearning learned, double edge) {
    return share(learned, Stage.THIRD_SHOT, edge);
  }

  private static double share(StageLearning learned, Stage moved, double edge) {
    RallyChain chain = RallyChain.of(learned.stages(), Map.of(moved, edge));
    return chain.endsIn(Stage.THIRD_SHOT, Winner.RECEIVER) / (1 - chain.serverWins());
  }

  @Test
  void playerWhoLosesThirdShots_isToldSo_andNothingElse() {
    List<NotedRally> club = StageLearningTest.drawn(FirstStages.DOUBLES, Expectation.EVEN, 2000);
    Map<Stage, Double> weak = new EnumMap<>(Stage.class);
    weak.put(Stage.THIRD_SHOT, -1.6);
    List<NotedRally> own = new ArrayList<>();
    RallyChain truth = RallyChain.of(FirstStages.DOUBLES, weak);
    SplittableRandom random = new SplittableRandom(8);
    for (int i = 0; i < 150; i++) {
      own.add(RallyDraws.draw(truth, Expectation.EVEN, random));
    }
    Breakdown breakdown = of(own, List.of(), club, List.of());
    assertThat(breakdown.breakdowns()).hasSize(1);
    BreakdownLine line = breakdown.breakdowns().get(0);
    assertThat(line.topic()).isEqualTo(new InStage(Winner.SERVER, Stage.THIRD_SHOT));
    assertThat(line.low()).isLessThan(line.share());
    assertThat(line.high()).isGreaterThan(line.share());
    assertThat(line.low()).isGreaterThan(line.expected().mean());
    assertThat(line.sentence())
        .startsWith("Lost serving, at the third shot: " + line.lost() + " of " + line.of());
  }

  @Test
  void fewLostRallies_sayNothing() {
    List<NotedRally> own = new ArrayList<>();
    for (int i = 0; i < Breakdown.FEWEST_LOST - 1; i++) {
      own.add(new NotedRally(Expectation.EVEN, Stage.SERVE, Winner.RECEIVER));
    }
    Breakdown breakdown = of(own, List.of(), List.of(), List.of());
    assertThat(breakdown.breakdowns()).isEmpty();
    assertThat(breakdown.lines())
        .allSatisfy(line -> assertThat(line.verdict()).isEqualTo(Verdict.TOO_FEW));
  }

  @Test
  void strokes_areComparedWithTheOthers_inTheSameSetting() {
    List<NotedStroke> others = strokes(Stroke.DROP, 300, Stroke.DRIVE, 300);
    List<NotedStroke> own = strokes(Stroke.DROP, 38, Stroke.DRIVE, 2);
    Breakdown breakdown = of(List.of(), own, List.of(), others);
    assertThat(breakdown.breakdowns()).hasSize(1);
    BreakdownLine line = breakdown.breakdowns().get(0);
    assertThat(line.topic()).isEqualTo(new WithStroke(Stroke.DROP, Manner.ERROR));
    assertThat(line.expected().mean()).isCloseTo(0.5, within(0.02));
    assertThat(line.sentence())
        .isEqualTo(
            "Lost by a missed drop: 38 of 40 noted lost rallies; about 20 were to be expected.");
    List<NotedStroke> alike = strokes(Stroke.DROP, 20, Stroke.DRIVE, 20);
    assertThat(of(List.of(), alike, List.of(), others).breakdowns()).isEmpty();
  }

  private static List<NotedStroke> strokes(Stroke one, int ones, Stroke other, int others) {
    List<NotedStroke> strokes = new ArrayList<>();
    for (int i = 0; i < ones + others; i++) {
      strokes.add(new NotedStroke(DROPS, i < ones ? one : other, Map.of()));
    }
    return strokes;
  }

  private static Breakdown of(
      List<NotedRally> served,
      List<NotedStroke> own,
      List<NotedRally> club,
      List<NotedStroke> others) {
    Map<Context, FirstShares> first =
        Map.of(DROPS, new FirstShares(Map.of(Stroke.DROP, 0.7, Stroke.DRIVE, 0.3)));
    return Breakdown.of(
        new Breakdown.Own(served, List.of(), own),
        new Breakdown.Others(StageLearning.from(FirstStages.DOUBLES, club), first, others));
  }

  @Test
  void falseAlarms_areNoMoreThanStated() {
    FalseAlarms.Count count = FalseAlarms.simulate(40, 12, 4711, Optional.empty());
    assertThat(count.players()).isEqualTo(480);
    double rate = (double) count.alarmed() / count.players();
    assertThat(rate).isLessThanOrEqualTo(Breakdown.LEVEL);
    FalseAlarms.Count weak = FalseAlarms.simulate(40, 12, 4711, Optional.of(Stage.THIRD_SHOT));
    assertThat(weak.found()).isBetween(5, 40);
    assertThat(weak.alarmed()).isLessThanOrEqualTo(weak.players() / 10);
  }
}
