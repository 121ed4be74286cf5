package rallywright.web.progress;

import java.util.LinkedHashMap;
import java.util.Map;

/** How large a rise a coach asks about, in rallies of 100 against somebody who was even before. */
public enum RiseSize {
  /** Five rallies in 100 more. */
  SMALL(5),
  /** Ten rallies in 100 more. */
  MIDDLE(10),
  /** Twenty rallies in 100 more. */
  LARGE(20);

  private final int rallies;

  RiseSize(int rallies) {
    this.rallies = rallies;
  }

  /** So many more rallies in 100 than half. */
  int rallies() {
    return rallies;
  }

  /** The same in logits. */
  double logits() {
    return Math.log((50.0 + rallies) / (50.0 - rallies));
  }

  /** What a page offers: what is sent, and what is read. */
  public static Map<String, String> choices() {
    Map<String, String> choices = new LinkedHashMap<>();
    for (RiseSize size : values()) {
      choices.put(size.name(), size.rallies + " rallies in 100");
    }
    return choices;
  }
}
