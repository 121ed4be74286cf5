package rallywright.web.page;

import org.springframework.http.HttpStatus;
import org.springframework.web.bind.annotation.ResponseStatus;

/** What the address names is not in the club; the sentence is shown on the page. */
@ResponseStatus(HttpStatus.NOT_FOUND)
public final class NotHere extends RuntimeException {

  /**
   * Something is not here.
   *
   * @param sentence what was looked for and what to try
   */
  public NotHere(String sentence) {
    super(sentence);
  }
}
