package rallywright.web.oncourt;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Component;
import rallywright.engine.session.CourtEvent;
import rallywright.engine.session.EventId;
import tools.jackson.core.JacksonException;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Reads a list of events and takes each through the gate, whether it was posted or saved. */
@Component
final class EventIntake {

  private static final JsonMapper JSON =
      JsonMapper.builder()
          .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .build();

  private final SessionDesk desk;

  EventIntake(SessionDesk desk) {
    this.desk = desk;
  }

  /**
   * Where events came from and how much is taken at once.
   *
   * @param what what it is called in a sentence
   * @param bytes the most bytes
   * @param events the most events
   * @param again what to try where it is not JSON
   */
  record Source(String what, int bytes, int events, String again) {

    /** What a phone posts. */
    static final Source MESSAGE =
        new Source("message", 256 * 1024, 500, "Maybe it was cut off: send it again.");

    /** What a phone saved as a file: everything of a session that it could not send. */
    static final Source FILE =
        new Source(
            "file", 1024 * 1024, 5000, "Maybe it is another file: save it on the phone again.");
  }

  /**
   * Takes a list of events.
   *
   * @param open the session that they belong to
   * @param sent the list as JSON
   * @param source where it came from
   * @return what became of each event, in order
   * @throws UnreadableEvents if it is no list of events, or too long; nothing is kept then
   */
  List<EventGate.Answer> take(OpenSession open, byte[] sent, Source source)
      throws UnreadableEvents {
    EventGate gate = new EventGate(open);
    list(sent, source).forEach(gate::offer);
    List<CourtEvent> standing = gate.standing();
    Set<EventId> differing = standing.isEmpty() ? Set.of() : desk.keep(open, standing);
    return gate.answers(differing);
  }

  private static List<JsonNode> list(byte[] sent, Source source) throws UnreadableEvents {
    if (sent.length > source.bytes()) {
      throw new UnreadableEvents(
          HttpStatus.CONTENT_TOO_LARGE,
          "The %s is longer than %d bytes. Maybe send fewer events at once."
              .formatted(source.what(), source.bytes()));
    }
    JsonNode tree;
    try {
      tree = JSON.readTree(sent);
    } catch (JacksonException notJson) {
      throw new UnreadableEvents(
          HttpStatus.BAD_REQUEST,
          "The %s is not JSON; it must be a list of events. %s"
              .formatted(source.what(), source.again()));
    }
    if (!tree.isArray()) {
      throw new UnreadableEvents(
          HttpStatus.BAD_REQUEST,
          "The %s must be a list of events. Maybe put the event in square brackets."
              .formatted(source.what()));
    }
    if (tree.size() > source.events()) {
      throw new UnreadableEvents(
          HttpStatus.CONTENT_TOO_LARGE,
          "The %s holds %d events; at most %d are taken at once. Maybe send them in parts."
              .formatted(source.what(), tree.size(), source.events()));
    }
    return new ArrayList<>(tree.values());
  }
}
