package rallywright.acceptance;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ExecutorService;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A live board without a screen: hears the stream of changes and fetches itself anew as the page's
 * script does, and times how long a rally takes until it is on it.
 */
final class OpenBoard {

  private static final Pattern LANE =
      Pattern.compile(
          "board-score\">(?:(\\d+)–(\\d+))?</span><span class=\"small\">Game (\\d+) of");
  private static final int DRAWINGS_KEPT = 16;

  private final HttpClient http;
  private final String board;
  private final String changes;
  private final ExecutorService hands;
  private final List<Written> pending = new ArrayList<>();
  private final Deque<Drawing> latest = new ArrayDeque<>();
  private final Queue<Double> delays = new ConcurrentLinkedQueue<>();
  private boolean drawing;
  private boolean again;
  private volatile int draws;
  private volatile String last = "";

  private record Written(long tapped, int lane, LanePhone.Standing standing) {}

  private record Drawing(long drawn, List<LanePhone.Standing> lanes) {

    boolean shows(Written rally) {
      return rally.lane <= lanes.size() && lanes.get(rally.lane - 1).reaches(rally.standing);
    }
  }

  /** The board of a session; the client is signed in as the coach. */
  OpenBoard(HttpClient http, String address, String session, ExecutorService hands) {
    this.http = http;
    this.board = address + "/sessions/" + session + "/board";
    this.changes = address + "/sessions/" + session + "/changes";
    this.hands = hands;
  }

  /** Hears the stream until the client or the server ends. */
  void open() {
    hands.execute(
        () -> {
          HttpRequest request = HttpRequest.newBuilder(URI.create(changes)).GET().build();
          try (Stream<String> lines =
              http.send(request, HttpResponse.BodyHandlers.ofLines()).body()) {
            lines.filter(line -> line.startsWith("event:changed")).forEach(line -> draw());
          } catch (IOException | java.io.UncheckedIOException ended) {
            // The end of the run.
          } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
          }
        });
  }

  /** A rally of this session was tapped and is on the disk; it may have been drawn before that. */
  synchronized void expect(long tapped, LanePhone phone) {
    Written rally = new Written(tapped, phone.lane(), phone.standing());
    latest.stream()
        .filter(drawing -> drawing.drawn >= tapped && drawing.shows(rally))
        .findFirst()
        .ifPresentOrElse(drawing -> count(rally, drawing), () -> pending.add(rally));
  }

  private void count(Written rally, Drawing drawing) {
    delays.add((drawing.drawn - rally.tapped) / 1e6);
  }

  private synchronized void draw() {
    if (drawing) {
      again = true;
      return;
    }
    drawing = true;
    hands.execute(this::fetch);
  }

  private void fetch() {
    try {
      HttpRequest request = HttpRequest.newBuilder(URI.create(board)).GET().build();
      HttpResponse<String> answer = http.send(request, HttpResponse.BodyHandlers.ofString());
      if (answer.statusCode() == 200 && answer.body().contains("board-state")) {
        last = answer.body();
        shown(new Drawing(System.nanoTime(), lanes(last)));
      }
    } catch (IOException ended) {
      // The end of the run.
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    }
    synchronized (this) {
      drawing = false;
      if (again) {
        again = false;
        draw();
      }
    }
  }

  /** Rallies that it shows were waited for until now. */
  private synchronized void shown(Drawing drawing) {
    draws++;
    latest.add(drawing);
    if (latest.size() > DRAWINGS_KEPT) {
      latest.remove();
    }
    for (Written rally : List.copyOf(pending)) {
      if (drawing.shows(rally)) {
        count(rally, drawing);
        pending.remove(rally);
      }
    }
  }

  /** Which game each lane plays and how many rallies it shows of it. */
  private static List<LanePhone.Standing> lanes(String page) {
    List<LanePhone.Standing> lanes = new ArrayList<>();
    Matcher lane = LANE.matcher(page);
    while (lane.find()) {
      int points =
          lane.group(1) == null
              ? 0
              : Integer.parseInt(lane.group(1)) + Integer.parseInt(lane.group(2));
      lanes.add(new LanePhone.Standing(Integer.parseInt(lane.group(3)), points));
    }
    return lanes;
  }

  /** The delays so far in milliseconds, from the tap to the drawn board. */
  Queue<Double> delays() {
    return delays;
  }

  /** Counts anew from now on. */
  synchronized void forget() {
    delays.clear();
    draws = 0;
  }

  /** How often it was drawn. */
  int draws() {
    return draws;
  }

  /** How many rallies are not on it yet. */
  synchronized int missing() {
    return pending.size();
  }

  /** The page as fetched last. */
  String page() {
    return last;
  }
}
