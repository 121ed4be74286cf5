package rallywright.acceptance;

import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/** Many lanes score at once while boards are open: how long a write takes and a board lags. */
final class FullHouse {

  private static final int SESSIONS = 20;
  private static final int LANES = 10;
  private static final int RALLY_EVERY_SECONDS = 8;
  private static final int LOOK_EVERY_MS = 4000;
  private static final int WARM_UP_SECONDS = 30;
  private static final int LIMIT_SECONDS = 5;
  private static final int CROWD = 8;
  private static final double NANOS_A_MS = 1e6;
  private static final Pattern TOKEN = Pattern.compile("name=\"_csrf\" value=\"([^\"]+)\"");

  private final ExecutorService hands = Executors.newCachedThreadPool();
  private final List<Future<?>> rounds = new ArrayList<>();
  private final ScheduledExecutorService clock = Executors.newScheduledThreadPool(32);
  private final Queue<Double> writes = new ConcurrentLinkedQueue<>();
  private final Queue<Double> late = new ConcurrentLinkedQueue<>();
  private final Queue<Double> looks = new ConcurrentLinkedQueue<>();
  private final AtomicInteger failures = new AtomicInteger();
  private final Map<String, OpenBoard> boards = new HashMap<>();
  private final long started = System.nanoTime();
  private volatile boolean measuring;

  /**
   * What was measured; times in milliseconds.
   *
   * @param limit commits of the bare database, before and after
   * @param writes from sending a rally to the answer that it is stored
   * @param late the same from the moment at which the rally was due: the phones' own waiting for a
   *     processor is in it
   * @param looks from asking what others did to the answer
   * @param boards from the tap to the board drawn with it
   * @param draws how often boards were drawn
   * @param failures messages without a good answer, and boards that showed a wrong score in the end
   * @param crowd eight phones without a pause
   * @param used processor time of the server while it was measured
   * @param load the load averages of the machine before and after
   */
  record Result(
      Times limit,
      Times writes,
      Times late,
      Times looks,
      Times boards,
      int draws,
      int failures,
      Crowd crowd,
      ProcessorTime used,
      String load) {}

  /**
   * Writes without a pause.
   *
   * @param aSecond writes a second
   * @param processorMs processor time of the server for each, in milliseconds
   */
  record Crowd(double aSecond, double processorMs) {}

  /**
   * Runs it.
   *
   * @param folder an empty folder
   * @param seconds how long is measured
   */
  static Result run(Path folder, int seconds) throws Exception {
    return new FullHouse().measure(folder, seconds);
  }

  private Result measure(Path folder, int seconds) throws Exception {
    String before = load();
    List<Double> limit = new ArrayList<>(CommitLimit.measure(folder, LIMIT_SECONDS));
    LaneClub club = new LaneClub(folder);
    List<String> names = IntStream.range(0, SESSIONS).mapToObj("hall-%02d"::formatted).toList();
    Map<String, String> keys = club.add(names, LANES, turns(seconds, Times.of(limit)));
    try (StartedProgram program = StartedProgram.serveForLong(folder)) {
      List<LanePhone> phones = enter(program, names, keys);
      openBoards(program, names);
      ProcessorTime used = score(phones, seconds, program.pid());
      List<Double> delays = new ArrayList<>();
      boards.values().forEach(board -> delays.addAll(board.delays()));
      int draws = boards.values().stream().mapToInt(OpenBoard::draws).sum();
      boards.values().forEach(board -> failures.addAndGet(board.missing()));
      Crowd crowd = crowd(phones, program.pid());
      limit.addAll(CommitLimit.measure(folder, LIMIT_SECONDS));
      return new Result(
          Times.of(limit),
          Times.of(writes),
          Times.of(late),
          Times.of(looks),
          Times.of(delays),
          draws,
          failures.get(),
          crowd,
          used,
          before + " before, " + load() + " after");
    } finally {
      clock.shutdownNow();
      hands.shutdownNow();
    }
  }

  /** All phones score and look, first to warm up; answers what the server used while measured. */
  private ProcessorTime score(List<LanePhone> phones, int seconds, long pid) throws Exception {
    phones.forEach(this::begin);
    say("all phones score");
    Thread.sleep(WARM_UP_SECONDS * 1000L);
    ProcessorTime start = ProcessorTime.of(pid);
    startMeasuring();
    Thread.sleep(seconds * 1000L);
    measuring = false;
    ProcessorTime used = ProcessorTime.of(pid).since(start);
    clock.shutdown();
    clock.awaitTermination(30, TimeUnit.SECONDS);
    Thread.sleep(3000);
    phones.forEach(this::compare);
    say("compared");
    return used;
  }

  /**
   * So many games that no lane runs out of them, were each as short as can be: the rallies by the
   * clock, and those of the crowd, which cannot write faster than the bare database.
   */
  private static int turns(int seconds, Times limit) {
    int byTheClock = (WARM_UP_SECONDS + seconds + 30) / RALLY_EVERY_SECONDS + 1;
    int ofTheCrowd = (int) Math.ceil(limit.aSecond() * LIMIT_SECONDS / (SESSIONS * LANES));
    return (byTheClock + ofTheCrowd) / LanePhone.GAME_TO + 1;
  }

  private void say(String what) {
    System.out.printf(
        "%s after %.0f s%n", what, (System.nanoTime() - started) / (1000 * NANOS_A_MS));
  }

  /** From now on a phone looks and scores, at moments of its own. */
  private void begin(LanePhone phone) {
    long first = (long) (Math.random() * 2 * LOOK_EVERY_MS);
    AtomicInteger round = new AtomicInteger();
    long begun = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(first);
    rounds.add(
        clock.scheduleAtFixedRate(
            () -> {
              int number = round.getAndIncrement();
              round(phone, number, begun + TimeUnit.MILLISECONDS.toNanos(LOOK_EVERY_MS) * number);
            },
            first,
            LOOK_EVERY_MS,
            TimeUnit.MILLISECONDS));
  }

  private void startMeasuring() {
    writes.clear();
    late.clear();
    looks.clear();
    boards.values().forEach(OpenBoard::forget);
    measuring = true;
  }

  private static List<LanePhone> enter(
      StartedProgram program, List<String> names, Map<String, String> keys) throws Exception {
    HttpClient http = HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();
    List<LanePhone> phones = new ArrayList<>();
    for (String name : names) {
      for (int lane = 1; lane <= LANES; lane++) {
        LanePhone phone = new LanePhone(http, program.address(), name, lane);
        phone.enter(keys.get(name));
        phones.add(phone);
      }
    }
    return phones;
  }

  private void openBoards(StartedProgram program, List<String> names) throws Exception {
    HttpClient coach =
        HttpClient.newBuilder()
            .version(HttpClient.Version.HTTP_1_1)
            .cookieHandler(new CookieManager())
            .build();
    URI door = URI.create(program.address() + "/sign-in");
    Matcher token =
        TOKEN.matcher(
            coach
                .send(
                    HttpRequest.newBuilder(door).GET().build(),
                    HttpResponse.BodyHandlers.ofString())
                .body());
    if (!token.find()) {
      throw new IllegalStateException("No way to sign in.");
    }
    String key = program.signInAddress().replaceAll(".*#key=", "");
    coach.send(
        HttpRequest.newBuilder(door)
            .header("Content-Type", "application/x-www-form-urlencoded")
            .POST(
                HttpRequest.BodyPublishers.ofString(
                    "key="
                        + key
                        + "&_csrf="
                        + URLEncoder.encode(token.group(1), StandardCharsets.UTF_8)))
            .build(),
        HttpResponse.BodyHandlers.ofString());
    for (String name : names) {
      OpenBoard board = new OpenBoard(coach, program.address(), name, hands);
      boards.put(name, board);
      board.open();
    }
  }

  /** Every second look follows on a rally. */
  private void round(LanePhone phone, int number, long due) {
    try {
      if (number % 2 == 0) {
        long tapped = System.nanoTime();
        phone.rally();
        long acknowledged = System.nanoTime();
        boards.get(phone.session()).expect(tapped, phone);
        if (measuring) {
          writes.add((acknowledged - tapped) / NANOS_A_MS);
          late.add((acknowledged - Math.min(due, tapped)) / NANOS_A_MS);
        }
      }
      long asked = System.nanoTime();
      phone.look();
      if (measuring) {
        looks.add((System.nanoTime() - asked) / NANOS_A_MS);
      }
    } catch (IOException | RuntimeException failed) {
      System.out.println(failed);
      failures.incrementAndGet();
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    }
  }

  /** In the end every board shows the running game of every lane as its phone knows it. */
  private void compare(LanePhone phone) {
    String page = boards.get(phone.session()).page();
    if (!page.contains(phone.score()) && !phone.score().equals("0–0")) {
      System.out.println(phone.session() + " " + phone.game() + " lacks " + phone.score());
      failures.incrementAndGet();
    }
  }

  /** How many rallies a second are stored when phones do not wait between them. */
  private Crowd crowd(List<LanePhone> phones, long pid) throws Exception {
    AtomicInteger stored = new AtomicInteger();
    ProcessorTime before = ProcessorTime.of(pid);
    long end = System.nanoTime() + LIMIT_SECONDS * 1_000_000_000L;
    List<Future<?>> working = new ArrayList<>();
    for (int each = 0; each < CROWD; each++) {
      int share = phones.size() / CROWD;
      List<LanePhone> own = phones.subList(each * share, (each + 1) * share);
      working.add(
          hands.submit(
              () -> {
                for (int turn = 0; System.nanoTime() < end; turn++) {
                  own.get(turn % share).rally();
                  stored.incrementAndGet();
                }
                return true;
              }));
    }
    for (var each : working) {
      each.get();
    }
    double used = ProcessorTime.of(pid).since(before).total();
    return new Crowd(stored.get() / (double) LIMIT_SECONDS, used / stored.get());
  }

  /** How busy the machine is with everything. */
  static String load() throws IOException {
    return Files.readString(Path.of("/proc/loadavg")).split(" ", 2)[0];
  }
}
