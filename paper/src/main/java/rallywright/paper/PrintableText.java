package rallywright.paper;

/** Text as it can stand in a printed page: without characters that a page cannot hold. */
final class PrintableText {

  private PrintableText() {}

  /**
   * The text without control characters and halves of characters, which markup must not contain.
   *
   * @param text any text
   * @return the text with each run of blanks as one blank
   */
  static String of(String text) {
    StringBuilder kept = new StringBuilder();
    text.codePoints()
        .map(code -> Character.isWhitespace(code) || Character.isISOControl(code) ? ' ' : code)
        .filter(PrintableText::canStandInMarkup)
        .forEach(kept::appendCodePoint);
    return kept.toString().strip().replaceAll(" +", " ");
  }

  private static boolean canStandInMarkup(int code) {
    boolean surrogate = code >= Character.MIN_SURROGATE && code <= Character.MAX_SURROGATE;
    return !surrogate && code != 0xFFFE && code != 0xFFFF;
  }
}
