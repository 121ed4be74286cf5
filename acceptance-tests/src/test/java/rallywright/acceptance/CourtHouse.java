package rallywright.acceptance;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.Cookie;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import rallywright.engine.session.SessionId;
import rallywright.store.ClubStore;
import rallywright.store.StoreAddress;

/** A running program with the sample's people, for one session after another. */
final class CourtHouse implements AutoCloseable {

  private static final AtomicReference<CourtHouse> SHARED = new AtomicReference<>();

  private final Path folder;
  private final int port;
  private int sessions;
  private StartedProgram program;
  private List<Cookie> coach = List.of();

  CourtHouse(Path folder) {
    this.folder = folder;
    try (ClubStore store = open()) {
      CourtSample.addTo(store);
    }
    program = StartedProgram.serve(folder);
    port = program.port();
  }

  /**
   * One for all tests of this virtual machine that neither stop the program nor need its club for
   * themselves; it ends with the machine.
   */
  static CourtHouse shared() {
    CourtHouse found = SHARED.get();
    if (found == null) {
      try {
        CourtHouse house = new CourtHouse(Files.createTempDirectory("rallywright-court"));
        Runtime.getRuntime().addShutdownHook(new Thread(house::close));
        SHARED.set(house);
        return house;
      } catch (IOException problem) {
        throw new UncheckedIOException(problem);
      }
    }
    return found;
  }

  /** A session as nobody has touched it yet. */
  SessionId nextSession() {
    sessions++;
    SessionId id = new SessionId(CourtSample.SESSION.value() + "-" + sessions);
    try (ClubStore store = open()) {
      store.sessions().save(CourtSample.session(id, "Tuesday evening"));
    }
    return id;
  }

  ClubStore open() {
    return ClubStore.open(StoreAddress.file(folder));
  }

  StartedProgram program() {
    return program;
  }

  /** Lets a laptop in; the key of the start opens only once, so others get its cookies. */
  void signIn(BrowserContext laptop) {
    if (coach.isEmpty()) {
      Page page = laptop.newPage();
      page.navigate(program.signInAddress());
      page.waitForURL(program.address() + "/");
      page.close();
      coach = laptop.cookies();
    } else {
      laptop.addCookies(coach);
    }
  }

  /** Switches the laptop off. */
  void stop() {
    program.close();
  }

  /** Switches it on again, at the same address. */
  void startAgain() {
    program = StartedProgram.serve(folder, port);
    coach = List.of();
  }

  @Override
  public void close() {
    program.close();
  }
}
