package rallywright.store;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import rallywright.engine.club.AgeGroup;
import rallywright.engine.club.Group;
import rallywright.engine.club.GroupId;
import rallywright.engine.club.Hand;
import rallywright.engine.club.Level;
import rallywright.engine.club.Limit;
import rallywright.engine.club.Player;
import rallywright.engine.club.PlayerId;
import rallywright.engine.club.Standing;
import rallywright.engine.club.Venue;
import rallywright.engine.club.VenueId;
import rallywright.engine.court.CourtLane;
import rallywright.engine.court.Lane;
import rallywright.engine.drill.DrillKey;
import rallywright.engine.drill.Role;
import rallywright.engine.odds.FairGame;
import rallywright.engine.plan.BlockId;
import rallywright.engine.plan.BlockTime;
import rallywright.engine.plan.GameId;
import rallywright.engine.plan.HeadStart;
import rallywright.engine.plan.PlannedBlock;
import rallywright.engine.plan.PlannedGame;
import rallywright.engine.plan.Seat;
import rallywright.engine.plan.SessionPlan;
import rallywright.engine.rotation.DayResult;
import rallywright.engine.rotation.DayStyle;
import rallywright.engine.rotation.DayWish;
import rallywright.engine.rotation.Pairing;
import rallywright.engine.rotation.PlayDay;
import rallywright.engine.rotation.RotationGame;
import rallywright.engine.rotation.RotationMatch;
import rallywright.engine.rotation.RotationPlayer;
import rallywright.engine.rotation.RotationRound;
import rallywright.engine.rotation.SavedDay;
import rallywright.engine.score.Ending;
import rallywright.engine.score.Rally;
import rallywright.engine.score.Score;
import rallywright.engine.score.Side;
import rallywright.engine.session.Conditions;
import rallywright.engine.session.CourtEvent;
import rallywright.engine.session.EventId;
import rallywright.engine.session.Session;
import rallywright.engine.session.SessionId;

/** An invented club of invented people for the store's tests. */
public final class Examples {

  public static final Player MARLO = player("p-marlo", "Marlo Quint", Standing.ACTIVE);
  public static final Player TESSA = player("p-tessa", "Tessa \"Tee\" Orrin, jr.", Standing.ACTIVE);
  public static final Player IVO =
      new Player(
          new PlayerId("p-ivo"),
          "Ivo Ærlund",
          null,
          Hand.LEFT,
          Set.of(Limit.NO_OVERHEADS, Limit.NO_LUNGING),
          "Left shoulder;\nask before overheads",
          AgeGroup.JUNIOR,
          Standing.ACTIVE);
  public static final Player WALK_IN = player("p-walk", "Somebody New", Standing.WALK_IN);

  public static final Group EVENING =
      new Group(new GroupId("g-eve"), "Evening", Set.of(MARLO.id(), IVO.id(), WALK_IN.id()));
  public static final Venue HALL =
      new Venue(
          new VenueId("v-hall"), "Old hall", 3, Venue.Setting.INDOOR, "indoor", "wood", 412.5);

  public static final SessionId MONDAY = new SessionId("s-monday");
  public static final BlockId WARM = new BlockId("b-warm");
  public static final BlockId DROPS = new BlockId("b-drops");
  public static final GameId FIRST = new GameId("game-1");
  public static final GameId SECOND = new GameId("game-2");

  private Examples() {}

  public static Player player(String id, String name, Standing standing) {
    return new Player(
        new PlayerId(id),
        name,
        new Level(3.25),
        Hand.RIGHT,
        Set.of(),
        "",
        AgeGroup.ADULT,
        standing);
  }

  /** Marlo against Ivo, then Tessa against the walk-in. */
  public static SessionPlan plan() {
    PlannedBlock warm =
        new PlannedBlock(
            WARM,
            PlannedBlock.Kind.WARM_UP,
            new DrillKey("paddle-warm-up"),
            PlannedBlock.End.BY_CLOCK,
            new BlockTime(6, 0),
            List.of(),
            List.of(),
            "Everybody begins warm.");
    PlannedBlock drops =
        new PlannedBlock(
            DROPS,
            PlannedBlock.Kind.DRILL,
            new DrillKey("drop-game"),
            PlannedBlock.End.LAST_LANE,
            new BlockTime(11.5, 1.75),
            List.of(
                game(FIRST, 1, MARLO.id(), IVO.id()), game(SECOND, 2, TESSA.id(), WALK_IN.id())),
            List.of(List.of(TESSA.id(), WALK_IN.id()), List.of(MARLO.id(), IVO.id())),
            "Drops cost the most points last week.");
    return new SessionPlan(
        60, 1, List.of(MARLO.id(), TESSA.id(), IVO.id(), WALK_IN.id()), List.of(warm, drops));
  }

  public static PlannedGame game(GameId id, int turn, PlayerId a, PlayerId b) {
    return new PlannedGame(
        id,
        turn,
        new CourtLane(1, Lane.CROSS_EVEN),
        new Seat(Role.BACK, List.of(a)),
        new Seat(Role.UP, List.of(b)),
        new HeadStart(2, 0));
  }

  public static Session session() {
    return new Session(
        MONDAY,
        "Monday drops",
        LocalDate.of(2026, 3, 2),
        LocalTime.of(18, 30),
        HALL.id(),
        EVENING.id(),
        plan(),
        Session.State.RUNNING);
  }

  public static CourtEvent.Stamp stamp(String id) {
    return new CourtEvent.Stamp(new EventId(id), MONDAY, 1_772_476_200_000L, "phone 1");
  }

  public static CourtEvent rally(String id, GameId game, Side winner) {
    return new CourtEvent.RallyPlayed(stamp(id), game, Rally.wonBy(winner));
  }

  public static CourtEvent note(String id, Optional<PlayerId> player, String text) {
    return new CourtEvent.NoteWritten(stamp(id), player, Optional.empty(), text, Optional.empty());
  }

  private static List<CourtEvent> wordsOfTheDay() {
    List<CourtEvent> events = new ArrayList<>();
    events.add(
        note("e-14", Optional.of(IVO.id()), "Lands drops from everywhere; next the return."));
    events.add(
        new CourtEvent.NoteWritten(
            stamp("e-15"),
            Optional.empty(),
            Optional.of(DROPS),
            "Split step first.\nThen the drop.",
            Optional.of(new EventId("e-99"))));
    events.add(
        new CourtEvent.BlockLimited(stamp("e-16"), DROPS, OptionalInt.of(4), List.of(SECOND)));
    return events;
  }

  /** One event of every type, notes and gaps included. */
  public static List<CourtEvent> oneOfEach() {
    List<CourtEvent> events = new ArrayList<>();
    events.add(new CourtEvent.BlockStarted(stamp("e-01"), DROPS));
    events.add(new CourtEvent.FirstServerNamed(stamp("e-02"), FIRST, Side.B));
    events.add(rally("e-03", FIRST, Side.A));
    Ending ending =
        new Ending(
            Optional.of(Ending.Stage.TRANSITION),
            Optional.empty(),
            Optional.of(Ending.Manner.ERROR));
    events.add(
        new CourtEvent.RallyPlayed(
            stamp("e-04"), FIRST, Rally.roundThePost(Side.B).withEnding(ending)));
    events.add(new CourtEvent.Undone(stamp("e-05"), new EventId("e-04")));
    events.add(new CourtEvent.TimeCalled(stamp("e-06"), FIRST));
    events.add(
        new CourtEvent.FinalScoreGiven(
            stamp("e-07"), SECOND, Score.of(5, 3), CourtEvent.Finish.PLAYED_OUT));
    events.add(new CourtEvent.YardstickCounted(stamp("e-08"), DROPS, WALK_IN.id(), 14, 20));
    events.add(
        new CourtEvent.ConditionsNoted(
            stamp("e-09"),
            new Conditions(
                Conditions.Wind.LIGHT,
                Conditions.Sun.BLINDING,
                OptionalDouble.of(27.5),
                OptionalDouble.empty())));
    events.add(new CourtEvent.EffortRated(stamp("e-10"), IVO.id(), 7));
    events.add(new CourtEvent.EffortRated(stamp("e-11"), WALK_IN.id(), 4));
    events.add(new CourtEvent.BlockEnded(stamp("e-12"), DROPS));
    events.add(new CourtEvent.SessionEnded(stamp("e-13")));
    events.addAll(wordsOfTheDay());
    return events;
  }

  /** A day of games of all four, the first round scored and the last player gone after it. */
  public static SavedDay day() {
    DayWish wish =
        new DayWish(
            DayStyle.NEW_PARTNERS,
            RotationGame.DOUBLES,
            1,
            3,
            List.of(
                new RotationPlayer(MARLO.id(), 0.75, 1, RotationPlayer.TO_THE_END),
                new RotationPlayer(TESSA.id(), -0.5, 1, RotationPlayer.TO_THE_END),
                new RotationPlayer(IVO.id(), 0.1, 1, RotationPlayer.TO_THE_END),
                new RotationPlayer(WALK_IN.id(), 0, 1, 2)),
            Set.of(new Pairing(MARLO.id(), IVO.id())),
            Set.of(new Pairing(TESSA.id(), WALK_IN.id())),
            17);
    RotationMatch match =
        new RotationMatch(
            1,
            1,
            List.of(MARLO.id(), TESSA.id()),
            List.of(IVO.id(), WALK_IN.id()),
            new FairGame.HeadStart(0, 2, 0.52));
    RotationRound second =
        new RotationRound(2, List.of(), List.of(MARLO.id(), TESSA.id(), IVO.id(), WALK_IN.id()));
    return new SavedDay(
        "day-1",
        "Sunday games",
        LocalDate.of(2026, 3, 8),
        new DrillKey("drop-game"),
        new PlayDay(
            wish,
            List.of(new RotationRound(1, List.of(match), List.of()), second),
            List.of(new DayResult(1, 0, 11, 8)),
            1));
  }

  /** A club with everything in it. */
  public static void fill(ClubStore store) {
    store.players().saveAll(List.of(MARLO, TESSA, IVO, WALK_IN));
    store.groups().save(EVENING);
    store.venues().save(HALL);
    store.sessions().save(session());
    store.days().save(day());
    store.sessions().saveTemplate("Soft hour", plan());
    store.events().append(oneOfEach());
    store.settings().put("units", "metric");
    store.settings().put(Settings.SECRET_PREFIX + "password", "not-for-export");
    store.customDrills().save(new DrillKey("own-drill"), "key: own-drill\nname: Ours\n");
  }
}
