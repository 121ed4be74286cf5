package rallywright.engine.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import rallywright.engine.score.GameState.ChangeOfEnds;

class GameStateTest {

  /** Plays rallies won by the sides named, and writes the call before each serve and at the end. */
  private static List<String> calls(GameFormat format, String winners) {
    return states(format, winners).stream().map(GameState::call).toList();
  }

  private static List<GameState> states(GameFormat format, String winners) {
    GameState state = GameState.start(format);
    List<GameState> states = new ArrayList<>(List.of(state));
    for (int i = 0; i < winners.length(); i++) {
      state = state.after(Rally.wonBy(winners.charAt(i) == 'A' ? Side.A : Side.B));
      states.add(state);
    }
    return states;
  }

  private static GameState last(GameFormat format, String winners) {
    List<GameState> states = states(format, winners);
    return states.get(states.size() - 1);
  }

  @Test
  void doubles_firstTurn_hasOneServerOnly() {
    assertThat(calls(GameFormat.DOUBLES_TO_11, "B")).containsExactly("0-0-2", "0-0-1");
    assertThat(last(GameFormat.DOUBLES_TO_11, "B").serve().side()).isEqualTo(Side.B);
  }

  @Test
  void doubles_handWrittenGame_isCalledAsARefereeCallsIt() {
    // A scores two from 0-0-2, loses; B scores one, both servers lose; A serves first from 2-1-1.
    assertThat(calls(GameFormat.DOUBLES_TO_11, "AABBAAAB"))
        .containsExactly(
            "0-0-2", "1-0-2", "2-0-2", "0-2-1", "1-2-1", "1-2-2", "2-1-1", "3-1-1", "3-1-2");
  }

  @Test
  void doubles_pointOnServe_changesOnlyTheServersCourts() {
    GameState state = last(GameFormat.DOUBLES_TO_11, "A");
    assertThat(state.serverCourt()).isEqualTo(ServiceCourt.ODD);
    assertThat(state.serve().server()).isEqualTo(Partner.RIGHT_AT_EVEN);
    assertThat(state.courtOf(Side.A, Partner.LEFT_AT_EVEN)).isEqualTo(ServiceCourt.EVEN);
    assertThat(state.courtOf(Side.B, Partner.RIGHT_AT_EVEN)).isEqualTo(ServiceCourt.EVEN);
    assertThat(state.receiver()).isEqualTo(Partner.LEFT_AT_EVEN);
  }

  @Test
  void doubles_sideOut_isServedFirstByThePlayerOnTheRight() {
    // A scores one from 0-0-2, then both sides lose their turns: A serves again at 1-0.
    GameState state = last(GameFormat.DOUBLES_TO_11, "ABAA");
    assertThat(state.call()).isEqualTo("1-0-1");
    assertThat(state.serve().server()).isEqualTo(Partner.LEFT_AT_EVEN);
    assertThat(state.serverCourt()).isEqualTo(ServiceCourt.EVEN);
    GameState second = state.after(Rally.wonBy(Side.B));
    assertThat(second.call()).isEqualTo("1-0-2");
    assertThat(second.serve().server()).isEqualTo(Partner.RIGHT_AT_EVEN);
    assertThat(second.serverCourt()).isEqualTo(ServiceCourt.ODD);
  }

  @Test
  void oneServer_lostRally_passesTheServeAtTheSameScore() {
    assertThat(calls(GameFormat.HALF_COURT_GAME, "ABBA"))
        .containsExactly("0-0", "1-0", "0-1", "1-1", "1-1");
    assertThat(last(GameFormat.HALF_COURT_GAME, "ABBA").serve().side()).isEqualTo(Side.A);
  }

  @Test
  void everyRally_lostRally_scoresForTheReceiverWhoServesNext() {
    assertThat(calls(GameFormat.DRILL_GAME, "ABB")).containsExactly("0-0", "1-0", "1-1", "2-1");
  }

  @Test
  void halfCourt_byScore_putsServerRightOnEvenAndReceiverDiagonal() {
    GameState state = last(GameFormat.HALF_COURT_GAME, "A");
    assertThat(state.serverCourt()).isEqualTo(ServiceCourt.ODD);
    assertThat(state.courtOf(Side.B, state.receiver())).isEqualTo(ServiceCourt.ODD);
  }

  @Test
  void halfCourt_fixedLane_keepsBothInTheirLane() {
    Places lane = Places.fixedLane(ServiceCourt.EVEN, ServiceCourt.ODD);
    for (GameState state : states(GameFormat.HALF_COURT_GAME.withPlaces(lane), "AABBA")) {
      assertThat(state.courtOf(Side.A, Partner.RIGHT_AT_EVEN)).isEqualTo(ServiceCourt.EVEN);
      assertThat(state.courtOf(Side.B, Partner.RIGHT_AT_EVEN)).isEqualTo(ServiceCourt.ODD);
    }
    assertThat(lane.source()).isEqualTo("common practice, no source");
  }

  @Test
  void rally2025_lastPointByTheReceivers_passesOnlyTheServe() {
    GameFormat format = GameFormat.DOUBLES_RALLY_2025_TO_21.withTarget(3);
    GameState level = last(format, "ABAB");
    assertThat(level.score()).isEqualTo(Score.of(2, 2));
    GameState ahead = last(format, "AAB");
    assertThat(ahead.score()).isEqualTo(Score.of(2, 1));
    GameState frozen = ahead.after(Rally.wonBy(Side.A));
    assertThat(frozen.score()).isEqualTo(Score.of(2, 1));
    assertThat(frozen.serve().side()).isEqualTo(Side.A);
    assertThat(frozen.after(Rally.wonBy(Side.A)).winner()).contains(Side.A);
  }

  @Test
  void rally2026_printedExample_isWonByTheReceivers() {
    // Example printed with the change of 2026: 13-14, serve into the net, the game ends 15-13.
    GameFormat format = GameFormat.DOUBLES_RALLY_2026_TO_21.withTarget(15);
    GameState state = GameState.at(format, Score.of(13, 14), Serve.by(Side.A));
    assertThat(state.call()).isEqualTo("13-14");
    GameState end = state.after(Rally.wonBy(Side.B));
    assertThat(end.winner()).contains(Side.B);
    assertThat(end.call()).isEqualTo("13-15");
  }

  @Test
  void winByTwo_atTheTarget_goesOnUntilTwoAhead() {
    GameFormat format = GameFormat.SINGLES_TO_11;
    GameState state = GameState.at(format, Score.of(10, 10), Serve.by(Side.A));
    GameState ahead = state.after(Rally.wonBy(Side.A));
    assertThat(ahead.isOver()).isFalse();
    assertThat(ahead.after(Rally.wonBy(Side.A)).winner()).contains(Side.A);
  }

  @Test
  void ends_atHalfOfTheTarget_changeOnce() {
    GameFormat format = GameFormat.SINGLES_TO_11;
    List<ChangeOfEnds> changes =
        states(format, "AAAAAAA").stream().map(GameState::changeOfEnds).toList();
    assertThat(changes.indexOf(ChangeOfEnds.CHANGE_NOW)).isEqualTo(6);
    assertThat(changes).containsOnlyOnce(ChangeOfEnds.CHANGE_NOW);
    assertThat(states(GameFormat.DRILL_GAME, "AAAA"))
        .allMatch(state -> state.changeOfEnds() == ChangeOfEnds.STAY);
  }

  @Test
  void timeCalled_onARunningGame_keepsTheScoreAndHasNoWinner() {
    GameState state = last(GameFormat.DRILL_GAME, "AAB").timeCalled();
    assertThat(state.isOver()).isTrue();
    assertThat(state.winner()).isEmpty();
    assertThat(state.score()).isEqualTo(Score.of(2, 1));
  }

  @Test
  void rally_afterTheEnd_isRefused() {
    GameState end = last(GameFormat.DRILL_GAME, "AAAAA");
    assertThat(end.winner()).contains(Side.A);
    assertThatThrownBy(() -> end.after(Rally.wonBy(Side.B)))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("5-0")
        .hasMessageContaining("undo");
  }

  @Test
  void headStart_atTheTarget_isRefused() {
    assertThatThrownBy(() -> GameFormat.DRILL_GAME.withStart(Score.of(0, 7)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("The head start (7) must be below the target (5). Maybe 4.");
  }

  @Test
  void servers_thatDoNotFitThePlayers_areRefused() {
    assertThatThrownBy(() -> GameFormat.DRILL_GAME.withScoring(Scoring.SIDE_OUT_TWO_SERVERS))
        .hasMessageContaining("doubles");
    assertThatThrownBy(() -> GameFormat.DOUBLES_TO_11.withScoring(Scoring.SIDE_OUT_ONE_SERVER))
        .hasMessageContaining("game of two");
  }

  @Test
  void ballRoundThePost_outsideThePostAndIn_winsTheRally() {
    RoundThePost reading = RoundThePost.LEGAL_ON_FULL_COURT;
    assertThat(reading.judge(RoundThePost.Way.OUTSIDE_THE_POST, RoundThePost.Landing.IN_THE_COURT))
        .isEqualTo(RoundThePost.Verdict.WINS_THE_RALLY);
    assertThat(
            reading.judge(RoundThePost.Way.BETWEEN_NET_AND_POST, RoundThePost.Landing.IN_THE_COURT))
        .isEqualTo(RoundThePost.Verdict.FAULT);
    assertThat(reading.judge(RoundThePost.Way.OUTSIDE_THE_POST, RoundThePost.Landing.OUT))
        .isEqualTo(RoundThePost.Verdict.FAULT);
    GameState state = GameState.start(GameFormat.DRILL_GAME).after(Rally.roundThePost(Side.B));
    assertThat(state.score()).isEqualTo(Score.of(0, 1));
  }
}
