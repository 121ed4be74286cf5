package rallywright.engine.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import rallywright.engine.club.PlayerId;
import rallywright.engine.court.CourtLane;
import rallywright.engine.court.Lane;
import rallywright.engine.drill.DrillKey;
import rallywright.engine.drill.Role;
import rallywright.engine.plan.BlockId;
import rallywright.engine.plan.BlockTime;
import rallywright.engine.plan.GameId;
import rallywright.engine.plan.HeadStart;
import rallywright.engine.plan.PlannedBlock;
import rallywright.engine.plan.PlannedGame;
import rallywright.engine.plan.Seat;
import rallywright.engine.plan.SessionPlan;
import rallywright.engine.score.GameFormat;
import rallywright.engine.score.Rally;
import rallywright.engine.score.Score;
import rallywright.engine.score.Scoring;
import rallywright.engine.score.Side;
import rallywright.engine.session.CourtEvent.BlockEnded;
import rallywright.engine.session.CourtEvent.BlockStarted;
import rallywright.engine.session.CourtEvent.FinalScoreGiven;
import rallywright.engine.session.CourtEvent.Finish;
import rallywright.engine.session.CourtEvent.FirstServerNamed;
import rallywright.engine.session.CourtEvent.RallyPlayed;
import rallywright.engine.session.CourtEvent.Stamp;
import rallywright.engine.session.CourtEvent.TimeCalled;
import rallywright.engine.session.CourtEvent.Undone;
import rallywright.engine.session.GameProgress.Status;

class SessionProgressTest {

  private static final GameId GAME = new GameId("g1");
  private static final BlockId BLOCK = new BlockId("b1");
  private final List<CourtEvent> events = new ArrayList<>();

  @Test
  void rallies_tappedOneByOne_addUpToTheGame() {
    rallies("AABAAA");
    GameProgress game = game(GameFormat.DRILL_GAME);
    assertThat(game.score()).isEqualTo(Score.of(5, 1));
    assertThat(game.status()).isEqualTo(Status.PLAYED_OUT);
    assertThat(game.rallyTimes()).hasSize(6);
  }

  @Test
  void rally_afterTheLastPoint_doesNotCount() {
    rallies("AAAAAB");
    assertThat(game(GameFormat.DRILL_GAME).score()).isEqualTo(Score.of(5, 0));
  }

  @Test
  void sameEvent_sentTwice_countsOnce() {
    rallies("AB");
    events.add(events.get(0));
    assertThat(game(GameFormat.DRILL_GAME).score()).isEqualTo(Score.of(1, 1));
  }

  @Test
  void undo_ofTheLastRally_takesOnePointBack_andAnUndoneUndoGivesItBack() {
    rallies("AAB");
    EventId lastRally = events.get(2).stamp().id();
    events.add(new Undone(stamp(), lastRally));
    assertThat(game(GameFormat.DRILL_GAME).score()).isEqualTo(Score.of(2, 0));
    events.add(new Undone(stamp(), events.get(3).stamp().id()));
    assertThat(game(GameFormat.DRILL_GAME).score()).isEqualTo(Score.of(2, 1));
  }

  @Test
  void finalScore_thatTheRalliesDoNotGive_replacesThem() {
    rallies("AAB");
    events.add(new FinalScoreGiven(stamp(), GAME, Score.of(3, 5), Finish.PLAYED_OUT));
    GameProgress game = game(GameFormat.DRILL_GAME);
    assertThat(game.score()).isEqualTo(Score.of(3, 5));
    assertThat(game.rallies()).isEmpty();
    assertThat(game.state()).isEmpty();
    events.add(new Undone(stamp(), game.lastEvent().orElseThrow()));
    assertThat(game(GameFormat.DRILL_GAME).score()).isEqualTo(Score.of(2, 1));
  }

  @Test
  void timeCalled_inARunningGame_letsItsScoreStand() {
    rallies("AAB");
    events.add(new TimeCalled(stamp(), GAME));
    GameProgress game = game(GameFormat.DRILL_GAME);
    assertThat(game.status()).isEqualTo(Status.TIME_CALLED);
    assertThat(game.score()).isEqualTo(Score.of(2, 1));
    assertThat(game.isOver()).isTrue();
  }

  @Test
  void firstServer_namedBeforePlay_decidesWhoScores() {
    events.add(new FirstServerNamed(stamp(), GAME, Side.B));
    rallies("ABB");
    GameFormat sideOut = GameFormat.DRILL_GAME.withScoring(Scoring.SIDE_OUT_ONE_SERVER);
    // B serves and loses the serve; A serves and loses it back; B serves and scores.
    assertThat(game(sideOut).score()).isEqualTo(Score.of(0, 1));
  }

  @Test
  void headStart_isPartOfTheScore() {
    rallies("BB");
    assertThat(game(GameFormat.DRILL_GAME.withStart(Score.of(3, 0))).score())
        .isEqualTo(Score.of(3, 2));
  }

  @Test
  void block_startedAndEnded_isNoLongerCurrent() {
    events.add(new BlockStarted(stamp(), BLOCK));
    assertThat(progress(GameFormat.DRILL_GAME).current()).contains(BLOCK);
    events.add(new BlockEnded(stamp(), BLOCK));
    SessionProgress progress = progress(GameFormat.DRILL_GAME);
    assertThat(progress.current()).isEmpty();
    assertThat(progress.next()).isEmpty();
    assertThat(progress.endedAt(BLOCK)).isPresent();
    events.add(new BlockStarted(stamp(), BLOCK));
    assertThat(progress(GameFormat.DRILL_GAME).endedAt(BLOCK)).isEmpty();
  }

  private void rallies(String winners) {
    for (int i = 0; i < winners.length(); i++) {
      Rally rally = Rally.wonBy(winners.charAt(i) == 'A' ? Side.A : Side.B);
      events.add(new RallyPlayed(stamp(), GAME, rally));
    }
  }

  private Stamp stamp() {
    int number = events.size() + 1;
    return new Stamp(new EventId("e" + number), new SessionId("s1"), number * 1000L, "phone 1");
  }

  private GameProgress game(GameFormat format) {
    return progress(format).game(GAME).orElseThrow();
  }

  private SessionProgress progress(GameFormat format) {
    return SessionProgress.of(session(), (block, game) -> format, events);
  }

  private static Session session() {
    PlannedGame game =
        new PlannedGame(
            GAME,
            1,
            new CourtLane(1, Lane.STRAIGHT_RIGHT),
            new Seat(Role.EVEN, List.of(new PlayerId("p1"))),
            new Seat(Role.EVEN, List.of(new PlayerId("p2"))),
            HeadStart.NONE);
    PlannedBlock block =
        new PlannedBlock(
            BLOCK,
            PlannedBlock.Kind.DRILL,
            new DrillKey("dink-game"),
            PlannedBlock.End.LAST_LANE,
            new BlockTime(5, 1),
            List.of(game),
            List.of(List.of()),
            "Everybody dinks.");
    SessionPlan plan =
        new SessionPlan(60, 1, List.of(new PlayerId("p1"), new PlayerId("p2")), List.of(block));
    return new Session(
        new SessionId("s1"),
        "Tuesday",
        LocalDate.of(2026, 3, 3),
        LocalTime.of(18, 0),
        null,
        null,
        plan,
        Session.State.PLANNED);
  }
}
