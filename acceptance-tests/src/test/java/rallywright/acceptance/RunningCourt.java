package rallywright.acceptance;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.util.List;
import rallywright.engine.plan.GameId;
import rallywright.engine.score.GameFormat;
import rallywright.engine.session.CourtEvent;
import rallywright.engine.session.GameProgress;
import rallywright.engine.session.SessionProgress;
import rallywright.store.ClubStore;
import rallywright.store.KeyBook;
import rallywright.store.StoreAddress;

/** The program with the sample session, phones that are let in, and what the store holds. */
final class RunningCourt implements AutoCloseable {

  private static final long FAR_AWAY = 4_000_000_000_000L;

  final Browsers browsers = new Browsers();
  final String key;
  private final Path folder;
  private final int port;
  private StartedProgram program;

  RunningCourt(Path data) {
    folder = data;
    try (ClubStore store = ClubStore.open(StoreAddress.file(data))) {
      CourtSample.addTo(store);
      key = store.keys().issue(KeyBook.Kind.ON_COURT, CourtSample.SESSION.value(), FAR_AWAY);
    }
    program = StartedProgram.serve(data);
    port = Integer.parseInt(program.address().substring(program.address().lastIndexOf(':') + 1));
  }

  String address() {
    return program.address();
  }

  StartedProgram program() {
    return program;
  }

  CourtPhone phone() {
    return phone(browsers.phone());
  }

  CourtPhone phone(BrowserContext context) {
    return new CourtPhone(context, program, key);
  }

  /** The coach's laptop, signed in, at an address of the program. */
  Page coach(String address) {
    return coach(browsers.laptop(), address);
  }

  Page coach(BrowserContext laptop, String address) {
    Page page = laptop.newPage();
    page.navigate(program.signInAddress());
    page.waitForURL(program.address() + "/");
    page.navigate(program.address() + address);
    return page;
  }

  /** Switches the laptop off. */
  void stop() {
    program.close();
  }

  /** Switches it on again, at the same address. */
  void startAgain() {
    program = StartedProgram.serve(folder, port);
  }

  GameProgress stored(String game) {
    return progress().game(new GameId(game)).orElseThrow();
  }

  SessionProgress progress() {
    try (ClubStore store = ClubStore.open(StoreAddress.file(folder))) {
      return SessionProgress.of(
          store.sessions().find(CourtSample.SESSION).orElseThrow(),
          (block, game) -> GameFormat.DRILL_GAME,
          store.events().of(CourtSample.SESSION));
    }
  }

  List<CourtEvent> events() {
    try (ClubStore store = ClubStore.open(StoreAddress.file(folder))) {
      return store.events().of(CourtSample.SESSION);
    }
  }

  @Override
  public void close() {
    browsers.close();
    program.close();
  }
}
