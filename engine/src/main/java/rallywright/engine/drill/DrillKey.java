package rallywright.engine.drill;

import java.util.regex.Pattern;

/**
 * The short name by which a drill or yardstick is known in files and in the database.
 *
 * @param value lower-case words joined by hyphens, for example {@code drop-game}
 */
public record DrillKey(String value) {

  private static final Pattern WORDS = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");

  /** Checks the form. */
  public DrillKey {
    if (!WORDS.matcher(value).matches()) {
      throw new IllegalArgumentException(
          "The drill key \""
              + value
              + "\" must be lower-case words joined by hyphens. Maybe: drop-game.");
    }
  }

  @Override
  public String toString() {
    return value;
  }
}
