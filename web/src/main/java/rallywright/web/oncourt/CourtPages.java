package rallywright.web.oncourt;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.time.Duration;
import java.util.Map;
import java.util.Optional;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import rallywright.engine.session.SessionId;
import rallywright.web.signin.Attempts;

/** The phone page, and the page behind the code that opens it. */
@Controller
final class CourtPages {

  private final CourtAccess access;
  private final Attempts attempts;
  private final CourtApp app;

  CourtPages(CourtAccess access, Attempts attempts, CourtApp app) {
    this.access = access;
    this.attempts = attempts;
    this.app = app;
  }

  /** What the key page posts. */
  record Offered(String key) {}

  @GetMapping("/court")
  String key() {
    return "oncourt/key";
  }

  /** The page as such: it holds nothing of the club and reads everything through its key. */
  @GetMapping("/court/{session}")
  String phone(@PathVariable String session, Model model) {
    if (session.isBlank() || session.length() > SessionId.LONGEST) {
      throw CourtAccess.notHere(session);
    }
    model.addAttribute("build", app.build());
    model.addAttribute("scripts", app.scripts());
    return "oncourt/phone";
  }

  @PostMapping(
      path = "/court/open",
      consumes = MediaType.APPLICATION_JSON_VALUE,
      produces = MediaType.APPLICATION_JSON_VALUE)
  ResponseEntity<Map<String, String>> open(
      @RequestBody Offered offered, HttpServletRequest request, HttpServletResponse response) {
    Duration wait = attempts.ask(request.getRemoteAddr());
    if (!wait.isZero()) {
      long seconds = wait.toSeconds() + 1;
      return ResponseEntity.status(HttpStatus.TOO_MANY_REQUESTS)
          .header(HttpHeaders.RETRY_AFTER, String.valueOf(seconds))
          .body(
              problem(
                  "There were too many attempts. Wait %d seconds, then try again."
                      .formatted(seconds)));
    }
    Optional<SessionId> session = access.enter(offered.key(), request, response);
    if (session.isEmpty()) {
      return ResponseEntity.status(HttpStatus.FORBIDDEN)
          .body(
              problem(
                  "This key is not known, has run out or was taken back. Ask the coach for the code"
                      + " of this session."));
    }
    attempts.succeeded(request.getRemoteAddr());
    return ResponseEntity.ok(Map.of("session", session.get().value()));
  }

  private static Map<String, String> problem(String sentence) {
    return Map.of("problem", sentence);
  }
}
