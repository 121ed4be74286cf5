package rallywright.engine.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
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
import rallywright.engine.session.CourtEvent.BlockLimited;
import rallywright.engine.session.CourtEvent.BlockStarted;
import rallywright.engine.session.CourtEvent.FinalScoreGiven;
import rallywright.engine.session.CourtEvent.Finish;
import rallywright.engine.session.CourtEvent.FirstServerNamed;
import rallywright.engine.session.CourtEvent.NoteWritten;
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

  @Test
  void block_withMinutesLeft_isDueThen_untilThatIsTakenBackOrItStartsAnew() {
    events.add(new BlockStarted(stamp(), BLOCK));
    assertThat(due()).contains(1000L + 5 * 60_000);
    events.add(new BlockLimited(stamp(), BLOCK, OptionalInt.of(2), List.of()));
    assertThat(due()).contains(2000L + 2 * 60_000);
    events.add(new Undone(stamp(), new EventId("e2")));
    assertThat(due()).contains(1000L + 5 * 60_000);
    events.add(new BlockLimited(stamp(), BLOCK, OptionalInt.of(0), List.of()));
    events.add(new BlockStarted(stamp(), BLOCK));
    assertThat(due()).contains(1000L + 5 * 60_000);
  }

  @Test
  void game_thatFallsAway_countsAllTheSame_onceItIsScored() {
    events.add(new BlockStarted(stamp(), BLOCK));
    events.add(new BlockLimited(stamp(), BLOCK, OptionalInt.empty(), List.of(GAME)));
    assertThat(progress(GameFormat.DRILL_GAME).fallsAway(BLOCK, GAME)).isTrue();
    rallies("A");
    assertThat(progress(GameFormat.DRILL_GAME).fallsAway(BLOCK, GAME)).isFalse();
    assertThat(game(GameFormat.DRILL_GAME).score()).isEqualTo(Score.of(1, 0));
  }

  @Test
  void note_corrected_standsWithWhatItSaidBefore_andTakenAway_leavesATrace() {
    events.add(note("First.", Optional.empty()));
    events.add(new Undone(stamp(), new EventId("e1")));
    events.add(note("Second.", Optional.of(new EventId("e1"))));
    SessionNotes corrected = progress(GameFormat.DRILL_GAME).notes();
    assertThat(corrected.standing())
        .singleElement()
        .satisfies(
            each -> {
              assertThat(each.text()).isEqualTo("Second.");
              assertThat(each.before()).containsExactly("First.");
            });
    assertThat(corrected.takenAway()).isEmpty();
    events.add(new Undone(stamp(), new EventId("e3")));
    SessionNotes gone = progress(GameFormat.DRILL_GAME).notes();
    assertThat(gone.standing()).isEmpty();
    assertThat(gone.takenAway()).extracting(SessionNotes.Note::text).containsExactly("Second.");
  }

  @Test
  void note_correctedByTwoPhonesAtOnce_keepsBothTexts() {
    events.add(note("First.", Optional.empty()));
    events.add(new Undone(stamp(), new EventId("e1")));
    events.add(note("One.", Optional.of(new EventId("e1"))));
    events.add(new Undone(stamp(), new EventId("e1")));
    events.add(note("Other.", Optional.of(new EventId("e1"))));
    assertThat(progress(GameFormat.DRILL_GAME).notes().standing())
        .extracting(SessionNotes.Note::text)
        .containsExactly("One.", "Other.");
  }

  @Test
  void result_correctedLater_keepsTheTimeOfTheFirst() {
    events.add(new FinalScoreGiven(stamp(), GAME, Score.of(5, 2), Finish.PLAYED_OUT));
    events.add(new FinalScoreGiven(stamp(), GAME, Score.of(5, 3), Finish.PLAYED_OUT));
    assertThat(progress(GameFormat.DRILL_GAME).resultOf(GAME))
        .hasValueSatisfying(stamp -> assertThat(stamp.atMillis()).isEqualTo(1000));
  }

  private CourtEvent note(String text, Optional<EventId> instead) {
    return new NoteWritten(stamp(), Optional.empty(), Optional.of(BLOCK), text, instead);
  }

  private Optional<Long> due() {
    SessionProgress progress = progress(GameFormat.DRILL_GAME);
    return progress.dueAt(progress.session().plan().blocks().get(0));
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
