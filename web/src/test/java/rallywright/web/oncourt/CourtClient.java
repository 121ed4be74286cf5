package rallywright.web.oncourt;

import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A visitor over real HTTP, with a cookie jar of its own. */
final class CourtClient {

  private static final JsonMapper JSON = JsonMapper.builder().build();
  private static final Pattern TOKEN = Pattern.compile("name=\"_csrf\" value=\"([^\"]+)\"");

  private final String address;
  private final HttpClient http =
      HttpClient.newBuilder().cookieHandler(new CookieManager()).build();

  CourtClient(String address) {
    this.address = address;
  }

  HttpResponse<String> get(String path) {
    return send(HttpRequest.newBuilder(URI.create(address + path)).GET());
  }

  HttpResponse<String> postJson(String path, String body) {
    return send(
        HttpRequest.newBuilder(URI.create(address + path))
            .header("Content-Type", "application/json")
            .POST(HttpRequest.BodyPublishers.ofString(body)));
  }

  /** Posts JSON and names the form in which the page talks. */
  HttpResponse<String> postJson(String path, String body, String form) {
    return send(
        HttpRequest.newBuilder(URI.create(address + path))
            .header("Content-Type", "application/json")
            .header("Rallywright-Form", form)
            .POST(HttpRequest.BodyPublishers.ofString(body)));
  }

  /** Posts a form with the token of the page it stands on. */
  HttpResponse<String> postForm(String page, String path, Map<String, String> fields) {
    Matcher token = TOKEN.matcher(get(page).body());
    if (!token.find()) {
      throw new IllegalStateException("The page " + page + " has no form.");
    }
    String body =
        "_csrf="
            + encoded(token.group(1))
            + fields.entrySet().stream()
                .map(field -> "&" + encoded(field.getKey()) + "=" + encoded(field.getValue()))
                .collect(Collectors.joining());
    return send(
        HttpRequest.newBuilder(URI.create(address + path))
            .header("Content-Type", "application/x-www-form-urlencoded")
            .POST(HttpRequest.BodyPublishers.ofString(body)));
  }

  /** Where a session stands, with the games as the server sees them. */
  JsonNode state(String session) {
    return read(get("/court/" + session + "/state?games=yes"));
  }

  static JsonNode read(HttpResponse<String> answer) {
    return JSON.readTree(answer.body());
  }

  /** The outcomes of posted events, for example "stored". */
  JsonNode answers(String session, String events) {
    return JSON.readTree(postJson("/court/" + session + "/events", events).body()).get("answers");
  }

  private HttpResponse<String> send(HttpRequest.Builder request) {
    try {
      return http.send(request.build(), HttpResponse.BodyHandlers.ofString());
    } catch (IOException problem) {
      throw new IllegalStateException(problem);
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(interrupted);
    }
  }

  private static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }
}
