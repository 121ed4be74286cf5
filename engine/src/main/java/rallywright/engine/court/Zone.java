package rallywright.engine.court;

import rallywright.engine.quantity.Length;

/** The zones of one end by their distance from the net. */
public enum Zone {
  /** The non-volley zone, its line included: 0 to 7 ft. Source: rule 2.B.3 (2025). */
  KITCHEN("kitchen", 7),
  /** Between the line and the back third: 7 to 16 ft. Common practice, no source. */
  TRANSITION("transition zone", 16),
  /** The back of the court: 16 to 22 ft. Common practice, no source. */
  BACKCOURT("back of the court", 22),
  /** Beyond the baseline, to the end of the smallest playing surface. */
  BEHIND_THE_BASELINE("behind the baseline", 30);

  private final String words;
  private final double endsFeet;

  Zone(String words, double endsFeet) {
    this.words = words;
    this.endsFeet = endsFeet;
  }

  /**
   * The zone in the trade's words.
   *
   * @return for example "kitchen"
   */
  public String words() {
    return words;
  }

  /**
   * Where the zone ends.
   *
   * @return the distance of its farther edge from the net
   */
  public Length ends() {
    return Length.feet(endsFeet);
  }

  /**
   * The zone at a distance from the net.
   *
   * @param fromNet 0 or more
   * @return the zone; an edge belongs to the zone nearer to the net
   */
  public static Zone at(Length fromNet) {
    for (Zone zone : values()) {
      if (fromNet.compareTo(zone.ends()) <= 0) {
        return zone;
      }
    }
    return BEHIND_THE_BASELINE;
  }
}
