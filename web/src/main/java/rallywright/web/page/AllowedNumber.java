package rallywright.web.page;

/**
 * Which numbers a field takes and how its mistakes are named.
 *
 * @param what the quantity with an article, for example "The number of courts"
 * @param least the smallest value allowed
 * @param most the largest value allowed
 * @param maybe what to try, a whole sentence, for example "Maybe 4."
 */
public record AllowedNumber(String what, double least, double most, String maybe) {

  /** Whether a value is allowed; not-a-number is not. */
  boolean allows(double value) {
    return value >= least && value <= most;
  }

  /** The sentence for a text that is no number or one that is not allowed. */
  String refuses(String seen) {
    return "%s (%s) must be a number from %s to %s. %s"
        .formatted(what, seen, plain(least), plain(most), maybe);
  }

  /** The sentence for a text that is not a whole number or one that is not allowed. */
  String refusesWhole(String seen) {
    return "%s (%s) must be a whole number from %s to %s. %s"
        .formatted(what, seen, plain(least), plain(most), maybe);
  }

  private static String plain(double bound) {
    String words = bound == Math.rint(bound) ? String.valueOf((long) bound) : String.valueOf(bound);
    return words.replace('-', '−');
  }
}
