package rallywright.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a stranger, a foreign page or a guessing program gets, over real HTTP. */
class SafetyIT {

  @TempDir static Path data;
  private static RunningServer server;

  @BeforeAll
  static void start() {
    server =
        WebServer.start(new ServerSettings(data, ServerSettings.Mode.CLUB, Reach.thisComputer(0)));
  }

  @AfterAll
  static void stop() {
    server.close();
  }

  @Test
  void page_forStrangers_leadsToSignIn() {
    HttpResponse<String> answer = new CoachBrowser(server.address()).get("/players");
    assertThat(answer.statusCode()).isEqualTo(302);
    assertThat(answer.headers().firstValue("Location"))
        .hasValueSatisfying(to -> assertThat(to).endsWith("/sign-in"));
  }

  @Test
  void form_withoutToken_isRefusedInOurWords() {
    HttpResponse<String> answer =
        new CoachBrowser(server.address()).postBare("/players/new", "name=Cy");
    assertThat(answer.statusCode()).isEqualTo(403);
    assertThat(answer.body()).contains("nothing was stored").doesNotContain("Exception");
  }

  @Test
  void host_ofAnotherName_isTurnedAway() throws IOException {
    assertThat(rawStatus("GET /sign-in HTTP/1.1", "Host: evil.example")).contains(" 421");
    assertThat(rawStatus("GET /sign-in HTTP/1.1", "Host: 127.0.0.1.evil.example")).contains(" 421");
    assertThat(rawStatus("GET /sign-in HTTP/1.1", "Host: localhost")).contains(" 200");
    assertThat(rawStatus("GET /sign-in HTTP/1.1")).contains(" 400");
  }

  @Test
  void origin_ofAnotherPage_isRefused() throws IOException {
    assertThat(
            rawStatus("POST /sign-in HTTP/1.1", "Host: localhost", "Origin: http://evil.example"))
        .contains(" 403");
    assertThat(rawStatus("POST /sign-in HTTP/1.1", "Host: localhost", "Sec-Fetch-Site: cross-site"))
        .contains(" 403");
  }

  @Test
  void everyAnswer_carriesStrictHeaders() {
    var headers = new CoachBrowser(server.address()).get("/sign-in").headers();
    assertThat(headers.firstValue("Content-Security-Policy").orElse(""))
        .contains("default-src 'none'")
        .contains("script-src 'self'")
        .contains("frame-ancestors 'none'")
        .doesNotContain("unsafe");
    assertThat(headers.firstValue("Referrer-Policy")).hasValue("no-referrer");
    assertThat(headers.firstValue("X-Content-Type-Options")).hasValue("nosniff");
    assertThat(headers.firstValue("X-Robots-Tag")).hasValue("noindex");
    assertThat(headers.firstValue("Cache-Control").orElse("")).contains("no-store");
    assertThat(headers.firstValue("Set-Cookie").orElse(""))
        .contains("HttpOnly")
        .contains("SameSite=Strict");
  }

  @Test
  void missingPage_saysSoInOurWords(@TempDir Path other) {
    try (RunningServer fresh = serve(other)) {
      CoachBrowser coach = CoachBrowser.signedIn(fresh);
      HttpResponse<String> answer = coach.get("/players/nobody");
      assertThat(answer.statusCode()).isEqualTo(404);
      assertThat(answer.body()).contains("There is no such player").doesNotContain("at java");
    }
  }

  @Test
  void key_takenOnce_signsInWithAFreshSession(@TempDir Path other) {
    try (RunningServer fresh = serve(other)) {
      CoachBrowser coach = new CoachBrowser(fresh.address());
      String before = coach.get("/sign-in").headers().firstValue("Set-Cookie").orElse("");
      String key = fresh.signInAddress().replaceAll(".*#key=", "");
      HttpResponse<String> entered = coach.post("/sign-in", "/sign-in", "key=" + key);
      assertThat(entered.statusCode()).isEqualTo(302);
      assertThat(entered.headers().firstValue("Set-Cookie").orElse("none")).isNotEqualTo(before);
      assertThat(coach.get("/").statusCode()).isEqualTo(200);
      HttpResponse<String> again =
          new CoachBrowser(fresh.address()).post("/sign-in", "/sign-in", "key=" + key);
      assertThat(again.statusCode()).isEqualTo(403);
      assertThat(again.body()).contains("used before");
      coach.post("/", "/sign-out", "go=1");
      assertThat(coach.get("/").statusCode()).isEqualTo(302);
    }
  }

  @Test
  void guessing_afterAFewFailures_hasToWait(@TempDir Path other) {
    try (RunningServer fresh = serve(other)) {
      CoachBrowser stranger = new CoachBrowser(fresh.address());
      for (int attempt = 0; attempt < 5; attempt++) {
        assertThat(stranger.post("/sign-in", "/sign-in", "key=guess").statusCode()).isEqualTo(403);
      }
      HttpResponse<String> answer = stranger.post("/sign-in", "/sign-in", "key=guess");
      assertThat(answer.statusCode()).isEqualTo(429);
      assertThat(answer.body()).contains("too many attempts");
      assertThat(answer.headers().firstValue("Retry-After")).isPresent();
    }
  }

  @Test
  void openNetwork_withoutPassword_isRefused_withOne_takesIt(@TempDir Path other) {
    ServerSettings open =
        new ServerSettings(other, ServerSettings.Mode.CLUB, new Reach("0.0.0.0", 0, null, null));
    assertThatThrownBy(() -> WebServer.start(open))
        .isInstanceOf(StartRefused.class)
        .hasMessageContaining("password first");
    WebServer.setPassword(open, "four invented words here");
    try (RunningServer fresh = WebServer.start(open)) {
      CoachBrowser coach = new CoachBrowser(fresh.address());
      assertThat(coach.post("/sign-in", "/sign-in", "password=wrong+words").statusCode())
          .isEqualTo(403);
      assertThat(
              coach.post("/sign-in", "/sign-in", "password=four+invented+words+here").statusCode())
          .isEqualTo(302);
      assertThat(coach.get("/players").statusCode()).isEqualTo(200);
    }
  }

  @Test
  void port_takenByAnother_isNamed(@TempDir Path other) {
    ServerSettings same =
        new ServerSettings(other, ServerSettings.Mode.CLUB, Reach.thisComputer(server.port()));
    assertThatThrownBy(() -> WebServer.start(same))
        .isInstanceOf(StartRefused.class)
        .hasMessageContaining("is taken by another program");
  }

  @Test
  void libraryForUpdates_isServedUnderAStableAddress() {
    HttpResponse<String> answer =
        new CoachBrowser(server.address())
            .send(HttpRequest.newBuilder(URI.create(server.address() + "/js/library/htmx.min.js")));
    assertThat(answer.statusCode()).isEqualTo(200);
    assertThat(answer.body()).contains("htmx");
  }

  private static RunningServer serve(Path folder) {
    return WebServer.start(
        new ServerSettings(folder, ServerSettings.Mode.CLUB, Reach.thisComputer(0)));
  }

  private static String rawStatus(String... lines) throws IOException {
    try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), server.port())) {
      String request = String.join("\r\n", lines) + "\r\nConnection: close\r\n\r\n";
      socket.getOutputStream().write(request.getBytes(StandardCharsets.US_ASCII));
      return String.valueOf(
          new BufferedReader(
                  new InputStreamReader(socket.getInputStream(), StandardCharsets.US_ASCII))
              .readLine());
    }
  }
}
