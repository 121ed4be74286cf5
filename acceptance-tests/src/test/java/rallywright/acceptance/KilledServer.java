package rallywright.acceptance;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.ThreadLocalRandom;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import rallywright.engine.session.CourtEvent;

/**
 * Kills the server (SIGKILL) again and again while phones score, and compares after each kill what
 * was acknowledged with what the store holds, and in the end what was made.
 */
final class KilledServer {

  private static final int BROWSERS = 2;
  private static final int OTHERS = 6;
  private static final int KILLS_A_SESSION = 20;
  private static final int LONGEST_WAIT_MS = 300;
  private static final int MOST_WAITING = 5;
  private static final int BUSY = 20;
  private static final Duration PATIENCE = Duration.ofMinutes(2);

  private final LaneClub club;
  private final int kills;
  private final Random random;
  private final Set<String> lost = new HashSet<>();
  private int doubled;
  private int made;
  private int acknowledgedAtKills;
  private int stored;

  private KilledServer(Path folder, int kills, long seed) {
    this.club = new LaneClub(folder);
    this.kills = kills;
    this.random = new Random(seed);
  }

  /**
   * What came of it.
   *
   * @param kills how often the server was killed
   * @param made how many entries the phones made
   * @param stored how many of them the store held in the end
   * @param acknowledgedAtKills how many acknowledged entries were looked up right after kills
   * @param lost how many acknowledged ones were missing then, or made ones in the end
   * @param doubled how many were there twice
   */
  record Result(int kills, int made, int stored, int acknowledgedAtKills, int lost, int doubled) {}

  /**
   * Runs it.
   *
   * @param folder an empty folder
   * @param kills how often the server is killed
   * @param seed decides taps and moments
   * @param each is told what came of it so far after every session
   */
  static Result run(Path folder, int kills, long seed, Consumer<Result> each) throws Exception {
    return new KilledServer(folder, kills, seed).run(each);
  }

  private Result run(Consumer<Result> each) throws Exception {
    int sessions = (kills + KILLS_A_SESSION - 1) / KILLS_A_SESSION;
    List<String> names = IntStream.range(0, sessions).mapToObj("evening-%03d"::formatted).toList();
    Map<String, String> keys = club.add(names, BROWSERS + OTHERS, 1);
    StartedProgram program = StartedProgram.serve(club.folder());
    ExecutorService hands = Executors.newCachedThreadPool();
    try (TapperPair browsers = new TapperPair()) {
      int left = kills;
      for (String session : names) {
        Evening evening = new Evening(session, keys.get(session), program.address());
        browsers.open(program.address(), session, keys.get(session));
        evening.begin(hands);
        browsers.begin();
        for (int kill = 0; kill < KILLS_A_SESSION && left > 0; kill++, left--) {
          evening.waitUntilBusy();
          Thread.sleep(random.nextInt(LONGEST_WAIT_MS));
          program = killAndStart(program, evening);
        }
        browsers.end();
        evening.end();
        compare(session, evening, browsers);
        each.accept(result(kills - left));
      }
    } finally {
      hands.shutdownNow();
      program.close();
    }
    return result(kills);
  }

  private Result result(int done) {
    return new Result(done, made, stored, acknowledgedAtKills, lost.size(), doubled);
  }

  private StartedProgram killAndStart(StartedProgram program, Evening evening) throws Exception {
    int port = program.port();
    program.killAtOnce();
    Set<String> acknowledged = evening.acknowledged();
    List<String> ids = ids(club.events(evening.session));
    acknowledgedAtKills += acknowledged.size();
    Set<String> missing = new HashSet<>(acknowledged);
    missing.removeAll(new HashSet<>(ids));
    lost.addAll(missing);
    return StartedProgram.serve(club.folder(), port);
  }

  /** Every phone's entries, counted by the phone itself, must be there once each. */
  private void compare(String session, Evening evening, TapperPair browsers) throws Exception {
    Map<String, Integer> expected = new TreeMap<>();
    evening.phones.forEach(phone -> expected.put(phone.name(), phone.made()));
    expected.putAll(browsers.made());
    List<CourtEvent> events = club.events(session);
    Set<String> ids = new HashSet<>(ids(events));
    browsers.acknowledged().stream().filter(id -> !ids.contains(id)).forEach(lost::add);
    expected.forEach(
        (phone, count) -> {
          List<Long> numbers =
              events.stream()
                  .filter(event -> event.stamp().by().equals(phone))
                  .map(event -> event.stamp().order().number())
                  .toList();
          made += count;
          stored += numbers.size();
          doubled += numbers.size() - new HashSet<>(numbers).size();
          for (long number = 1; number <= count; number++) {
            if (!numbers.contains(number)) {
              lost.add(session + " " + phone + " " + number);
            }
          }
        });
  }

  private static List<String> ids(List<CourtEvent> events) {
    return events.stream().map(event -> event.stamp().id().value()).toList();
  }

  /** The phones without a screen of one session. */
  private final class Evening {

    final List<ScoringPhone> phones = new ArrayList<>();
    private final String session;
    private final List<Future<?>> working = new ArrayList<>();
    private volatile boolean going = true;

    Evening(String session, String key, String address) {
      this.session = session;
      for (int phone = 0; phone < OTHERS; phone++) {
        int lane = BROWSERS + phone + 1;
        var seat = new ScoringPhone.LaneSeat(address, session, key, LaneClub.game(1, lane), phone);
        phones.add(new ScoringPhone(seat, random.nextLong()));
      }
    }

    void begin(ExecutorService hands) {
      for (ScoringPhone phone : phones) {
        Callable<Boolean> scoring = () -> score(phone);
        working.add(hands.submit(scoring));
      }
    }

    private boolean score(ScoringPhone phone) throws InterruptedException {
      while (going) {
        if (phone.waiting() < MOST_WAITING) {
          phone.tap();
        }
        phone.send();
        Thread.sleep(40 + ThreadLocalRandom.current().nextInt(80));
      }
      long end = System.nanoTime() + PATIENCE.toNanos();
      while (!phone.send()) {
        if (System.nanoTime() > end) {
          throw new IllegalStateException(phone.name() + " could not send everything");
        }
        Thread.sleep(50);
      }
      return true;
    }

    /** The server has answered for some entries since it was started. */
    void waitUntilBusy() throws InterruptedException {
      int before = acknowledged().size();
      long end = System.nanoTime() + PATIENCE.toNanos();
      while (acknowledged().size() < before + BUSY) {
        if (System.nanoTime() > end) {
          throw new IllegalStateException("The server answers nobody after its restart.");
        }
        Thread.sleep(10);
      }
    }

    void end() throws Exception {
      going = false;
      for (Future<?> each : working) {
        each.get();
      }
    }

    Set<String> acknowledged() {
      Set<String> all = new HashSet<>();
      phones.forEach(phone -> all.addAll(phone.acknowledged()));
      return all;
    }
  }
}
