package rallywright.acceptance;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import rallywright.engine.club.AgeGroup;
import rallywright.engine.club.Hand;
import rallywright.engine.club.Limit;
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
import rallywright.engine.plan.PlannedBlock.Kind;
import rallywright.engine.plan.PlannedGame;
import rallywright.engine.plan.Seat;
import rallywright.engine.plan.SessionPlan;
import rallywright.engine.session.Session;
import rallywright.engine.session.SessionId;
import rallywright.store.ClubStore;

/** Invented people and a session by hand: warm-up, even drill, uneven drill, game, yardstick. */
final class CourtSample {

  /** The session with every kind of block. */
  static final SessionId SESSION = new SessionId("tuesday-evening");

  /** Another session, which a key of the first must not open. */
  static final SessionId OTHER = new SessionId("thursday-morning");

  /** A note that no phone may ever show. */
  static final String NOTE = "left knee, tell nobody";

  private static final List<String> NAMES =
      List.of("Ilse Marwick", "Tomas Okafor", "Bea Lindqvist", "Ravi Penhall");

  private CourtSample() {}

  /** Puts the people and both sessions into a club. */
  static void addTo(ClubStore store) {
    for (int place = 1; place <= NAMES.size(); place++) {
      store.players().save(player(place));
    }
    store.sessions().save(session(SESSION, "Tuesday evening"));
    store.sessions().save(session(OTHER, "Thursday morning"));
  }

  private static Player player(int place) {
    return new Player(
        id(place),
        NAMES.get(place - 1),
        null,
        Hand.RIGHT,
        Set.of(Limit.NO_OVERHEADS),
        NOTE,
        AgeGroup.ADULT,
        Standing.ACTIVE);
  }

  private static PlayerId id(int place) {
    return new PlayerId("p" + place);
  }

  /** The sample's session under another id. */
  static Session session(SessionId id, String name) {
    List<PlayerId> all = List.of(id(1), id(2), id(3), id(4));
    SessionPlan plan =
        new SessionPlan(
            60,
            1,
            all,
            List.of(
                block("b1", Kind.WARM_UP, "body-warm-up", List.of()),
                block("b2", Kind.DRILL, "kitchen-only", games("b2", Role.EVEN, Role.EVEN)),
                block("b3", Kind.DRILL, "drop-and-follow", games("b3", Role.BACK, Role.UP)),
                block("b4", Kind.YARDSTICK, "twenty-drops", List.of()),
                block(
                    "b5",
                    Kind.FULL_GAME,
                    "half-court-singles-by-score",
                    games("b5", Role.SERVER, Role.RECEIVER))));
    LocalDate day = LocalDate.of(2026, 3, 3);
    return new Session(id, name, day, LocalTime.of(18, 0), null, null, plan, Session.State.PLANNED);
  }

  private static PlannedBlock block(String id, Kind kind, String drill, List<PlannedGame> games) {
    return new PlannedBlock(
        new BlockId(id),
        kind,
        new DrillKey(drill),
        PlannedBlock.End.LAST_LANE,
        new BlockTime(8, 1),
        games,
        List.of(List.of(), List.of()),
        "Ilse's knee: " + NOTE);
  }

  /** Two turns on two lanes; the uneven drills give a head start to the near side. */
  private static List<PlannedGame> games(String block, Role near, Role far) {
    List<PlannedGame> games = new ArrayList<>();
    for (int turn = 1; turn <= 2; turn++) {
      for (int lane = 0; lane < 2; lane++) {
        int a = lane * 2 + 1;
        games.add(
            new PlannedGame(
                new GameId(block + "-t" + turn + "-l" + (lane + 1)),
                turn,
                new CourtLane(1, lane == 0 ? Lane.CROSS_EVEN : Lane.CROSS_ODD),
                new Seat(near, List.of(id(turn == 1 ? a : a + 1))),
                new Seat(far, List.of(id(turn == 1 ? a + 1 : a))),
                near == Role.BACK ? new HeadStart(2, 0) : HeadStart.NONE));
      }
    }
    return games;
  }
}
