package rallywright.engine.court;

/** The two ends of a court as the reader of a drawing sees them. */
public enum End {
  /** The reader's own end, at the bottom of every drawing. */
  NEAR("near end"),
  /** The end beyond the net. */
  FAR("far end");

  private final String words;

  End(String words) {
    this.words = words;
  }

  /**
   * The end in words.
   *
   * @return for example "near end"
   */
  public String words() {
    return words;
  }

  /**
   * The end beyond the net.
   *
   * @return far for near, near for far
   */
  public End other() {
    return this == NEAR ? FAR : NEAR;
  }
}
