package rallywright.paper.sheet;

/** How closely a sheet is set. The smallest type is 7.5 points in all of them. */
public enum Density {
  /** The most room for a pencil. */
  ROOMY,
  /** A little closer. */
  CLOSE,
  /** As close as it stays readable at arm's length. */
  TIGHT;

  /**
   * The name of its style.
   *
   * @return for example "roomy"
   */
  public String style() {
    return name().toLowerCase(java.util.Locale.ROOT);
  }
}
