package rallywright.engine.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;
import rallywright.engine.club.PlayerId;
import rallywright.engine.court.CourtLane;
import rallywright.engine.court.Lane;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.DrillForm;
import rallywright.engine.drill.Intensity;
import rallywright.engine.drill.Progression;
import rallywright.engine.drill.Role;
import rallywright.engine.drill.Skill;
import rallywright.engine.pace.LogNormal;
import rallywright.engine.plan.BlockId;
import rallywright.engine.plan.BlockTime;
import rallywright.engine.plan.DrillPaces;
import rallywright.engine.plan.GameId;
import rallywright.engine.plan.HeadStart;
import rallywright.engine.plan.PlannedBlock;
import rallywright.engine.plan.PlannedGame;
import rallywright.engine.plan.Seat;
import rallywright.engine.plan.SessionPlan;
import rallywright.engine.plan.ToyDrills;
import rallywright.engine.score.Rally;
import rallywright.engine.score.Score;
import rallywright.engine.score.Side;
import rallywright.engine.session.CourtEvent;
import rallywright.engine.session.CourtEvent.Stamp;
import rallywright.engine.session.EventId;
import rallywright.engine.session.GameFormats;
import rallywright.engine.session.Session;
import rallywright.engine.session.SessionId;
import rallywright.engine.session.SessionProgress;

/**
 * Simulated evenings with known seconds: what was put in must come out, although taps are late,
 * balls roll away and results are entered together. The tolerances are what the fences let through:
 * an outlier in thirty that is brought in to 2.5 standard deviations of 0.35 moves the mean by 3 %.
 */
class RecordedPacesTest {

  private static final Drill DRILL =
      ToyDrills.even("dinks", Skill.DINK, Progression.LINE, Intensity.EASY);
  private static final LogNormal IN_PLAY = LogNormal.of(9, 5);
  private static final LogNormal BETWEEN = LogNormal.of(12, 4);
  private static final double RALLY_SECONDS = 9 + 12;
  private static final List<PlayerId> PEOPLE =
      List.of(new PlayerId("ana"), new PlayerId("bo"), new PlayerId("cy"), new PlayerId("di"));
  private static final int EVENINGS = 40;
  private static final int GAMES = 8;

  private final RandomGenerator random = new SplittableRandom(20260314);
  private final List<SessionProgress> sessions = new ArrayList<>();
  private final List<CourtEvent> events = new ArrayList<>();
  private String phone = "phone 1";

  @Test
  void taps_tellTheSecondsOfARally_andOfAChange() {
    playTapped(16, 0);
    assertThat(pace()).isCloseTo(RALLY_SECONDS, within(0.03 * RALLY_SECONDS));
    assertThat(paces().roleSeconds()).isCloseTo(16, within(2.0));
  }

  @Test
  void taps_withLateOnesAndBreaks_tellTheSame() {
    playTapped(16, 0.05);
    assertThat(pace()).isCloseTo(RALLY_SECONDS, within(0.05 * RALLY_SECONDS));
    assertThat(paces().roleSeconds()).isCloseTo(16, within(2.5));
  }

  @Test
  void results_tellTheSecondsOfARally() {
    playResults(0);
    assertThat(pace()).isCloseTo(RALLY_SECONDS, within(0.03 * RALLY_SECONDS));
  }

  @Test
  void results_someEnteredLate_andWholeEveningsTogether_tellTheSame() {
    playResults(0.1);
    assertThat(pace()).isCloseTo(RALLY_SECONDS, within(0.05 * RALLY_SECONDS));
  }

  @Test
  void lanesThatWaitForOneAnother_tellTheSame() {
    playInStep(16);
    assertThat(pace()).isCloseTo(RALLY_SECONDS, within(0.03 * RALLY_SECONDS));
    assertThat(paces().roleSeconds()).isCloseTo(16, within(2.5));
  }

  @Test
  void results_typedAtTheDesk_tellNothing() {
    phone = "";
    playResults(0);
    assertThat(pace()).isEqualTo(firstIdea());
  }

  @Test
  void noEntries_leaveTheFirstIdea() {
    assertThat(pace()).isEqualTo(firstIdea());
    assertThat(paces().roleSeconds()).isEqualTo(DrillPaces.FIRST_IDEAS.roleSeconds());
  }

  /** Rally by rally; with a share of taps that come too late, and of balls that are fetched. */
  private void playTapped(double changeSeconds, double wrong) {
    for (int evening = 0; evening < EVENINGS; evening++) {
      Session session = session(evening);
      double clock = 0;
      double late = 0;
      for (PlannedGame game : session.plan().blocks().get(0).games()) {
        clock += LogNormal.of(changeSeconds, 4).quantile(chance());
        for (int rally = 0; rally < 7; rally++) {
          clock += rally() + (random.nextDouble() < wrong / 2 ? 60 + 200 * chance() : 0);
          double shown = random.nextDouble() < wrong && rally < 6 ? clock + 15 : clock;
          shown = Math.max(shown, late + 1);
          late = shown;
          Side winner = rally % 3 == 2 ? Side.B : Side.A;
          events.add(
              new CourtEvent.RallyPlayed(stamp(session, shown), game.id(), Rally.wonBy(winner)));
        }
      }
      close(session);
    }
  }

  /** Results alone; with a share of evenings entered at the end, and of results entered late. */
  private void playResults(double wrong) {
    for (int evening = 0; evening < EVENINGS; evening++) {
      Session session = session(evening);
      boolean atTheEnd = random.nextDouble() < wrong;
      double clock = 0;
      double last = 0;
      for (PlannedGame game : session.plan().blocks().get(0).games()) {
        int lost = random.nextInt(5);
        clock += DrillPaces.FIRST_IDEAS.roleSeconds();
        for (int rally = 0; rally < 5 + lost; rally++) {
          clock += rally();
        }
        double shown = atTheEnd ? 3000 + last : clock;
        shown += !atTheEnd && random.nextDouble() < wrong / 3 ? 90 : 0;
        last += 2;
        events.add(
            new CourtEvent.FinalScoreGiven(
                stamp(session, shown), game.id(), Score.of(5, lost), CourtEvent.Finish.PLAYED_OUT));
      }
      close(session);
    }
  }

  /** Two lanes, one tapped and one with results, that begin each turn together. */
  private void playInStep(double changeSeconds) {
    for (int evening = 0; evening < 2 * EVENINGS; evening++) {
      Session session = session(evening, 2);
      double clock = 0;
      double end = 0;
      for (PlannedGame game : session.plan().blocks().get(0).games()) {
        boolean first = game.place().lane() == Lane.STRAIGHT_RIGHT;
        clock = first ? end + changeSeconds : clock;
        double at = clock;
        boolean isTapped = first == (evening % 2 == 0);
        for (int rally = 0; rally < 7; rally++) {
          at += rally();
          Side winner = rally % 3 == 2 ? Side.B : Side.A;
          if (isTapped) {
            events.add(
                new CourtEvent.RallyPlayed(stamp(session, at), game.id(), Rally.wonBy(winner)));
          }
        }
        if (!isTapped) {
          events.add(
              new CourtEvent.FinalScoreGiven(
                  stamp(session, at), game.id(), Score.of(5, 2), CourtEvent.Finish.PLAYED_OUT));
        }
        end = Math.max(end, at);
      }
      close(session);
    }
  }

  private double rally() {
    return IN_PLAY.quantile(chance()) + BETWEEN.quantile(chance());
  }

  private double chance() {
    return 1e-6 + (1 - 2e-6) * random.nextDouble();
  }

  private Stamp stamp(Session session, double seconds) {
    EventId id = new EventId("e" + sessions.size() + "-" + events.size());
    return new Stamp(id, session.id(), Math.round(1000 * seconds), phone);
  }

  private void close(Session session) {
    sessions.add(
        SessionProgress.of(
            session, (block, game) -> GameFormats.of(Optional.of(DRILL), block, game), events));
    events.clear();
  }

  private RecordedPaces paces() {
    List<PlayedGame> games = new ArrayList<>();
    for (SessionProgress each : sessions) {
      each.games()
          .forEach(
              game ->
                  games.add(
                      new PlayedGame(each.session().id(), each.session().date(), DRILL, game)));
    }
    return RecordedPaces.of(games, sessions);
  }

  private double pace() {
    return paces().of(DRILL, scored()).meanSeconds();
  }

  private static DrillForm.Scored scored() {
    return DRILL.scored().orElseThrow();
  }

  private static double firstIdea() {
    return DrillPaces.FIRST_IDEAS.of(DRILL, scored()).meanSeconds();
  }

  private static Session session(int number) {
    return session(number, 1);
  }

  /** Lanes on which two people each play game after game in changing places. */
  private static Session session(int number, int lanes) {
    List<PlannedGame> games = new ArrayList<>();
    List<List<PlayerId>> sitting = new ArrayList<>();
    for (int turn = 1; turn <= GAMES; turn++) {
      for (int lane = 0; lane < lanes; lane++) {
        Seat one = new Seat(Role.EVEN, List.of(PEOPLE.get(2 * lane)));
        Seat other = new Seat(Role.EVEN, List.of(PEOPLE.get(2 * lane + 1)));
        games.add(
            new PlannedGame(
                new GameId("g" + number + "-" + turn + "-" + lane),
                turn,
                new CourtLane(1, lane == 0 ? Lane.STRAIGHT_RIGHT : Lane.STRAIGHT_LEFT),
                turn % 2 == 0 ? one : other,
                turn % 2 == 0 ? other : one,
                HeadStart.NONE));
      }
      sitting.add(List.of());
    }
    PlannedBlock block =
        new PlannedBlock(
            new BlockId("b" + number),
            PlannedBlock.Kind.DRILL,
            DRILL.key(),
            PlannedBlock.End.LAST_LANE,
            new BlockTime(20, 2),
            games,
            sitting,
            "Everybody plays.");
    return new Session(
        new SessionId("s" + number),
        "Evening",
        LocalDate.of(2026, 3, 1).plusDays(number),
        LocalTime.of(18, 0),
        null,
        null,
        new SessionPlan(60, 1, List.of(new PlayerId("ana"), new PlayerId("bo")), List.of(block)),
        Session.State.DONE);
  }
}
