package rallywright.acceptance;

import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.ConcurrentSkipListSet;
import java.util.concurrent.atomic.AtomicInteger;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * A phone without a screen. Like the page it keeps every event until it is answered for, sends what
 * waits again after every doubt, and comes in with its key after the server has forgotten it.
 */
final class ScoringPhone {

  private static final JsonMapper JSON = JsonMapper.builder().build();
  private static final Duration PATIENCE = Duration.ofSeconds(10);
  private static final int MOST_AT_ONCE = 100;

  private final HttpClient http =
      HttpClient.newBuilder()
          .cookieHandler(new CookieManager())
          .version(HttpClient.Version.HTTP_1_1)
          .connectTimeout(PATIENCE)
          .build();
  private final LaneSeat seat;
  private final Random random;
  private final Map<String, String> waiting = new LinkedHashMap<>();
  private final List<String> rallies = new ArrayList<>();
  private final Set<String> acknowledged = new ConcurrentSkipListSet<>();
  private final AtomicInteger made = new AtomicInteger();

  /**
   * Where a phone scores.
   *
   * @param address the address of the server, or of what stands before it
   * @param session the session's id
   * @param key a key of the session
   * @param game the game that it scores, and nobody else
   * @param number its number, from 0, the same for no other phone of the session
   */
  record LaneSeat(String address, String session, String key, String game, int number) {

    /** What the phone calls itself. */
    String name() {
      return "phone " + number;
    }
  }

  /** A phone whose taps follow from a seed. */
  ScoringPhone(LaneSeat seat, long seed) {
    this.seat = seat;
    this.random = new Random(seed);
  }

  /** One more entry: mostly a rally, now and then one is taken back. */
  void tap() {
    int number = made.incrementAndGet();
    String id = id(number);
    boolean undo = !rallies.isEmpty() && random.nextInt(5) == 0;
    String content =
        undo
            ? "\"type\":\"undone\",\"undone\":\"%s\"".formatted(rallies.remove(rallies.size() - 1))
            : "\"type\":\"rally\",\"game\":\"%s\",\"winner\":\"%s\",\"bonus\":\"NONE\""
                .formatted(seat.game(), random.nextBoolean() ? "A" : "B");
    if (!undo) {
      rallies.add(id);
    }
    String stamp =
        "\"v\":1,\"id\":\"%s\",\"session\":\"%s\",\"at\":%d,\"by\":\"%s\",\"n\":%d"
            .formatted(id, seat.session(), 1_772_557_200_000L + number, seat.name(), number);
    waiting.put(id, "{" + stamp + "," + content + "}");
  }

  private String id(int number) {
    return "01890000-%04x-7000-8%03x-%012x"
        .formatted(seat.session().hashCode() & 0xffff, seat.number(), number);
  }

  /**
   * Sends what waits.
   *
   * @return whether the server answered for all of it
   */
  boolean send() throws InterruptedException {
    try {
      if (waiting.isEmpty()) {
        return true;
      }
      List<String> some = waiting.values().stream().limit(MOST_AT_ONCE).toList();
      HttpResponse<String> answer = events("[" + String.join(",", some) + "]");
      if (answer.statusCode() == 401 || answer.statusCode() == 403) {
        post("/court/open", "{\"key\":\"" + seat.key() + "\"}");
        answer = events("[" + String.join(",", some) + "]");
      }
      return answer.statusCode() == 200 && takeIn(JSON.readTree(answer.body()));
    } catch (IOException | JacksonException doubt) {
      return false;
    }
  }

  private boolean takeIn(JsonNode answer) {
    for (JsonNode each : answer.path("answers")) {
      if (each.path("outcome").stringValue("").equals("refused")) {
        throw new IllegalStateException("A good event was refused: " + each);
      }
      String id = each.path("id").stringValue("");
      acknowledged.add(id);
      waiting.remove(id);
    }
    return waiting.isEmpty();
  }

  private HttpResponse<String> events(String body) throws IOException, InterruptedException {
    return post("/court/" + seat.session() + "/events", body);
  }

  private HttpResponse<String> post(String path, String body)
      throws IOException, InterruptedException {
    return http.send(
        HttpRequest.newBuilder(URI.create(seat.address() + path))
            .timeout(PATIENCE)
            .header("Content-Type", "application/json")
            .POST(HttpRequest.BodyPublishers.ofString(body))
            .build(),
        HttpResponse.BodyHandlers.ofString());
  }

  /** What it calls itself. */
  String name() {
    return seat.name();
  }

  /** How many entries were made. */
  int made() {
    return made.get();
  }

  /** How many are not home. */
  int waiting() {
    return waiting.size();
  }

  /** The ids that the server said it has; may be read while the phone goes on. */
  Set<String> acknowledged() {
    return acknowledged;
  }
}
