package rallywright.engine.odds;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static rallywright.engine.odds.TestFormats.doubles;
import static rallywright.engine.odds.TestFormats.format;
import static rallywright.engine.odds.TestFormats.rally;
import static rallywright.engine.odds.TestFormats.serves;

import org.junit.jupiter.api.Test;
import rallywright.engine.odds.FairGame.HeadStart;
import rallywright.engine.odds.FairGame.UnequalTargets;
import rallywright.engine.odds.RallyChances.PairChances;
import rallywright.engine.quantity.Probability;
import rallywright.engine.score.GameFormat;
import rallywright.engine.score.Goal;
import rallywright.engine.score.Score;
import rallywright.engine.score.Scoring;
import rallywright.engine.score.Side;

class HeadStartSearchTest {

  private static final GameFormat TO_11 = format(Scoring.EVERY_RALLY, 11, 1);

  @Test
  void evenSides_needNoHeadStart() {
    FairGame fair = HeadStartSearch.fairest(TO_11, rally(0.5), Probability.EVEN);
    assertThat(fair.headStart().a()).isZero();
    assertThat(fair.headStart().b()).isZero();
    assertThat(fair.unequalTargets()).isEmpty();
  }

  @Test
  void headStart_isTheClosestOfAllThatCanBePlayed() {
    for (double p = 0.3; p < 0.75; p += 0.05) {
      RallyChances chances = rally(p);
      HeadStart best = HeadStartSearch.fairest(TO_11, chances, Probability.EVEN).headStart();
      for (int points = 0; points < 11; points++) {
        double forB = chance(TO_11.withStart(Score.of(0, points)), chances);
        double forA = chance(TO_11.withStart(Score.of(points, 0)), chances);
        double nearest = Math.min(Math.abs(forA - 0.5), Math.abs(forB - 0.5));
        assertThat(Math.abs(best.winA() - 0.5)).isLessThanOrEqualTo(nearest + 1e-12);
      }
      GameFormat played = TO_11.withStart(Score.of(best.a(), best.b()));
      assertThat(chance(played, chances)).isCloseTo(best.winA(), within(1e-14));
    }
  }

  @Test
  void unequalTargets_whereNoHeadStartComesNear_areTheOddsOfThatGame() {
    // 0.9 to the power of 7 is 0.478: A to 7, B to 1.
    GameFormat toFive = format(Scoring.EVERY_RALLY, 5, 1);
    UnequalTargets targets =
        HeadStartSearch.fairest(toFive, rally(0.9), Probability.EVEN)
            .unequalTargets()
            .orElseThrow();
    assertThat(targets.targetA()).isEqualTo(7);
    assertThat(targets.targetB()).isEqualTo(1);
    assertThat(targets.winA()).isCloseTo(Math.pow(0.9, 7), within(1e-14));
  }

  @Test
  void unequalTargets_ofNamedServers_equalTheirOwnGame() {
    RallyChances chances =
        RallyChances.ofServers(
            new PairChances(Probability.of(0.8), Probability.of(0.6)),
            new PairChances(Probability.of(0.3), Probability.of(0.1)));
    for (int target = 3; target < 7; target++) {
      GameFormat format = doubles(target, 1);
      UnequalTargets targets =
          HeadStartSearch.fairest(format, chances, Probability.EVEN).unequalTargets().orElseThrow();
      GameFormat own = format.withGoal(Goal.unequal(targets.targetA(), targets.targetB()));
      assertThat(chance(own, chances)).isCloseTo(targets.winA(), within(1e-12));
    }
  }

  @Test
  void chances_withWhichNobodyEverScores_areRefused() {
    assertThatThrownBy(() -> GameOdds.of(doubles(5, 1), serves(0, 0)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("never ends")
        .hasMessageContaining("Maybe");
  }

  private static double chance(GameFormat format, RallyChances chances) {
    return GameOdds.of(format, chances).winChance(Side.A);
  }
}
