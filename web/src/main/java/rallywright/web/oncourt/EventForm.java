package rallywright.web.oncourt;

import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The form in which phones and this program talk. A page says which it speaks; one that is not
 * understood is told so, and keeps its events until it is.
 */
final class EventForm {

  /**
   * The form of this program. 2: events carry the phone's count and what it knew. 3: notes in
   * words, and blocks that end sooner.
   */
  static final int CURRENT = 3;

  /** The header in which a page names its form; older pages name none. */
  static final String HEADER = "Rallywright-Form";

  private EventForm() {}

  /**
   * Why a page is not understood, or empty.
   *
   * @param named what the page named
   */
  static Optional<String> refusalOf(@Nullable String named) {
    if (named == null || named.isBlank()) {
      return Optional.empty();
    }
    if (!named.matches("[0-9]{1,6}")) {
      return Optional.of("The form of the page must be a whole number. Maybe load the page again.");
    }
    int form = Integer.parseInt(named);
    return form <= CURRENT
        ? Optional.empty()
        : Optional.of(
            ("The page on the phone is newer (form %d) than the program on the laptop (form %d)."
                    + " Scores stay on the phone. Maybe start the newer program again.")
                .formatted(form, CURRENT));
  }
}
