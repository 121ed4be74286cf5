package rallywright.engine.score;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import rallywright.engine.score.GameEvent.ResultEntered;
import rallywright.engine.score.GameEvent.TimeCalled;
import rallywright.engine.score.GameLog.Answer;
import rallywright.engine.score.GameState.Clock;
import rallywright.engine.score.ScoreRefusal.Reason;

class GameLogTest {

  private static final GameLog EMPTY = GameLog.start(GameFormat.DRILL_GAME);
  private static final GameEvent TO_A = GameEvent.rallyTo(Side.A);
  private static final GameEvent TO_B = GameEvent.rallyTo(Side.B);

  private static Reason refusal(GameLog log, GameEvent event) {
    assertThat(log.offer(event)).isInstanceOf(Answer.Refused.class);
    return ((Answer.Refused) log.offer(event)).refusal().reason();
  }

  @Test
  void undo_ofARally_bringsBackTheStateBefore() {
    GameLog log = EMPTY.with(TO_A).with(TO_B);
    assertThat(log.undo().state()).isEqualTo(EMPTY.with(TO_A).state());
    assertThat(log.undo().undo().state()).isEqualTo(EMPTY.state());
    assertThat(log.undo().events()).hasSize(3);
  }

  @Test
  void undo_ofTheHornOrAResult_letsTheGameGoOn() {
    GameLog log = EMPTY.with(TO_A);
    assertThat(log.with(new TimeCalled()).undo().state()).isEqualTo(log.state());
    GameLog entered = log.with(new ResultEntered(Score.of(5, 2), Clock.RUNNING));
    assertThat(entered.state().winner()).contains(Side.A);
    assertThat(entered.rallies()).isEmpty();
    assertThat(entered.undo().rallies()).hasSize(1);
  }

  @Test
  void event_thatCannotApply_isRefusedWithItsReason() {
    assertThat(refusal(EMPTY, new GameEvent.Undone())).isEqualTo(Reason.NOTHING_TO_UNDO);
    GameLog over = EMPTY.with(TO_A).with(TO_A).with(TO_A).with(TO_A).with(TO_A);
    assertThat(refusal(over, TO_B)).isEqualTo(Reason.GAME_OVER);
    assertThat(refusal(over, new TimeCalled())).isEqualTo(Reason.GAME_OVER);
    assertThat(refusal(EMPTY, new ResultEntered(Score.of(6, 2), Clock.RUNNING)))
        .isEqualTo(Reason.PAST_THE_END);
  }

  @Test
  void fold_ofEventsAfterTheEnd_leavesThemAside() {
    GameLog log =
        new GameLog(GameFormat.DRILL_GAME, List.of(TO_A, TO_A, TO_A, TO_A, TO_A, TO_B, TO_B));
    assertThat(log.state().score()).isEqualTo(Score.of(5, 0));
    assertThat(log.rallies()).hasSize(5);
    assertThat(log.undo().state().score()).isEqualTo(Score.of(4, 0));
  }

  @Test
  void rallies_ofALog_carryTheirServers() {
    GameLog log = GameLog.start(GameFormat.HALF_COURT_GAME).with(TO_B).with(TO_B).with(TO_A);
    assertThat(log.rallies().stream().map(rally -> rally.serve().side()))
        .containsExactly(Side.A, Side.B, Side.B);
    assertThat(log.states()).hasSize(4);
  }
}
