package rallywright.acceptance;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.util.List;
import rallywright.engine.plan.GameId;
import rallywright.engine.score.GameFormat;
import rallywright.engine.session.CourtEvent;
import rallywright.engine.session.GameProgress;
import rallywright.engine.session.SessionId;
import rallywright.engine.session.SessionProgress;
import rallywright.store.ClubStore;
import rallywright.store.KeyBook;

/** The program with the sample session, phones that are let in, and what the store holds. */
final class RunningCourt implements AutoCloseable {

  private static final long FAR_AWAY = 4_000_000_000_000L;

  final Browsers browsers = new Browsers();
  final SessionId session;
  final String key;
  private final CourtHouse house;
  private final boolean own;

  /** With a program of its own, which a test may stop, and phones that keep the page. */
  RunningCourt(Path data) {
    this(new CourtHouse(data), CourtSample.SESSION, true);
  }

  private RunningCourt(CourtHouse house, SessionId session, boolean own) {
    this.house = house;
    this.session = session;
    this.own = own;
    try (ClubStore store = house.open()) {
      key = store.keys().issue(KeyBook.Kind.ON_COURT, session.value(), FAR_AWAY);
    }
  }

  /** With a fresh session in the program that tests share, and phones that need the network. */
  static RunningCourt shared() {
    CourtHouse house = CourtHouse.shared();
    return new RunningCourt(house, house.nextSession(), false);
  }

  String address() {
    return house.program().address();
  }

  StartedProgram program() {
    return house.program();
  }

  CourtPhone phone() {
    return phone(own ? browsers.phone() : browsers.phoneOnline());
  }

  CourtPhone phone(BrowserContext context) {
    return new CourtPhone(context, house.program(), session, key);
  }

  /** The coach's laptop, signed in, at an address of the program. */
  Page coach(String address) {
    return coach(browsers.laptop(), address);
  }

  Page coach(BrowserContext laptop, String address) {
    house.signIn(laptop);
    Page page = laptop.newPage();
    page.navigate(house.program().address() + address);
    return page;
  }

  /** Switches the laptop off. */
  void stop() {
    house.stop();
  }

  /** Switches it on again, at the same address. */
  void startAgain() {
    house.startAgain();
  }

  GameProgress stored(String game) {
    return progress().game(new GameId(game)).orElseThrow();
  }

  SessionProgress progress() {
    try (ClubStore store = house.open()) {
      return SessionProgress.of(
          store.sessions().find(session).orElseThrow(),
          (block, game) -> GameFormat.DRILL_GAME,
          store.events().of(session));
    }
  }

  List<CourtEvent> events() {
    try (ClubStore store = house.open()) {
      return store.events().of(session);
    }
  }

  @Override
  public void close() {
    browsers.close();
    if (own) {
      house.close();
    }
  }
}
