package rallywright.engine.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rallywright.engine.club.AgeGroup;
import rallywright.engine.club.Hand;
import rallywright.engine.club.Level;
import rallywright.engine.club.Player;
import rallywright.engine.club.PlayerId;
import rallywright.engine.club.Standing;
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
import rallywright.engine.practice.Needs;
import rallywright.engine.practice.PointWorth;
import rallywright.engine.score.GameFormat;
import rallywright.engine.score.Rally;
import rallywright.engine.score.Score;
import rallywright.engine.score.Side;
import rallywright.engine.session.Conditions;
import rallywright.engine.session.CourtEvent;
import rallywright.engine.session.CourtEvent.FinalScoreGiven;
import rallywright.engine.session.CourtEvent.Finish;
import rallywright.engine.session.CourtEvent.RallyPlayed;
import rallywright.engine.session.CourtEvent.Stamp;
import rallywright.engine.session.EventId;
import rallywright.engine.session.GameFormats;
import rallywright.engine.session.Session;
import rallywright.engine.session.SessionId;
import rallywright.engine.session.SessionProgress;
import rallywright.engine.skill.ClubTuning;
import rallywright.engine.skill.Estimate;
import rallywright.engine.skill.JointEstimate;

class ClubReadingTest {

  private static final LocalDate TODAY = LocalDate.of(2026, 3, 31);
  private static final PlayerId ANA = new PlayerId("ana");
  private static final PlayerId BO = new PlayerId("bo");
  private static final Drill DINKS =
      ToyDrills.even("dinks", Skill.DINK, Progression.LINE, Intensity.EASY);
  private static final Drill DROPS =
      ToyDrills.uneven("drops", Skill.DROP, Skill.COUNTER, Progression.BASELINE);

  private final List<SessionProgress> sessions = new ArrayList<>();
  private Optional<Conditions> weather = Optional.empty();

  @Test
  void clubWithoutScores_standsAtItsLevels_andSaysNothing() {
    ClubReading reading = reading();
    SkillReading dink = reading.skill(ANA, Skill.DINK);
    assertThat(dink.now().mean()).isCloseTo(0, within(1e-9));
    assertThat(dink.enough()).isFalse();
    assertThat(dink.chanceOfRise()).isEmpty();
    assertThat(dink.course()).hasSize(1);
    assertThat(dink.share()).isCloseTo(0.5, within(1e-9));
  }

  @Test
  void clearWinsInADinkGame_liftTheDinkOfTheWinner_mostOfAllSkills() {
    for (int week = 0; week < 6; week++) {
      play(DINKS, week, seat(Role.EVEN, ANA), seat(Role.EVEN, BO), Score.of(5, 1));
    }
    ClubReading reading = reading();
    SkillReading dink = reading.skill(ANA, Skill.DINK);
    assertThat(dink.share()).isGreaterThan(0.6);
    assertThat(dink.rallies()).isEqualTo(36);
    assertThat(dink.enough()).isTrue();
    assertThat(dink.lowShare()).isLessThan(dink.share());
    assertThat(dink.highShare()).isGreaterThan(dink.share());
    assertThat(reading.skill(ANA, Skill.SERVE).share()).isLessThan(dink.share());
    assertThat(reading.skill(BO, Skill.DINK).share()).isCloseTo(1 - dink.share(), within(1e-9));
  }

  @Test
  void sidesOfTheSheet_writtenTheOtherWayRound_sayTheSame() {
    play(DROPS, 0, seat(Role.BACK, ANA), seat(Role.UP, BO), Score.of(5, 3));
    ClubReading written = reading();
    sessions.clear();
    play(DROPS, 0, seat(Role.UP, BO), seat(Role.BACK, ANA), Score.of(3, 5));
    ClubReading turned = reading();
    for (Skill skill : Skill.values()) {
      assertThat(turned.skill(ANA, skill).now().mean())
          .isCloseTo(written.skill(ANA, skill).now().mean(), within(1e-9));
    }
    GameOutlook one = written.outlook(written.games(ANA).get(0));
    GameOutlook other = turned.outlook(turned.games(ANA).get(0));
    assertThat(other.pointsA()).isCloseTo(one.pointsB(), within(1e-9));
    assertThat(other.winA()).isCloseTo(1 - one.winA(), within(1e-9));
    assertThat(other.worstForA()).isEqualTo(one.bestForA().swapped());
  }

  @Test
  void backPlayerOfADropGame_isExpectedToLose_toAnEqual() {
    GameOutlook outlook =
        reading().outlook(DROPS, seat(Role.BACK, ANA), seat(Role.UP, BO), GameFormat.DRILL_GAME);
    assertThat(outlook.winA()).isLessThan(0.3);
    assertThat(outlook.pointsA()).isLessThan(outlook.pointsB());
    assertThat(outlook.expects(Score.of(2, 5))).isTrue();
    assertThat(outlook.expects(Score.of(5, 0))).isFalse();
  }

  @Test
  void change_betweenTwoDays_isTheDifferenceOfTheirWeeks_surerThanTwoBandsWouldSay() {
    for (int weeksAgo = 0; weeksAgo < 6; weeksAgo++) {
      Score score = weeksAgo < 3 ? Score.of(5, 1) : Score.of(1, 5);
      play(DINKS, weeksAgo, seat(Role.EVEN, ANA), seat(Role.EVEN, BO), score);
    }
    ClubReading reading = reading();
    LocalDate first = reading.skill(ANA, Skill.DINK).course().get(0).monday();
    SkillChange change = SkillChange.between(reading, ANA, Skill.DINK, first, TODAY).orElseThrow();
    double apart = change.to().estimate().mean() - change.from().estimate().mean();
    assertThat(change.rise().mean()).isCloseTo(apart, within(1e-9)).isPositive();
    assertThat(change.to().estimate().mean())
        .isCloseTo(reading.skill(ANA, Skill.DINK).now().mean(), within(1e-9));
    assertThat(change.rise().sd())
        .isLessThan(Math.hypot(change.from().estimate().sd(), change.to().estimate().sd()));
    assertThat(change.chanceOfRise()).isBetween(0.5, 1.0);
    assertThat(SkillChange.between(reading, ANA, Skill.DINK, TODAY, TODAY)).isEmpty();
    assertThat(SkillChange.between(reading, ANA, Skill.DINK, TODAY, first)).isEmpty();
  }

  @Test
  void riseInRallies_isThatOfTheLogisticCurve() {
    // 1/(1 + e^-0.5) = 0.6224593 (any table of the logistic function): half of one logit each side.
    assertThat(SkillChange.share(1)).isCloseTo(2 * 0.6224593 - 1, within(1e-6));
    assertThat(SkillChange.share(-1)).isCloseTo(-SkillChange.share(1), within(1e-12));
    assertThat(SkillChange.share(0)).isZero();
  }

  @Test
  void impossibleScore_isLeftOut() {
    play(DINKS, 0, seat(Role.EVEN, ANA), seat(Role.EVEN, BO), Score.of(9, 1));
    assertThat(reading().games(ANA)).isEmpty();
  }

  @Test
  void standing_namesWhatWasPractised_andTheLoserNeedsItMoreThanTheWinner() {
    for (int week = 0; week < 6; week++) {
      play(DINKS, week, seat(Role.EVEN, ANA), seat(Role.EVEN, BO), Score.of(5, 0));
    }
    ClubReading reading = reading();
    var standing = reading.standing(BO);
    assertThat(standing.in(Skill.DINK).rallies()).isEqualTo(30);
    assertThat(standing.in(Skill.DINK).minutesByWeek()).anyMatch(minutes -> minutes > 0);
    assertThat(shareOfDinkNeed(reading, BO)).isGreaterThan(shareOfDinkNeed(reading, ANA));
  }

  private static double shareOfDinkNeed(ClubReading reading, PlayerId player) {
    Needs needs = Needs.of(reading.standing(player), PointWorth.DOUBLES);
    double all = needs.byUrgency().stream().mapToDouble(need -> need.value()).sum();
    return needs.of(Skill.DINK).value() / all;
  }

  @Test
  void minutesOfADrill_areCounted_andTellNothingOfItsGain_whereBothDoTheSame() {
    for (int week = 0; week < 3; week++) {
      play(DINKS, week, seat(Role.EVEN, ANA), seat(Role.EVEN, BO), Score.of(5, 3));
    }
    GainReading gain = reading().gains().get(0);
    double minutes = 8 * DINKS.scored().orElseThrow().seconds().mean() / 60;
    assertThat(reading().gains()).hasSize(1);
    assertThat(gain.drill()).isEqualTo(DINKS);
    assertThat(gain.players()).isEqualTo(2);
    assertThat(gain.effectiveMinutes())
        .isCloseTo(6 * 25 * (1 - Math.exp(-minutes / 25)), within(1e-9));
    assertThat(gain.perMinute().mean()).isCloseTo(gain.before().mean(), within(1e-9));
    assertThat(gain.perMinute().sd()).isCloseTo(gain.before().sd(), within(1e-9));
  }

  @Test
  void rise_sinceADay_isThatOfTheCourse_andAgreesWithTheChance() {
    play(DINKS, 5, seat(Role.EVEN, ANA), seat(Role.EVEN, BO), Score.of(1, 5));
    play(DINKS, 0, seat(Role.EVEN, ANA), seat(Role.EVEN, BO), Score.of(5, 1));
    ClubReading reading = reading();
    SkillReading dink = reading.skill(ANA, Skill.DINK);
    Estimate rise = reading.rise(ANA, Skill.DINK, TODAY.minusWeeks(5));
    double first = dink.course().get(0).estimate().mean();
    assertThat(rise.mean()).isCloseTo(dink.now().mean() - first, within(1e-12));
    assertThat(rise.chanceAbove(0)).isCloseTo(dink.chanceOfRise().orElseThrow(), within(1e-9));
    assertThat(reading.rise(ANA, Skill.DINK, TODAY.minusYears(1))).isEqualTo(rise);
    assertThat(reading.rise(ANA, Skill.DINK, TODAY).sd()).isEqualTo(0);
    JointEstimate both = reading.joint(ANA, Skill.DINK, TODAY.minusWeeks(3), TODAY);
    assertThat(both.second().mean()).isEqualTo(dink.now().mean());
    assertThat(both.covariance()).isGreaterThan(0);
  }

  @Test
  void strongWind_letsTheSameScoreTellLess() {
    play(DINKS, 0, seat(Role.EVEN, ANA), seat(Role.EVEN, BO), Score.of(5, 0));
    double calm = reading().skill(ANA, Skill.DINK).now().mean();
    sessions.clear();
    weather =
        Optional.of(
            new Conditions(
                Conditions.Wind.STRONG,
                Conditions.Sun.BLINDING,
                OptionalDouble.empty(),
                OptionalDouble.empty()));
    play(DINKS, 0, seat(Role.EVEN, ANA), seat(Role.EVEN, BO), Score.of(5, 0));
    double windy = reading().skill(ANA, Skill.DINK).now().mean();
    assertThat(windy).isBetween(0.5 * calm, 0.95 * calm);
    assertThat(WeatherClarity.of(weather).share()).isCloseTo(0.8 * 0.9, within(1e-12));
    assertThat(WeatherClarity.of(Optional.empty()).share()).isEqualTo(1);
  }

  @Test
  void laterHistory_readOnFromAnEarlier_saysTheSameAsReadAnew() {
    for (int week = 5; week > 0; week--) {
      play(DINKS, week, seat(Role.EVEN, ANA), seat(Role.EVEN, BO), Score.of(5, week % 4));
      play(DROPS, week, seat(Role.BACK, ANA), seat(Role.UP, BO), Score.of(3, 5));
    }
    ClubReading before = reading();
    play(DROPS, 0, seat(Role.BACK, BO), seat(Role.UP, ANA), Score.of(5, 4));
    ClubReading anew = reading();
    ClubReading on = before.after(history());
    for (Skill skill : Skill.values()) {
      for (PlayerId player : List.of(ANA, BO)) {
        Estimate found = on.skill(player, skill).now();
        Estimate expected = anew.skill(player, skill).now();
        assertThat(found.mean()).isCloseTo(expected.mean(), within(0.001));
        assertThat(found.sd()).isCloseTo(expected.sd(), within(0.001));
      }
    }
    assertThat(on.skill(ANA, Skill.DROP).now().mean())
        .isNotCloseTo(before.skill(ANA, Skill.DROP).now().mean(), within(0.001));
    assertThat(on.tuning().basis()).isEqualTo(ClubTuning.Basis.USUAL_VALUES);
  }

  @Test
  void slowTaps_makeTheDrillSlower() {
    var scored = DINKS.scored().orElseThrow();
    double firstIdea = reading().paces().of(DINKS, scored).meanSeconds();
    playSlowly(30);
    assertThat(reading().paces().of(DINKS, scored).meanSeconds()).isGreaterThan(firstIdea);
  }

  @Test
  void aBallFetchedFromTheCarPark_doesNotMakeTheDrillSlow() {
    var scored = DINKS.scored().orElseThrow();
    playAt(0, 12, 23, 35, 48, 59, 71, 82, 95, 106);
    double steady = reading().paces().of(DINKS, scored).meanSeconds();
    sessions.clear();
    playAt(0, 12, 23, 35, 48, 59, 71, 188, 201, 212);
    double disturbed = reading().paces().of(DINKS, scored).meanSeconds();
    assertThat(disturbed).isBetween(steady, steady * 1.08);
  }

  @Test
  void tapsOfTwoPhones_areNotCompared() {
    var scored = DINKS.scored().orElseThrow();
    double firstIdea = reading().paces().of(DINKS, scored).meanSeconds();
    Session session = session(DINKS, TODAY, seat(Role.EVEN, ANA), seat(Role.EVEN, BO));
    GameId game = session.plan().blocks().get(0).games().get(0).id();
    List<CourtEvent> events = new ArrayList<>();
    for (int i = 0; i < 8; i++) {
      Stamp stamp = new Stamp(new EventId("e" + i), session.id(), i * 60_000L, "phone " + i % 2);
      events.add(new RallyPlayed(stamp, game, Rally.wonBy(i % 2 == 0 ? Side.A : Side.B)));
    }
    add(DINKS, session, events);
    assertThat(reading().paces().of(DINKS, scored).meanSeconds()).isEqualTo(firstIdea);
  }

  private void playAt(int... seconds) {
    Session session = session(DINKS, TODAY, seat(Role.EVEN, ANA), seat(Role.EVEN, BO));
    GameId game = session.plan().blocks().get(0).games().get(0).id();
    List<CourtEvent> events = new ArrayList<>();
    for (int second : seconds) {
      Stamp stamp = new Stamp(new EventId("e" + second), session.id(), second * 1000L, "phone");
      Side winner = events.size() % 2 == 0 ? Side.A : Side.B;
      events.add(new RallyPlayed(stamp, game, Rally.wonBy(winner)));
    }
    add(DINKS, session, events);
  }

  private ClubReading reading() {
    return ClubReading.of(history());
  }

  private ClubHistory history() {
    List<Player> players = List.of(player(ANA, "Ana"), player(BO, "Bo"));
    List<Drill> drills = List.of(DINKS, DROPS);
    return new ClubHistory(players, drills, List.of(), sessions, TODAY);
  }

  private static Player player(PlayerId id, String name) {
    return new Player(
        id, name, new Level(3.5), Hand.RIGHT, Set.of(), "", AgeGroup.ADULT, Standing.ACTIVE);
  }

  private static Seat seat(Role role, PlayerId player) {
    return new Seat(role, List.of(player));
  }

  private void play(Drill drill, int weeksAgo, Seat a, Seat b, Score score) {
    Session session = session(drill, TODAY.minusWeeks(weeksAgo), a, b);
    GameId game = session.plan().blocks().get(0).games().get(0).id();
    Stamp stamp = new Stamp(new EventId("e1"), session.id(), 1000, "desk");
    List<CourtEvent> events = new ArrayList<>();
    weather.ifPresent(
        noted ->
            events.add(
                new CourtEvent.ConditionsNoted(
                    new Stamp(new EventId("w1"), session.id(), 500, "desk"), noted)));
    events.add(new FinalScoreGiven(stamp, game, score, Finish.PLAYED_OUT));
    add(drill, session, events);
  }

  private void playSlowly(int secondsBetween) {
    Session session = session(DINKS, TODAY, seat(Role.EVEN, ANA), seat(Role.EVEN, BO));
    GameId game = session.plan().blocks().get(0).games().get(0).id();
    List<CourtEvent> events = new ArrayList<>();
    for (int i = 0; i < 8; i++) {
      Stamp stamp =
          new Stamp(new EventId("e" + i), session.id(), i * 1000L * secondsBetween, "phone");
      events.add(new RallyPlayed(stamp, game, Rally.wonBy(i % 2 == 0 ? Side.A : Side.B)));
    }
    add(DINKS, session, events);
  }

  private void add(Drill drill, Session session, List<CourtEvent> events) {
    sessions.add(
        SessionProgress.of(
            session, (block, game) -> GameFormats.of(Optional.of(drill), block, game), events));
  }

  private Session session(Drill drill, LocalDate date, Seat a, Seat b) {
    int number = sessions.size();
    PlannedGame game =
        new PlannedGame(
            new GameId("g" + number),
            1,
            new CourtLane(1, Lane.STRAIGHT_RIGHT),
            a,
            b,
            HeadStart.NONE);
    PlannedBlock block =
        new PlannedBlock(
            new BlockId("b" + number),
            PlannedBlock.Kind.DRILL,
            drill.key(),
            PlannedBlock.End.LAST_LANE,
            new BlockTime(5, 1),
            List.of(game),
            List.of(List.of()),
            "Everybody plays.");
    return new Session(
        new SessionId("s" + number),
        "Tuesday",
        date,
        LocalTime.of(18, 0),
        null,
        null,
        new SessionPlan(60, 1, List.of(ANA, BO), List.of(block)),
        Session.State.DONE);
  }
}
