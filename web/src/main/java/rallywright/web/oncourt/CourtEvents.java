package rallywright.web.oncourt;

import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RestController;
import rallywright.engine.session.SessionId;
import rallywright.store.StoreProblem;

/**
 * Takes in what phones saw. Each event is answered for: stored (it is on the disk), known (it was
 * there before) or refused with a sentence. Sending the same again does no harm.
 */
@RestController
final class CourtEvents {

  private final SessionDesk desk;
  private final CourtAccess access;
  private final EventIntake intake;

  CourtEvents(SessionDesk desk, CourtAccess access, EventIntake intake) {
    this.desk = desk;
    this.access = access;
    this.intake = intake;
  }

  @PostMapping(
      path = "/court/{session}/events",
      consumes = MediaType.APPLICATION_JSON_VALUE,
      produces = MediaType.APPLICATION_JSON_VALUE)
  ResponseEntity<Map<String, Object>> take(@PathVariable String session, HttpServletRequest request)
      throws IOException {
    SessionId id = access.allowed(session, request);
    OpenSession open = desk.find(id).orElseThrow(() -> CourtAccess.notHere(session));
    Optional<String> foreign = EventForm.refusalOf(request.getHeader(EventForm.HEADER));
    if (foreign.isPresent()) {
      return problem(HttpStatus.CONFLICT, foreign.get());
    }
    EventIntake.Source source = EventIntake.Source.MESSAGE;
    byte[] sent = request.getInputStream().readNBytes(source.bytes() + 1);
    try {
      return ResponseEntity.ok(Map.of("answers", written(intake.take(open, sent, source))));
    } catch (UnreadableEvents whole) {
      return problem(whole.status(), whole.sentence());
    } catch (StoreProblem full) {
      return problem(HttpStatus.SERVICE_UNAVAILABLE, String.valueOf(full.getMessage()));
    }
  }

  private static ResponseEntity<Map<String, Object>> problem(HttpStatus status, String sentence) {
    return ResponseEntity.status(status).body(Map.of("problem", sentence));
  }

  private static List<Map<String, Object>> written(List<EventGate.Answer> answers) {
    return answers.stream()
        .map(
            answer ->
                Map.<String, Object>of(
                    "id", answer.id(),
                    "outcome", answer.outcome().name().toLowerCase(Locale.ROOT),
                    "reason", answer.reason()))
        .toList();
  }
}
