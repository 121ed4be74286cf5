package rallywright.engine.score;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import rallywright.engine.score.GameState.Clock;
import rallywright.engine.score.ScoreRefusal.Reason;

class FinalScoreCheckTest {

  private static final GameFormat TO_5 = GameFormat.DRILL_GAME;
  private static final GameFormat TO_11 = GameFormat.SINGLES_TO_11;

  private static void refused(GameFormat format, Score score, Clock clock, Reason reason) {
    assertThat(FinalScoreCheck.of(format).refusalOf(score, clock))
        .hasValueSatisfying(
            refusal -> {
              assertThat(refusal.reason()).isEqualTo(reason);
              assertThat(refusal.sentence()).contains(score.toString(), "must", "Maybe");
            });
  }

  @Test
  void typedScore_pastTheEnd_isAnsweredWithAResultThatCanBe() {
    assertThat(sentence(TO_5, Score.of(7, 3))).endsWith("Maybe 5-3.");
    assertThat(sentence(TO_5, Score.of(2, 9))).endsWith("Maybe 2-5.");
    assertThat(sentence(TO_11, Score.of(15, 12))).endsWith("Maybe 14-12.");
    assertThat(sentence(TO_11, Score.of(20, 3))).endsWith("Maybe 11-3.");
    GameFormat capped = TO_11.withGoal(TO_11.goal().withCap(15));
    assertThat(sentence(capped, Score.of(14, 18))).endsWith("Maybe 14-15.");
  }

  private static String sentence(GameFormat format, Score score) {
    return FinalScoreCheck.of(format).refusalOf(score, Clock.RUNNING).orElseThrow().sentence();
  }

  @Test
  void typedScore_thatCannotBe_isRefusedWithItsReason() {
    refused(TO_5, Score.of(4, 3), Clock.RUNNING, Reason.NOBODY_AT_TARGET);
    refused(TO_5, Score.of(6, 4), Clock.RUNNING, Reason.PAST_THE_END);
    refused(TO_5, Score.of(5, 5), Clock.RUNNING, Reason.BOTH_AT_TARGET);
    refused(TO_5, Score.of(5, 3), Clock.TIME_CALLED, Reason.WON_BEFORE_TIME);
    refused(TO_5.withStart(Score.of(0, 2)), Score.of(5, 1), Clock.RUNNING, Reason.BELOW_THE_START);
    refused(TO_11, Score.of(11, 10), Clock.RUNNING, Reason.LEAD_TOO_SMALL);
    refused(TO_11, Score.of(13, 10), Clock.RUNNING, Reason.PAST_THE_END);
    GameFormat capped = TO_11.withGoal(TO_11.goal().withCap(15));
    refused(capped, Score.of(16, 14), Clock.RUNNING, Reason.PAST_THE_END);
    refused(capped, Score.of(15, 15), Clock.RUNNING, Reason.BOTH_AT_TARGET);
  }

  @Test
  void typedScore_thatCanBe_isTaken() {
    assertThat(FinalScoreCheck.of(TO_5).refusalOf(Score.of(5, 4), Clock.RUNNING)).isEmpty();
    assertThat(FinalScoreCheck.of(TO_5).refusalOf(Score.of(2, 3), Clock.TIME_CALLED)).isEmpty();
    assertThat(FinalScoreCheck.of(TO_11).refusalOf(Score.of(14, 16), Clock.RUNNING)).isEmpty();
    GameFormat capped = TO_11.withGoal(TO_11.goal().withCap(15));
    assertThat(FinalScoreCheck.of(capped).refusalOf(Score.of(15, 14), Clock.RUNNING)).isEmpty();
  }

  @Test
  void grid_ofADrillGame_listsEachWinOnce() {
    BySide<java.util.List<Score>> grid =
        FinalScoreCheck.of(TO_5.withStart(Score.of(0, 2))).possible(0);
    assertThat(grid.a()).containsExactly(Score.of(5, 2), Score.of(5, 3), Score.of(5, 4));
    assertThat(grid.b()).hasSize(5).contains(Score.of(0, 5), Score.of(4, 5));
  }

  @Test
  void grid_ofATieBreak_goesAsFarBeyondTheTargetAsAsked() {
    assertThat(FinalScoreCheck.of(TO_11).possible(2).a())
        .hasSize(12)
        .contains(Score.of(11, 9), Score.of(12, 10), Score.of(13, 11))
        .doesNotContain(Score.of(11, 10));
    GameFormat unequal = TO_5.withGoal(Goal.unequal(3, 7));
    assertThat(FinalScoreCheck.of(unequal).possible(0).a()).hasSize(7).contains(Score.of(3, 6));
  }
}
