package rallywright.web.oncourt;

import jakarta.servlet.http.HttpServletRequest;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RestController;
import rallywright.engine.club.PlayerId;
import rallywright.engine.session.SessionId;
import rallywright.web.signin.Visitor;

/** A name typed on a phone beside the court. The phone makes the id, so a repeat is harmless. */
@RestController
final class CourtArrivals {

  private final CourtAccess access;
  private final Arrivals arrivals;

  CourtArrivals(CourtAccess access, Arrivals arrivals) {
    this.access = access;
    this.arrivals = arrivals;
  }

  /** What a phone posts. */
  record Came(@Nullable String id, @Nullable String name) {}

  @PostMapping(
      path = "/court/{session}/arrivals",
      consumes = MediaType.APPLICATION_JSON_VALUE,
      produces = MediaType.APPLICATION_JSON_VALUE)
  ResponseEntity<Map<String, String>> take(
      @PathVariable String session, @RequestBody Came came, HttpServletRequest request) {
    SessionId here = access.allowed(session, request);
    if (came.id() == null || !EventGate.isId(came.id())) {
      return refused("The id must be a UUID in lower case. Maybe load the page again.");
    }
    boolean coach = Visitor.of(request.getUserPrincipal()) instanceof Visitor.Coach;
    String name = came.name() == null ? "" : came.name();
    Optional<String> refusal =
        arrivals.add(
            here,
            new PlayerId(came.id()),
            name,
            coach ? Arrivals.Asker.COACH : Arrivals.Asker.PHONE);
    return refusal.map(CourtArrivals::refused).orElseGet(() -> ResponseEntity.ok(Map.of()));
  }

  private static ResponseEntity<Map<String, String>> refused(String sentence) {
    return ResponseEntity.status(HttpStatus.UNPROCESSABLE_CONTENT)
        .body(Map.of("problem", sentence));
  }
}
