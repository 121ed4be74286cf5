package rallywright.engine.aim;

/** The spin of a shot; 10 turns a second are a moderate spin, an assumption of this project. */
public enum HitSpin {
  /** None. */
  NONE("no spin", 0),
  /** Over the top. */
  TOPSPIN("topspin", 10),
  /** Underneath. */
  BACKSPIN("backspin", -10);

  private final String words;
  private final double turns;

  HitSpin(String words, double turns) {
    this.words = words;
    this.turns = turns;
  }

  /**
   * The spin in words.
   *
   * @return for example "topspin"
   */
  public String words() {
    return words;
  }

  /**
   * The spin as a number.
   *
   * @return radians per second, below 0 for backspin
   */
  public double radiansPerSecond() {
    return turns * 2 * Math.PI;
  }
}
