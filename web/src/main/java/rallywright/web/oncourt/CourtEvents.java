package rallywright.web.oncourt;

import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RestController;
import rallywright.engine.session.CourtEvent;
import rallywright.engine.session.EventId;
import rallywright.engine.session.SessionId;
import rallywright.store.StoreProblem;
import tools.jackson.core.JacksonException;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Takes in what phones saw. Each event is answered for: stored (it is on the disk), known (it was
 * there before) or refused with a sentence. Sending the same again does no harm.
 */
@RestController
final class CourtEvents {

  private static final int MOST_BYTES = 256 * 1024;
  private static final int MOST_EVENTS = 500;

  private static final JsonMapper JSON =
      JsonMapper.builder()
          .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .build();

  private final SessionDesk desk;
  private final CourtAccess access;

  CourtEvents(SessionDesk desk, CourtAccess access) {
    this.desk = desk;
    this.access = access;
  }

  /** A message that cannot be taken as a whole. */
  private static final class Unreadable extends Exception {

    private static final long serialVersionUID = 1;
    private final HttpStatus status;

    Unreadable(HttpStatus status, String sentence) {
      super(sentence);
      this.status = status;
    }
  }

  @PostMapping(
      path = "/court/{session}/events",
      consumes = MediaType.APPLICATION_JSON_VALUE,
      produces = MediaType.APPLICATION_JSON_VALUE)
  ResponseEntity<Map<String, Object>> take(@PathVariable String session, HttpServletRequest request)
      throws IOException {
    SessionId id = access.allowed(session, request);
    OpenSession open = desk.find(id).orElseThrow(() -> CourtAccess.notHere(session));
    try {
      EventGate gate = new EventGate(open);
      list(body(request)).forEach(gate::offer);
      List<CourtEvent> standing = gate.standing();
      Set<EventId> differing = standing.isEmpty() ? Set.of() : desk.keep(id, standing);
      return ResponseEntity.ok(Map.of("answers", written(gate.answers(differing))));
    } catch (Unreadable whole) {
      return problem(whole.status, String.valueOf(whole.getMessage()));
    } catch (StoreProblem full) {
      return problem(HttpStatus.SERVICE_UNAVAILABLE, String.valueOf(full.getMessage()));
    }
  }

  private static ResponseEntity<Map<String, Object>> problem(HttpStatus status, String sentence) {
    return ResponseEntity.status(status).body(Map.of("problem", sentence));
  }

  private static byte[] body(HttpServletRequest request) throws IOException, Unreadable {
    byte[] body = request.getInputStream().readNBytes(MOST_BYTES + 1);
    if (body.length > MOST_BYTES) {
      throw new Unreadable(
          HttpStatus.CONTENT_TOO_LARGE,
          "The message is longer than %d bytes. Maybe send fewer events at once."
              .formatted(MOST_BYTES));
    }
    return body;
  }

  private static List<JsonNode> list(byte[] body) throws Unreadable {
    JsonNode tree;
    try {
      tree = JSON.readTree(body);
    } catch (JacksonException notJson) {
      throw new Unreadable(
          HttpStatus.BAD_REQUEST,
          "The message is not JSON; it must be a list of events. Maybe it was cut off: send it"
              + " again.");
    }
    if (!tree.isArray()) {
      throw new Unreadable(
          HttpStatus.BAD_REQUEST,
          "The message must be a list of events. Maybe put the event in square brackets.");
    }
    if (tree.size() > MOST_EVENTS) {
      throw new Unreadable(
          HttpStatus.CONTENT_TOO_LARGE,
          "The message holds %d events; at most %d are taken at once. Maybe send them in parts."
              .formatted(tree.size(), MOST_EVENTS));
    }
    return new ArrayList<>(tree.values());
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
