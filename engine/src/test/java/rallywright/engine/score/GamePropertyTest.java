package rallywright.engine.score;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.Size;
import rallywright.engine.score.GameLog.Answer;

class GamePropertyTest {

  private static GameLog played(GameFormat format, List<Side> winners) {
    GameLog log = GameLog.start(format);
    for (Side winner : winners) {
      if (log.offer(GameEvent.rallyTo(winner)) instanceof Answer.Accepted accepted) {
        log = accepted.log();
      }
    }
    return log;
  }

  private static GameFormat format(Scoring scoring) {
    return scoring == Scoring.SIDE_OUT_ONE_SERVER
        ? GameFormat.SINGLES_TO_11
        : GameFormat.DOUBLES_TO_11.withScoring(scoring).withTarget(5);
  }

  @Property
  void undo_takesBackExactlyTheLastRally(
      @ForAll Scoring scoring, @ForAll @Size(min = 1, max = 60) List<Side> winners) {
    GameLog log = played(format(scoring), winners);
    List<GameState> states = log.states();
    assertThat(log.undo().states()).isEqualTo(states.subList(0, states.size() - 1));
  }

  /**
   * Rule 5.B.7 (1999): a side's score is even exactly while its starting player is on the right.
   */
  @Property
  void sideOutDoubles_keepTheParityOfPlaces(@ForAll @Size(max = 80) List<Side> winners) {
    for (GameState state : played(GameFormat.DOUBLES_TO_11, winners).states()) {
      for (Side side : Side.values()) {
        assertThat(state.onRight().of(side)).isEqualTo(Partner.onRightAt(state.score().of(side)));
      }
    }
  }

  @Property
  void swappingSides_swapsTheGame(
      @ForAll Scoring scoring, @ForAll @Size(max = 60) List<Side> winners) {
    GameState own = played(format(scoring), winners).state();
    List<Side> others = winners.stream().map(Side::opponent).toList();
    GameState other = played(format(scoring).withFirstServer(Side.B), others).state();
    assertThat(other.score()).isEqualTo(own.score().swapped());
    assertThat(other.serve().side()).isEqualTo(own.serve().side().opponent());
    assertThat(other.onRight()).isEqualTo(own.onRight().swapped());
    assertThat(other.isOver() || other.call().equals(own.call())).isTrue();
  }

  @Property
  void everyFinishedGame_isAPossibleResult(
      @ForAll Scoring scoring, @ForAll @Size(min = 10, max = 80) List<Side> winners) {
    GameState end = played(format(scoring), winners).state();
    GameState.Clock clock = end.isOver() ? GameState.Clock.RUNNING : GameState.Clock.TIME_CALLED;
    assertThat(FinalScoreCheck.of(end.format()).refusalOf(end.score(), clock)).isEmpty();
  }

  @Property
  void receiver_standsDiagonallyToTheServer(
      @ForAll Scoring scoring, @ForAll @Size(max = 60) List<Side> winners) {
    GameState state = played(format(scoring), winners).state();
    Side receivers = state.serve().side().opponent();
    assertThat(state.courtOf(receivers, state.receiver())).isEqualTo(state.serverCourt());
  }
}
