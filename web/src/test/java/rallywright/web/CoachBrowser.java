package rallywright.web;

import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.locks.LockSupport;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A coach's browser without a screen: keeps the cookie, sends the token against forged posts. */
final class CoachBrowser {

  private static final Pattern TOKEN = Pattern.compile("name=\"_csrf\" value=\"([^\"]+)\"");

  private final HttpClient client =
      HttpClient.newBuilder().cookieHandler(new CookieManager()).build();
  private final String address;

  CoachBrowser(String address) {
    this.address = address;
  }

  /** Signs in with the key of the start. */
  static CoachBrowser signedIn(RunningServer server) {
    CoachBrowser browser = new CoachBrowser(server.address());
    String key = server.signInAddress().replaceAll(".*#key=", "");
    browser.post("/sign-in", "/sign-in", "key=" + key);
    return browser;
  }

  HttpResponse<String> get(String path) {
    return send(HttpRequest.newBuilder(URI.create(address + path)).GET());
  }

  /** Posts a form with the token that stands on another page. */
  HttpResponse<String> post(String tokenPage, String path, String fields) {
    return postBare(path, fields + "&_csrf=" + encoded(token(tokenPage)));
  }

  /** The token against forged posts that stands on a page. */
  String token(String page) {
    Matcher token = TOKEN.matcher(get(page).body());
    if (!token.find()) {
      throw new IllegalStateException("No token on " + page);
    }
    return token.group(1);
  }

  /**
   * Posts a form as it is; where a plan is searched for, takes the first good one and answers where
   * that leads.
   */
  HttpResponse<String> postBare(String path, String fields) {
    HttpResponse<String> answer = postAtOnce(path, fields);
    String next = answer.headers().firstValue("Location").orElse("");
    if (!next.contains("/planning/") || path.startsWith("/planning/")) {
      return answer;
    }
    String search = next.substring(next.indexOf("/planning/"));
    postAtOnce(search + "/enough", fields);
    return untilPlanned(search);
  }

  /** Looks at a search for a plan until it has ended; answers where it leads then. */
  HttpResponse<String> untilPlanned(String search) {
    HttpResponse<String> progress = get(search);
    while (progress.statusCode() == 200) {
      LockSupport.parkNanos(50_000_000);
      progress = get(search);
    }
    return progress;
  }

  /** Posts a form as it is and answers at once. */
  HttpResponse<String> postAtOnce(String path, String fields) {
    return send(
        HttpRequest.newBuilder(URI.create(address + path))
            .header("Content-Type", "application/x-www-form-urlencoded")
            .POST(HttpRequest.BodyPublishers.ofString(fields)));
  }

  /** Downloads a file. */
  HttpResponse<byte[]> getBytes(String path) {
    return send(
        HttpRequest.newBuilder(URI.create(address + path)).GET(),
        HttpResponse.BodyHandlers.ofByteArray());
  }

  HttpResponse<String> send(HttpRequest.Builder request) {
    return send(request, HttpResponse.BodyHandlers.ofString());
  }

  private <T> HttpResponse<T> send(
      HttpRequest.Builder request, HttpResponse.BodyHandler<T> handler) {
    try {
      return client.send(request.build(), handler);
    } catch (IOException failed) {
      throw new IllegalStateException(failed);
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(stopped);
    }
  }

  static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }
}
