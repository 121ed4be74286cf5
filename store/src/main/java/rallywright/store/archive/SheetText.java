package rallywright.store.archive;

/**
 * Texts that a spreadsheet would run as a formula: they get an apostrophe in front in tables that
 * are written, and lose it in lists that are read.
 */
final class SheetText {

  private static final String FORMULA_STARTS = "=+-@\t\r";

  private SheetText() {}

  static String guarded(String text) {
    return startsFormula(text, 0) ? "'" + text : text;
  }

  static String unguarded(String text) {
    return text.startsWith("'") && startsFormula(text, 1) ? text.substring(1) : text;
  }

  private static boolean startsFormula(String text, int at) {
    return text.length() > at && FORMULA_STARTS.indexOf(text.charAt(at)) >= 0;
  }
}
