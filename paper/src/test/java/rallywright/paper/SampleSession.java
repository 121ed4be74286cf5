package rallywright.paper;

import java.net.URI;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import rallywright.engine.club.AgeGroup;
import rallywright.engine.club.Hand;
import rallywright.engine.club.Level;
import rallywright.engine.club.Limit;
import rallywright.engine.club.Player;
import rallywright.engine.club.PlayerId;
import rallywright.engine.club.Standing;
import rallywright.engine.court.CourtLane;
import rallywright.engine.court.Lane;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.DrillForm;
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
import rallywright.engine.session.Session;
import rallywright.engine.session.SessionId;

/** A session made up for the tests of the printed pages: invented people, invented plan. */
final class SampleSession {

  static final URI ADDRESS =
      URI.create("https://courts.example:8443/on-court#s7.kq3vY2n8Zr1tXw5uBd6mPa");

  static final String HEALTH_NOTE = "left shoulder repaired";

  private final List<Player> players;
  private final List<PlannedBlock> blocks = new ArrayList<>();

  private SampleSession(List<Player> players) {
    this.players = players;
  }

  static SampleSession of(String... names) {
    List<Player> players = new ArrayList<>();
    for (String name : names) {
      players.add(
          new Player(
              new PlayerId("player-" + players.size()),
              name,
              new Level(3.5),
              Hand.RIGHT,
              Set.of(Limit.NO_OVERHEADS),
              HEALTH_NOTE,
              AgeGroup.ADULT,
              Standing.ACTIVE));
    }
    return new SampleSession(players);
  }

  static SampleSession usual(int players) {
    String[] names = {
      "Imke Vold",
      "Rafe Osterly",
      "Juno Pell",
      "Tamsin Okafor-Reed",
      "Bram Quill",
      "Wren Adeyo",
      "Solvei Marsh",
      "Dov Lindqvist"
    };
    SampleSession session = of(List.of(names).subList(0, players).toArray(String[]::new));
    return session
        .timed(SampleDrills.STEPS, 5)
        .timed(SampleDrills.PADDLE, 5)
        .drill(SampleDrills.DINK, 12, 2, Lane.STRAIGHT_LEFT, Lane.STRAIGHT_RIGHT)
        .drill(SampleDrills.DINK, 11, 2, Lane.CROSS_EVEN, Lane.CROSS_ODD)
        .drill(SampleDrills.DROP, 14, 2, Lane.STRAIGHT_LEFT, Lane.STRAIGHT_RIGHT)
        .drill(SampleDrills.DROP, 14, 4, Lane.CROSS_EVEN, Lane.CROSS_ODD)
        .drill(SampleDrills.FULL, 13, 2, Lane.STRAIGHT_LEFT, Lane.STRAIGHT_RIGHT)
        .yardstick(8);
  }

  SampleSession timed(Drill drill, double minutes) {
    return block(drill.key(), PlannedBlock.Kind.WARM_UP, minutes, List.of());
  }

  SampleSession yardstick(double minutes) {
    return block(SampleDrills.DROPS.key(), PlannedBlock.Kind.YARDSTICK, minutes, List.of());
  }

  SampleSession rest(double minutes) {
    return block(new DrillKey("rest"), PlannedBlock.Kind.BREAK, minutes, List.of());
  }

  /** Everybody plays two by two, near and far exchanged from turn to turn. */
  SampleSession drill(Drill drill, double minutes, int turns, Lane first, Lane second) {
    List<PlannedGame> games = new ArrayList<>();
    DrillForm.Scored form = drill.scored().orElseThrow();
    Role near = form.layout().sides().a().role();
    Role far = form.layout().sides().b().role();
    for (int turn = 1; turn <= turns; turn++) {
      for (int pair = 0; pair + 1 < players.size(); pair += 2) {
        PlayerId one = players.get((pair + turn) % players.size()).id();
        PlayerId two = players.get((pair + turn + 1) % players.size()).id();
        games.add(
            new PlannedGame(
                new GameId(blocks.size() + "-" + games.size()),
                turn,
                new CourtLane(pair / 4 + 1, pair % 4 == 0 ? first : second),
                new Seat(near, List.of(turn % 2 == 0 ? two : one)),
                new Seat(far, List.of(turn % 2 == 0 ? one : two)),
                pair == 0 && turn == 1 && drill.equals(SampleDrills.DROP)
                    ? new HeadStart(2, 0)
                    : HeadStart.NONE));
      }
    }
    return block(drill.key(), PlannedBlock.Kind.DRILL, minutes, games);
  }

  private SampleSession block(
      DrillKey drill, PlannedBlock.Kind kind, double minutes, List<PlannedGame> games) {
    blocks.add(
        new PlannedBlock(
            new BlockId("b" + blocks.size()),
            kind,
            drill,
            PlannedBlock.End.LAST_LANE,
            new BlockTime(minutes, 2),
            games,
            sitting(games),
            "It fits."));
    return this;
  }

  private List<List<PlayerId>> sitting(List<PlannedGame> games) {
    List<List<PlayerId>> sitting = new ArrayList<>();
    int turns = games.stream().mapToInt(PlannedGame::turn).max().orElse(0);
    for (int turn = 1; turn <= turns; turn++) {
      int asked = turn;
      List<PlayerId> idle = new ArrayList<>(players.stream().map(Player::id).toList());
      games.stream()
          .filter(game -> game.turn() == asked)
          .forEach(
              game -> {
                idle.removeAll(game.a().players());
                idle.removeAll(game.b().players());
              });
      sitting.add(idle);
    }
    return sitting;
  }

  Session session() {
    int minutes = 90;
    return new Session(
        new SessionId("s7"),
        "Line to baseline",
        LocalDate.of(2026, 11, 24),
        LocalTime.of(18, 0),
        null,
        null,
        new SessionPlan(
            minutes, players.size() > 4 ? 2 : 1, players.stream().map(Player::id).toList(), blocks),
        Session.State.PLANNED);
  }

  SheetRequest request() {
    return request(new PhoneAccess.Open(ADDRESS), Origin.OWN_CLUB);
  }

  SheetRequest request(PhoneAccess access, Origin origin) {
    return new SheetRequest(session(), players, SampleDrills.book(), access, origin);
  }
}
