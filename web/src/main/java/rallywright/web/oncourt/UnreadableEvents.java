package rallywright.web.oncourt;

import org.springframework.http.HttpStatus;

/** A message or file of events that cannot be taken as a whole. */
final class UnreadableEvents extends Exception {

  private static final long serialVersionUID = 1;
  private final HttpStatus status;

  UnreadableEvents(HttpStatus status, String sentence) {
    super(sentence);
    this.status = status;
  }

  HttpStatus status() {
    return status;
  }

  /** What was seen, what is allowed and what to try. */
  String sentence() {
    return String.valueOf(getMessage());
  }
}
