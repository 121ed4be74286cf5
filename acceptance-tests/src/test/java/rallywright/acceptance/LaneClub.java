package rallywright.acceptance;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import rallywright.engine.club.AgeGroup;
import rallywright.engine.club.Hand;
import rallywright.engine.club.Player;
import rallywright.engine.club.PlayerId;
import rallywright.engine.club.Standing;
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
import rallywright.engine.session.CourtEvent;
import rallywright.engine.session.EventId;
import rallywright.engine.session.GameProgress;
import rallywright.engine.session.Session;
import rallywright.engine.session.SessionId;
import rallywright.engine.session.SessionProgress;
import rallywright.store.ClubStore;
import rallywright.store.KeyBook;
import rallywright.store.StoreAddress;

/**
 * An invented club with many sessions, each with a lane for every phone, and what its store holds
 * of them afterwards.
 */
final class LaneClub {

  /** The block that every session plays. */
  static final String BLOCK = "b1";

  private static final long FAR_AWAY = 4_000_000_000_000L;

  private final Path folder;

  LaneClub(Path folder) {
    this.folder = folder;
  }

  /** Where it lies. */
  Path folder() {
    return folder;
  }

  /**
   * Adds sessions.
   *
   * @param names their ids
   * @param lanes how many lanes each has
   * @param turns how many games are played on each lane
   * @return a key for each, by id
   */
  Map<String, String> add(List<String> names, int lanes, int turns) {
    try (ClubStore store = ClubStore.open(StoreAddress.file(folder))) {
      for (int number = 1; number <= 2 * lanes; number++) {
        store.players().save(player(number));
      }
      Map<String, String> keys = new TreeMap<>();
      for (String name : names) {
        Session session = session(name, lanes, turns);
        store.sessions().save(session);
        store.events().append(List.of(begun(session.id())));
        keys.put(name, store.keys().issue(KeyBook.Kind.ON_COURT, name, FAR_AWAY));
      }
      return keys;
    }
  }

  private static CourtEvent begun(SessionId session) {
    String id = "01890000-0000-7000-9000-%012x".formatted(session.value().hashCode() & 0xffffffffL);
    return new CourtEvent.BlockStarted(
        new CourtEvent.Stamp(new EventId(id), session, 1_772_557_200_000L, ""), new BlockId(BLOCK));
  }

  /** The id of a game. */
  static String game(int turn, int lane) {
    return BLOCK + "-t" + turn + "-l" + lane;
  }

  /** The events of a session in the order of their arrival. */
  List<CourtEvent> events(String session) {
    try (ClubStore store = ClubStore.open(StoreAddress.file(folder))) {
      return store.events().of(new SessionId(session));
    }
  }

  /** How every game of a session stands, in words that can be compared. */
  Map<String, String> standings(String session) {
    try (ClubStore store = ClubStore.open(StoreAddress.file(folder))) {
      SessionId id = new SessionId(session);
      SessionProgress progress =
          SessionProgress.of(
              store.sessions().find(id).orElseThrow(),
              (block, game) -> GameFormat.DRILL_GAME,
              store.events().of(id));
      Map<String, String> all = new TreeMap<>();
      for (GameProgress game : progress.games()) {
        all.put(
            game.game().id().value(), game.status() + " " + game.score() + " " + game.rallies());
      }
      return all;
    }
  }

  private static Player player(int number) {
    return new Player(
        new PlayerId("p" + number),
        "Invented " + number,
        null,
        Hand.RIGHT,
        Set.of(),
        "",
        AgeGroup.ADULT,
        Standing.ACTIVE);
  }

  private static Session session(String name, int lanes, int turns) {
    List<PlayerId> present = new ArrayList<>();
    for (int number = 1; number <= 2 * lanes; number++) {
      present.add(new PlayerId("p" + number));
    }
    List<PlannedGame> games = new ArrayList<>();
    for (int turn = 1; turn <= turns; turn++) {
      for (int lane = 1; lane <= lanes; lane++) {
        games.add(planned(turn, lane, present));
      }
    }
    PlannedBlock block =
        new PlannedBlock(
            new BlockId(BLOCK),
            PlannedBlock.Kind.DRILL,
            new DrillKey("kitchen-only"),
            PlannedBlock.End.LAST_LANE,
            new BlockTime(60, 5),
            games,
            List.of(),
            "Even lanes.");
    return new Session(
        new SessionId(name),
        "Session " + name,
        LocalDate.of(2026, 3, 3),
        LocalTime.of(18, 0),
        null,
        null,
        new SessionPlan(120, (lanes + 1) / 2, present, List.of(block)),
        Session.State.PLANNED);
  }

  private static PlannedGame planned(int turn, int lane, List<PlayerId> present) {
    return new PlannedGame(
        new GameId(game(turn, lane)),
        turn,
        new CourtLane((lane + 1) / 2, lane % 2 == 1 ? Lane.CROSS_EVEN : Lane.CROSS_ODD),
        new Seat(Role.EVEN, List.of(present.get(2 * lane - 2))),
        new Seat(Role.EVEN, List.of(present.get(2 * lane - 1))),
        HeadStart.NONE);
  }
}
