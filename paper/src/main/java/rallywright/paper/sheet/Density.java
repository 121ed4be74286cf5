package rallywright.paper.sheet;

/** How closely a sheet is set. The smallest type is 7.5 points in all of them. */
public enum Density {
  /** The most room for a pencil. */
  ROOMY,
  /** A little closer. */
  CLOSE,
  /** Closer, the drawings smaller. */
  TIGHT,
  /** For a full session: smaller drawings, a warm-up on a line or two. */
  FULL,
  /** The same with the least white that keeps parts apart. */
  FULLEST;

  /**
   * The name of its style.
   *
   * @return for example "roomy"
   */
  public String style() {
    return name().toLowerCase(java.util.Locale.ROOT);
  }
}
