package rallywright.engine.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rallywright.engine.club.AgeGroup;
import rallywright.engine.club.Hand;
import rallywright.engine.club.Level;
import rallywright.engine.club.Limit;
import rallywright.engine.club.Player;
import rallywright.engine.club.PlayerId;
import rallywright.engine.club.Standing;
import rallywright.engine.court.CourtLane;
import rallywright.engine.court.Direction;
import rallywright.engine.court.HalfArea;
import rallywright.engine.court.Lane;
import rallywright.engine.court.Spot;
import rallywright.engine.drill.Advice;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.DrillKey;
import rallywright.engine.drill.Intensity;
import rallywright.engine.drill.Progression;
import rallywright.engine.drill.Role;
import rallywright.engine.drill.SecondsPrior;
import rallywright.engine.drill.Skill;
import rallywright.engine.drill.Yardstick;
import rallywright.engine.plan.BlockId;
import rallywright.engine.plan.BlockTime;
import rallywright.engine.plan.GameId;
import rallywright.engine.plan.HeadStart;
import rallywright.engine.plan.PlannedBlock;
import rallywright.engine.plan.PlannedGame;
import rallywright.engine.plan.Seat;
import rallywright.engine.plan.SessionPlan;
import rallywright.engine.plan.ToyDrills;
import rallywright.engine.practice.Needs;
import rallywright.engine.practice.PointWorth;
import rallywright.engine.quantity.Source;
import rallywright.engine.score.Score;
import rallywright.engine.session.CourtEvent;
import rallywright.engine.session.CourtEvent.FinalScoreGiven;
import rallywright.engine.session.CourtEvent.Finish;
import rallywright.engine.session.CourtEvent.Stamp;
import rallywright.engine.session.CourtEvent.YardstickCounted;
import rallywright.engine.session.EventId;
import rallywright.engine.session.GameFormats;
import rallywright.engine.session.Session;
import rallywright.engine.session.SessionId;
import rallywright.engine.session.SessionProgress;
import rallywright.engine.skill.Estimate;

class PracticeReadingTest {

  private static final LocalDate TODAY = LocalDate.of(2026, 3, 31);
  private static final PlayerId ANA = new PlayerId("ana");
  private static final PlayerId BO = new PlayerId("bo");
  private static final Drill DINKS =
      ToyDrills.even("dinks", Skill.DINK, Progression.LINE, Intensity.EASY);
  private static final int BALLS = 20;
  private static final double SECONDS_PER_BALL = 12;

  /** The prior variance of a skill of a player with a level: 0.5² + 0.25² + 0.3². */
  private static final double FIRST_VARIANCE = 0.4025;

  /** The 90 % quantile of the standard normal (standard tables). */
  private static final double SDS_WHEN_SHOWN = 1.2815515655446004;

  private static final double DIFFICULTY_SD = 0.4;

  private final List<SessionProgress> sessions = new ArrayList<>();

  @Test
  void yardstick_takesOffWhatARefitTakesOff_whereItEndsAsExpected() {
    Measure measure = measure(reading(List.of(), Set.of()), Skill.DROP).orElseThrow();
    assertThat(measure.isYardstick()).isTrue();
    assertThat(measure.minutes()).isEqualTo(4);
    counted(BALLS / 2);
    Estimate after = reading(List.of(), Set.of()).skill(ANA, Skill.DROP).now();
    assertThat(measure.sdAfter()).isCloseTo(after.sd(), within(1e-6));
    double known = FIRST_VARIANCE + DIFFICULTY_SD * DIFFICULTY_SD;
    double information = BALLS / 4.0;
    double expected =
        FIRST_VARIANCE - FIRST_VARIANCE * FIRST_VARIANCE * information / (1 + information * known);
    assertThat(measure.sdAfter()).isCloseTo(Math.sqrt(expected), within(1e-9));
  }

  @Test
  void game_againstAnEqual_takesOffWhatTheFormulaSays() {
    Measure measure = measure(reading(List.of(DINKS), Set.of()), Skill.DINK).orElseThrow();
    double rallies = 5 * 60 / DINKS.scored().orElseThrow().seconds().mean();
    double information = rallies / 4;
    double expected =
        FIRST_VARIANCE
            - FIRST_VARIANCE
                * FIRST_VARIANCE
                * information
                / (1 + information * 2 * FIRST_VARIANCE);
    assertThat(measure.opponent()).contains(BO);
    assertThat(measure.key()).isEqualTo(DINKS.key());
    assertThat(measure.sdAfter()).isCloseTo(Math.sqrt(expected), within(1e-9));
    assertThat(measure.dropPerMinute()).isCloseTo((FIRST_VARIANCE - expected) / 5, within(1e-9));
  }

  @Test
  void skillThatNothingTurnsOn_hasNoMeasure() {
    assertThat(measure(reading(List.of(DINKS), Set.of()), Skill.SERVE)).isEmpty();
  }

  @Test
  void limit_forbidsTheRoleThatItSpares() {
    List<Drill> drills = List.of(ToyDrills.overheads());
    assertThat(measure(reading(drills, Set.of()), Skill.OVERHEAD)).isPresent();
    assertThat(measure(reading(drills, Set.of(Limit.NO_OVERHEADS)), Skill.OVERHEAD)).isEmpty();
  }

  @Test
  void needOfALittleKnownSkill_namesWhatTellsMost() {
    Needs needs = Needs.of(reading(List.of(DINKS), Set.of()).standing(ANA), PointWorth.DOUBLES);
    assertThat(needs.of(Skill.DROP).sentence()).contains("The drop test tells most for its time");
    assertThat(needs.of(Skill.SERVE).sentence()).contains("play it to find out");
  }

  @Test
  void largerRise_showsAfterFewerSessions_andAHugeOneAlready() {
    for (int week = 6; week >= 0; week--) {
      played(week);
    }
    PracticeReading practice = reading(List.of(DINKS), Set.of()).aboutPractice();
    LocalDate since = TODAY.minusWeeks(6);
    double now =
        SDS_WHEN_SHOWN * reading(List.of(DINKS), Set.of()).rise(ANA, Skill.DINK, since).sd();
    int small = practice.sessionsToShow(ANA, Skill.DINK, since, 0.96 * now).orElseThrow();
    int large = practice.sessionsToShow(ANA, Skill.DINK, since, 0.98 * now).orElseThrow();
    assertThat(large).isBetween(1, small);
    assertThat(small).isGreaterThan(1);
    assertThat(practice.sessionsToShow(ANA, Skill.DINK, since, 5)).hasValue(0);
  }

  @Test
  void startThatIsBadlyKnown_isNotMendedByMoreSessions() {
    played(6);
    played(0);
    PracticeReading practice = reading(List.of(DINKS), Set.of()).aboutPractice();
    assertThat(practice.sessionsToShow(ANA, Skill.DINK, TODAY.minusWeeks(6), 0.1)).isEmpty();
    assertThatThrownBy(
            () -> practice.sessionsToShow(ANA, Skill.DINK, TODAY.minusWeeks(6), Double.NaN))
        .hasMessageContaining("(NaN) must be above 0");
  }

  @Test
  void countOfSessions_isTheFirstAfterWhichTheDoubtIsSmallEnough() {
    for (int week = 6; week >= 0; week--) {
      played(week);
    }
    ClubReading before = reading(List.of(DINKS), Set.of());
    LocalDate since = TODAY.minusWeeks(6);
    double rise = 0.96 * SDS_WHEN_SHOWN * before.rise(ANA, Skill.DINK, since).sd();
    int count = before.aboutPractice().sessionsToShow(ANA, Skill.DINK, since, rise).orElseThrow();
    double allowed = rise / SDS_WHEN_SHOWN;
    for (int more = 1; more < count; more++) {
      played(0);
    }
    assertThat(reading(List.of(DINKS), Set.of()).rise(ANA, Skill.DINK, since).sd())
        .isGreaterThan(allowed * 0.999);
    played(0);
    assertThat(reading(List.of(DINKS), Set.of()).rise(ANA, Skill.DINK, since).sd())
        .isLessThan(allowed * 1.001);
  }

  @Test
  void gains_standBesideWhatWasAssumed_neverBelowHalfNorAboveTwice() {
    Estimate before = new Estimate(0.0005, 0.0005);
    var gains =
        PracticeReading.beside(
            List.of(
                new GainReading(DINKS, new Estimate(0.00075, 0.0003), before, 100, 4),
                new GainReading(ToyDrills.full(), new Estimate(-0.001, 0.0003), before, 100, 4),
                new GainReading(ToyDrills.overheads(), new Estimate(0.01, 0.003), before, 100, 4)));
    assertThat(gains.of(DINKS.key())).isCloseTo(1.5, within(1e-12));
    assertThat(gains.of(ToyDrills.full().key())).isEqualTo(0.5);
    assertThat(gains.of(ToyDrills.overheads().key())).isEqualTo(2);
    assertThat(gains.of(new DrillKey("unknown"))).isEqualTo(1);
  }

  private static Optional<Measure> measure(ClubReading reading, Skill skill) {
    return reading.aboutPractice().measure(ANA, skill);
  }

  private ClubReading reading(List<Drill> drills, Set<Limit> limits) {
    List<Player> players = List.of(player(ANA, limits), player(BO, Set.of()));
    return ClubReading.of(new ClubHistory(players, drills, List.of(dropTest()), sessions, TODAY));
  }

  private static Player player(PlayerId id, Set<Limit> limits) {
    return new Player(
        id,
        id.value().toUpperCase(java.util.Locale.ROOT),
        new Level(3.5),
        Hand.RIGHT,
        limits,
        "",
        AgeGroup.ADULT,
        Standing.ACTIVE);
  }

  private static Yardstick dropTest() {
    return new Yardstick(
        new DrillKey("drop-test"),
        "The drop test",
        Skill.DROP,
        BALLS,
        "Lands in the kitchen.",
        "A feeder at the far line.",
        new Yardstick.OnCourt(
            Direction.STRAIGHT, Spot.feet(5, 21), Optional.empty(), HalfArea.WHOLE_HALF),
        new Yardstick.Difficulty(0, DIFFICULTY_SD, Source.ASSUMPTION),
        new SecondsPrior(SECONDS_PER_BALL, 3),
        new Advice(List.of(), List.of(), List.of(), List.of("Stop at pain.")));
  }

  private void counted(int hits) {
    PlannedBlock block = block(PlannedBlock.Kind.YARDSTICK, dropTest().key(), List.of());
    Session session = session(TODAY, block);
    add(session, new YardstickCounted(stamp(session), block.id(), ANA, hits, BALLS));
  }

  /** A game that ends level, so that it moves nothing but the doubt. */
  private void played(int weeksAgo) {
    PlannedGame game =
        new PlannedGame(
            new GameId("g" + sessions.size()),
            1,
            new CourtLane(1, Lane.STRAIGHT_RIGHT),
            new Seat(Role.EVEN, List.of(ANA)),
            new Seat(Role.EVEN, List.of(BO)),
            HeadStart.NONE);
    Session session =
        session(
            TODAY.minusWeeks(weeksAgo), block(PlannedBlock.Kind.DRILL, DINKS.key(), List.of(game)));
    add(
        session,
        new FinalScoreGiven(stamp(session), game.id(), Score.of(4, 4), Finish.TIME_CALLED));
  }

  private static Stamp stamp(Session session) {
    return new Stamp(new EventId("e"), session.id(), 1000, "desk");
  }

  private PlannedBlock block(PlannedBlock.Kind kind, DrillKey key, List<PlannedGame> games) {
    return new PlannedBlock(
        new BlockId("b" + sessions.size()),
        kind,
        key,
        PlannedBlock.End.LAST_LANE,
        new BlockTime(5, 1),
        games,
        games.isEmpty() ? List.of() : List.of(List.of()),
        "Everybody plays.");
  }

  private Session session(LocalDate date, PlannedBlock block) {
    return new Session(
        new SessionId("s" + sessions.size()),
        "Tuesday",
        date,
        LocalTime.of(18, 0),
        null,
        null,
        new SessionPlan(60, 1, List.of(ANA, BO), List.of(block)),
        Session.State.DONE);
  }

  private void add(Session session, CourtEvent event) {
    sessions.add(
        SessionProgress.of(
            session,
            (block, game) -> GameFormats.of(Optional.of(DINKS), block, game),
            List.of(event)));
  }
}
