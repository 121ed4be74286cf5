package rallywright.engine.drill;

/**
 * How a rally starts.
 *
 * @param by who puts the ball in play
 * @param how what the first ball is like, one sentence
 */
public record Feed(By by, String how) {

  /** Who puts the ball in play. */
  public enum By {
    /** Always the first role. */
    FIRST_ROLE("the first role"),
    /** Always the second role. */
    SECOND_ROLE("the second role"),
    /** Whoever won the rally before. */
    RALLY_WINNER("the winner of the rally before"),
    /** Both in turn. */
    IN_TURN("both in turn"),
    /** A serve by the rules. */
    SERVER("the server");

    private final String words;

    By(String words) {
      this.words = words;
    }

    /**
     * Who, in words.
     *
     * @return for example "both in turn"
     */
    public String words() {
      return words;
    }
  }

  /** Checks the sentence. */
  public Feed {
    how = Wording.checked("feed", how, Wording.LINE);
  }
}
