package rallywright.engine.session;

/** What can stand in a note. */
final class NoteText {

  private NoteText() {}

  /** Refuses an empty or overlong text and characters that cannot be shown or stored. */
  static void check(String text) {
    if (text.isBlank() || text.length() > CourtEvent.NoteWritten.LONGEST_TEXT) {
      throw new IllegalArgumentException(
          text.isBlank()
              ? "The note is empty. Maybe a few words were meant."
              : "The note has %d characters; at most %d are allowed. Maybe write two notes."
                  .formatted(text.length(), CourtEvent.NoteWritten.LONGEST_TEXT));
    }
    if (text.codePoints().anyMatch(NoteText::cannotBeShown)) {
      throw new IllegalArgumentException(
          "The note holds a character that cannot be shown. Maybe type it anew.");
    }
  }

  /** Control characters other than the line feed, halves of a character, and turns of direction. */
  private static boolean cannotBeShown(int character) {
    boolean turnsDirection =
        (character >= 0x202A && character <= 0x202E)
            || (character >= 0x2066 && character <= 0x2069);
    return turnsDirection
        || Character.getType(character) == Character.SURROGATE
        || (Character.isISOControl(character) && character != '\n');
  }
}
