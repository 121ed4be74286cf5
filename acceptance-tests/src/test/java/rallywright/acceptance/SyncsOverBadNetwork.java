package rallywright.acceptance;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Consumer;
import rallywright.engine.session.CourtEvent;

/**
 * Scores the same sessions twice, over a bad network ({@link FaultyWay}) and over a good one, and
 * compares how every game stands, what each phone's entries are, and what the phones know.
 */
final class SyncsOverBadNetwork {

  private static final int BROWSERS = 2;
  private static final int OTHERS = 4;
  private static final int MOST_ENTRIES = 150;

  private final LaneClub club;
  private final long wanted;
  private final int entriesEach;
  private final Random random;
  private final Map<FaultyWay.Fault, Long> faults = new EnumMap<>(FaultyWay.Fault.class);
  private long messages;
  private int sessions;
  private int entries;
  private int differing;

  private SyncsOverBadNetwork(Path folder, long wanted, long seed) {
    this.club = new LaneClub(folder);
    this.wanted = wanted;
    this.entriesEach = (int) Math.min(MOST_ENTRIES, wanted / (BROWSERS + OTHERS));
    this.random = new Random(seed);
  }

  /**
   * What came of it.
   *
   * @param messages how many messages with entries were sent over the bad network
   * @param faults what happened to these and to the looks
   * @param sessions how many sessions were scored
   * @param entries how many entries were made over the bad network
   * @param differing how many games, logs of phones and views of phones differ from those of the
   *     good network
   */
  record Result(
      long messages, Map<FaultyWay.Fault, Long> faults, int sessions, int entries, int differing) {}

  /**
   * Runs it.
   *
   * @param folder an empty folder
   * @param wanted at least so many messages with entries
   * @param seed decides entries and faults
   * @param each is told what came of it so far after every session
   */
  static Result run(Path folder, long wanted, long seed, Consumer<Result> each) throws Exception {
    return new SyncsOverBadNetwork(folder, wanted, seed).run(each);
  }

  private Result run(Consumer<Result> each) throws Exception {
    ExecutorService hands = Executors.newCachedThreadPool();
    try (StartedProgram program = startWithSession();
        Browsers browsers = new Browsers()) {
      List<PageSync> pages = new ArrayList<>();
      for (int page = 0; page < BROWSERS; page++) {
        pages.add(new PageSync(browsers.phone()));
      }
      while (messages < wanted) {
        String bad = "bad-%03d".formatted(sessions);
        String good = "good-%03d".formatted(sessions);
        Map<String, String> keys = club.add(List.of(bad, good), BROWSERS + OTHERS, 1);
        Phones phones = new Phones(pages, hands, random.nextLong());
        try (FaultyWay way = new FaultyWay(program.port(), random.nextLong())) {
          phones.score(way.address(), bad, keys.get(bad));
          way.heal();
          phones.look(club.events(bad));
          messages += way.messages();
          way.counts().forEach((fault, count) -> faults.merge(fault, count.get(), Long::sum));
        }
        phones.score(program.address(), good, keys.get(good));
        phones.look(club.events(good));
        compare(bad, good);
        sessions++;
        each.accept(result());
      }
    } finally {
      hands.shutdownNow();
    }
    return result();
  }

  private Result result() {
    return new Result(messages, faults, sessions, entries, differing);
  }

  private StartedProgram startWithSession() {
    club.add(List.of(), BROWSERS + OTHERS, 1);
    return StartedProgram.serve(club.folder());
  }

  private void compare(String bad, String good) {
    Map<String, String> expected = club.standings(good);
    Map<String, String> seen = club.standings(bad);
    expected.forEach((game, standing) -> differing += standing.equals(seen.get(game)) ? 0 : 1);
    Map<String, List<String>> logs = logs(good);
    Map<String, List<String>> others = logs(bad);
    logs.forEach((phone, log) -> differing += log.equals(others.get(phone)) ? 0 : 1);
    differing += Math.abs(logs.size() - others.size());
    differing += expected.size() == BROWSERS + OTHERS ? 0 : 1;
    entries += others.values().stream().mapToInt(List::size).sum();
  }

  /** What each phone made, in its own order, without what is different in every run. */
  private Map<String, List<String>> logs(String session) {
    List<CourtEvent> events = club.events(session);
    Map<String, Long> numbers = new TreeMap<>();
    events.forEach(
        event -> numbers.put(event.stamp().id().value(), event.stamp().order().number()));
    Map<String, TreeMap<Long, String>> logs = new TreeMap<>();
    for (CourtEvent event : events) {
      long number = event.stamp().order().number();
      String words =
          event instanceof CourtEvent.RallyPlayed rally
              ? rally.game() + " " + rally.rally()
              : event instanceof CourtEvent.Undone undo
                  ? "undone " + numbers.get(undo.undone().value())
                  : event.getClass().getSimpleName();
      String before =
          logs.computeIfAbsent(event.stamp().by(), phone -> new TreeMap<>()).put(number, words);
      differing += before == null ? 0 : 1;
    }
    Map<String, List<String>> all = new TreeMap<>();
    logs.forEach(
        (phone, log) ->
            all.put(
                phone,
                log.entrySet().stream().map(row -> row.getKey() + " " + row.getValue()).toList()));
    return all;
  }

  /** The phones of one session; those of the same seed make the same entries. */
  private final class Phones {

    private final List<PageSync> pages;
    private final ExecutorService hands;
    private final long seed;

    Phones(List<PageSync> pages, ExecutorService hands, long seed) {
      this.pages = pages;
      this.hands = hands;
      this.seed = seed;
    }

    void score(String address, String session, String key) throws Exception {
      Random taps = new Random(seed);
      List<Future<Boolean>> working = new ArrayList<>();
      for (int other = 0; other < OTHERS; other++) {
        String game = LaneClub.game(1, BROWSERS + other + 1);
        var seat = new ScoringPhone.LaneSeat(address, session, key, game, other);
        working.add(hands.submit(scoring(new ScoringPhone(seat, taps.nextLong()))));
      }
      for (int page = 0; page < pages.size(); page++) {
        pages.get(page).open(address, session, key);
        String game = LaneClub.game(1, page + 1);
        pages.get(page).begin(session, "page " + page, game, winners(taps));
      }
      pages.forEach(PageSync::waitUntilHome);
      for (Future<Boolean> each : working) {
        each.get();
      }
    }

    /** After the last message every page knows what the server knows, in its order. */
    void look(List<CourtEvent> events) {
      List<String> ids = events.stream().map(event -> event.stamp().id().value()).toList();
      for (PageSync page : pages) {
        PageSync.Seen seen = page.seen();
        differing += seen.home().equals(ids) ? 0 : 1;
        differing += seen.kept() + seen.refused();
      }
    }

    private Callable<Boolean> scoring(ScoringPhone phone) {
      return () -> {
        while (phone.made() < entriesEach || phone.waiting() > 0) {
          if (phone.made() < entriesEach) {
            phone.tap();
          }
          phone.send();
        }
        return true;
      };
    }

    private String winners(Random taps) {
      StringBuilder winners = new StringBuilder();
      int standing = 0;
      for (int entry = 0; entry < entriesEach; entry++) {
        boolean undo = standing > 0 && taps.nextInt(4) == 0;
        standing += undo ? -1 : 1;
        winners.append(undo ? 'U' : taps.nextBoolean() ? 'A' : 'B');
      }
      return winners.toString();
    }
  }
}
