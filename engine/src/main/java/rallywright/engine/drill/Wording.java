package rallywright.engine.drill;

import java.util.List;

/** What is asked of a text that a coach reads on a page, a phone or paper. */
final class Wording {

  /** The longest name, so that it fits a column of the court sheet: 40 characters. */
  static final int NAME = 40;

  /** The longest line, so that it fits one line of a phone held sideways: 160 characters. */
  static final int LINE = 160;

  /** The longest paragraph: 600 characters. */
  static final int PARAGRAPH = 600;

  private Wording() {}

  static String checked(String what, String text, int longest) {
    if (text.isBlank()) {
      throw new IllegalArgumentException(
          "The %s must not be empty. Maybe it was left out by mistake.".formatted(what));
    }
    if (text.length() > longest) {
      throw new IllegalArgumentException(
          "The %s (%d characters) must not be longer than %d. Maybe a part belongs in the cues."
              .formatted(what, text.length(), longest));
    }
    if (text.chars().anyMatch(Character::isISOControl) || !text.equals(text.strip())) {
      throw new IllegalArgumentException(
          "The %s must be one line without spaces at its ends. Maybe a line break slipped in."
              .formatted(what));
    }
    return text;
  }

  static List<String> checked(String what, List<String> lines) {
    return lines.stream().map(line -> checked(what, line, LINE)).toList();
  }
}
