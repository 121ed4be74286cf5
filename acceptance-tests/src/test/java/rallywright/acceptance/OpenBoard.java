package rallywright.acceptance;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ExecutorService;
import java.util.stream.Stream;

/**
 * A live board without a screen: hears the stream of changes and fetches itself anew as the page's
 * script does, and times how long a rally takes until it is on it.
 */
final class OpenBoard {

  private final HttpClient http;
  private final String board;
  private final String changes;
  private final ExecutorService hands;
  private final Deque<Written> pending = new ArrayDeque<>();
  private final Queue<Double> delays = new ConcurrentLinkedQueue<>();
  private boolean drawing;
  private boolean again;
  private volatile int draws;
  private volatile String last = "";

  private record Written(long tapped, long acknowledged) {}

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

  /** A rally of this session was tapped and is on the disk. */
  synchronized void expect(long tapped, long acknowledged) {
    pending.add(new Written(tapped, acknowledged));
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
    long started = System.nanoTime();
    try {
      HttpRequest request = HttpRequest.newBuilder(URI.create(board)).GET().build();
      HttpResponse<String> answer = http.send(request, HttpResponse.BodyHandlers.ofString());
      if (answer.statusCode() == 200 && answer.body().contains("board-state")) {
        last = answer.body();
        shown(started, System.nanoTime());
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

  /** What was on the disk before the page was asked for is on it. */
  private synchronized void shown(long asked, long drawn) {
    draws++;
    while (!pending.isEmpty() && pending.peek().acknowledged() <= asked) {
      delays.add((drawn - pending.poll().tapped()) / 1e6);
    }
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
