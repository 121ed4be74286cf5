package rallywright.engine.quantity;

/**
 * Where a number comes from.
 *
 * @param words the source in words, shown beside the number
 */
public record Source(String words) {

  /** A number chosen by this project. */
  public static final Source ASSUMPTION = new Source("assumption of this project");

  /** What is usually done, without a source. */
  public static final Source COMMON_PRACTICE = new Source("common practice, no source");

  /** Refuses an empty source. */
  public Source {
    if (words.isBlank()) {
      throw new IllegalArgumentException(
          "A source must not be empty. Maybe: " + ASSUMPTION.words + ".");
    }
  }
}
