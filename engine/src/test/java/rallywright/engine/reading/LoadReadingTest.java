package rallywright.engine.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rallywright.engine.club.PlayerId;
import rallywright.engine.court.CourtLane;
import rallywright.engine.court.Lane;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.Intensity;
import rallywright.engine.drill.Progression;
import rallywright.engine.drill.Role;
import rallywright.engine.drill.Skill;
import rallywright.engine.plan.BlockId;
import rallywright.engine.plan.BlockTime;
import rallywright.engine.plan.GameId;
import rallywright.engine.plan.HeadStart;
import rallywright.engine.plan.PlannedBlock;
import rallywright.engine.plan.PlannedGame;
import rallywright.engine.plan.Seat;
import rallywright.engine.plan.SessionPlan;
import rallywright.engine.plan.ToyDrills;
import rallywright.engine.practice.EffortRating;
import rallywright.engine.practice.SessionLoad;
import rallywright.engine.score.Score;
import rallywright.engine.session.CourtEvent;
import rallywright.engine.session.CourtEvent.BlockEnded;
import rallywright.engine.session.CourtEvent.BlockStarted;
import rallywright.engine.session.CourtEvent.EffortRated;
import rallywright.engine.session.CourtEvent.FinalScoreGiven;
import rallywright.engine.session.CourtEvent.Finish;
import rallywright.engine.session.CourtEvent.Stamp;
import rallywright.engine.session.EventId;
import rallywright.engine.session.GameFormats;
import rallywright.engine.session.Session;
import rallywright.engine.session.SessionId;
import rallywright.engine.session.SessionProgress;

class LoadReadingTest {

  private static final LocalDate DAY = LocalDate.of(2026, 3, 31);
  private static final PlayerId ANA = new PlayerId("ana");
  private static final PlayerId BO = new PlayerId("bo");
  private static final BlockId BLOCK = new BlockId("b");
  private static final GameId GAME = new GameId("g");
  private static final SessionId SESSION = new SessionId("s");
  private static final Drill DINKS =
      ToyDrills.even("dinks", Skill.DINK, Progression.LINE, Intensity.EASY);

  private final List<CourtEvent> events = new ArrayList<>();

  @Test
  void ratedSession_countsItsRecordedMinutes() {
    played(0, 50);
    rated(ANA, 6);
    SessionLoad load = load(ANA).get(0);
    assertThat(load.minutes()).isCloseTo(50, within(1e-9));
    assertThat(load.effort()).contains(new EffortRating(6));
    assertThat(load.load().orElseThrow()).isCloseTo(300, within(1e-9));
  }

  @Test
  void playerWithoutARating_isNamedWithoutOne() {
    played(0, 50);
    scored();
    rated(ANA, 6);
    assertThat(load(BO)).hasSize(1);
    assertThat(load(BO).get(0).load()).isEmpty();
  }

  @Test
  void playerWhoDidNotPlay_hasNoLoad_thoughPlanned() {
    played(0, 50);
    assertThat(load(BO)).isEmpty();
  }

  @Test
  void minutesThatCannotBe_giveWayToThePlannedOnes() {
    played(0, 0.2);
    rated(ANA, 5);
    assertThat(load(ANA).get(0).minutes()).isEqualTo(60);
    events.clear();
    played(0, 14 * 60);
    rated(ANA, 5);
    assertThat(load(ANA).get(0).minutes()).isEqualTo(60);
    events.clear();
    rated(ANA, 5);
    assertThat(load(ANA).get(0).minutes()).isEqualTo(60);
  }

  @Test
  void laterRating_replacesTheFirst_andATakenBackOneIsGone() {
    rated(ANA, 5);
    rated(ANA, 8);
    assertThat(load(ANA).get(0).effort()).contains(new EffortRating(8));
    CourtEvent last = events.get(events.size() - 1);
    events.add(new CourtEvent.Undone(stamp(70), last.stamp().id()));
    assertThat(load(ANA).get(0).effort()).contains(new EffortRating(5));
  }

  private void played(double from, double to) {
    events.add(new BlockStarted(stamp(from), BLOCK));
    events.add(new BlockEnded(stamp(to), BLOCK));
  }

  private void scored() {
    events.add(new FinalScoreGiven(stamp(20), GAME, Score.of(5, 2), Finish.PLAYED_OUT));
  }

  private void rated(PlayerId player, int rating) {
    events.add(new EffortRated(stamp(60), player, rating));
  }

  private Stamp stamp(double minute) {
    return new Stamp(
        new EventId("e" + events.size()), SESSION, Math.round(minute * 60_000), "phone");
  }

  private List<SessionLoad> load(PlayerId player) {
    PlannedGame game =
        new PlannedGame(
            GAME,
            1,
            new CourtLane(1, Lane.STRAIGHT_RIGHT),
            new Seat(Role.EVEN, List.of(ANA)),
            new Seat(Role.EVEN, List.of(BO)),
            HeadStart.NONE);
    PlannedBlock block =
        new PlannedBlock(
            BLOCK,
            PlannedBlock.Kind.DRILL,
            DINKS.key(),
            PlannedBlock.End.LAST_LANE,
            new BlockTime(5, 1),
            List.of(game),
            List.of(List.of()),
            "Everybody plays.");
    Session session =
        new Session(
            SESSION,
            "Tuesday",
            DAY,
            LocalTime.of(18, 0),
            null,
            null,
            new SessionPlan(60, 1, List.of(ANA, BO), List.of(block)),
            Session.State.DONE);
    return LoadReading.of(
        List.of(
            SessionProgress.of(
                session, (each, one) -> GameFormats.of(Optional.of(DINKS), each, one), events)),
        player);
  }
}
