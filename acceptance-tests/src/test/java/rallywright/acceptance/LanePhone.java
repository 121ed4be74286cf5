package rallywright.acceptance;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.Random;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * One of many phones in a load: every few seconds it looks what others did, every second time it
 * sends a rally before, as the page of somebody who scores rally by rally does.
 */
final class LanePhone {

  private static final JsonMapper JSON = JsonMapper.builder().build();
  private static final Duration PATIENCE = Duration.ofSeconds(30);

  /** The points that end a game; no game has fewer rallies. */
  static final int GAME_TO = 5;

  private final HttpClient http;
  private final String address;
  private final String session;
  private final int lane;
  private final Random random;
  private String cookie = "";
  private String planMark = "";
  private int home;
  private int made;
  private int turn = 1;
  private int a;
  private int b;

  /** A phone of a lane, let in with a key. */
  LanePhone(HttpClient http, String address, String session, int lane) {
    this.http = http;
    this.address = address;
    this.session = session;
    this.lane = lane;
    this.random = new Random(31L * session.hashCode() + lane);
  }

  /** The session's id. */
  String session() {
    return session;
  }

  /** Enters with a key and fetches the plan. */
  void enter(String key) throws IOException, InterruptedException {
    HttpResponse<String> answer = post("/court/open", "{\"key\":\"" + key + "\"}");
    if (answer.statusCode() != 200) {
      throw new IllegalStateException("Not let in: " + answer.body());
    }
    cookie =
        answer.headers().allValues("Set-Cookie").stream()
            .filter(each -> each.startsWith("rallywright="))
            .map(each -> each.substring(0, each.indexOf(';')))
            .reduce((first, last) -> last)
            .orElseThrow();
    look();
  }

  /** Sends one rally; it is on the server's disk when this returns. */
  void rally() throws IOException, InterruptedException {
    boolean toA = random.nextBoolean();
    a += toA ? 1 : 0;
    b += toA ? 0 : 1;
    made++;
    String id = "01890000-%04x-7000-8%03x-%012x".formatted(session.hashCode() & 0xffff, lane, made);
    HttpResponse<String> answer =
        post(
            "/court/" + session + "/events",
            """
            [{"v":1,"type":"rally","id":"%s","session":"%s","at":%d,"by":"lane %d","n":%d,\
            "seen":%d,"game":"%s","winner":"%s","bonus":"NONE"}]"""
                .formatted(
                    id,
                    session,
                    System.currentTimeMillis(),
                    lane,
                    made,
                    home,
                    LaneClub.game(turn, lane),
                    toA ? "A" : "B"));
    if (answer.statusCode() != 200 || !answer.body().contains("\"stored\"")) {
      throw new IllegalStateException("Not stored: " + answer.statusCode() + answer.body());
    }
    if (Math.max(a, b) == GAME_TO) {
      turn++;
      a = 0;
      b = 0;
    }
  }

  /** The number of its lane, from 1. */
  int lane() {
    return lane;
  }

  /**
   * How far a lane is.
   *
   * @param turn its present game, from 1
   * @param points points of both sides in it, one for each rally
   */
  record Standing(int turn, int points) {

    boolean reaches(Standing other) {
      return turn > other.turn || (turn == other.turn && points >= other.points);
    }
  }

  /** How far it is itself. */
  Standing standing() {
    return new Standing(turn, a + b);
  }

  /** The game that it scores now. */
  String game() {
    return LaneClub.game(turn, lane);
  }

  /** The score of that game as the board writes it. */
  String score() {
    return a + "–" + b;
  }

  /** Asks what others did. */
  void look() throws IOException, InterruptedException {
    HttpResponse<String> answer =
        http.send(
            request("/court/" + session + "/state?since=" + home + "&plan=" + planMark)
                .GET()
                .build(),
            HttpResponse.BodyHandlers.ofString());
    JsonNode state = JSON.readTree(answer.body());
    home = state.path("from").intValue() + state.path("events").size();
    planMark = state.path("planMark").stringValue("");
  }

  private HttpResponse<String> post(String path, String body)
      throws IOException, InterruptedException {
    return http.send(
        request(path)
            .header("Content-Type", "application/json")
            .POST(HttpRequest.BodyPublishers.ofString(body))
            .build(),
        HttpResponse.BodyHandlers.ofString());
  }

  private HttpRequest.Builder request(String path) {
    HttpRequest.Builder builder = HttpRequest.newBuilder(URI.create(address + path));
    if (!cookie.isEmpty()) {
      builder.header("Cookie", cookie);
    }
    return builder.timeout(PATIENCE);
  }
}
