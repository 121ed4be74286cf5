package rallywright.engine.score;

/**
 * Where players stand for serve and receive: named readings.
 *
 * <p>A half-court game of two has no rule book; both ways of standing in it are said to be common
 * practice, and the format names the one that is meant.
 */
public sealed interface Places {

  /** Four players; see {@link Pairs}. */
  Places PAIRS = new Pairs();

  /** Two players on the whole court; see {@link ByScore}. */
  Places SINGLES =
      new ByScore(
          "singles",
          "serving court by the server's own score: rule of singles, number and edition from"
              + " memory");

  /** Two players on half a court who change lanes by the score; see {@link ByScore}. */
  Places HALF_COURT_BY_SCORE = new ByScore("half court, by score", "common practice, no source");

  /**
   * The name for people.
   *
   * @return a few words in lower case
   */
  String label();

  /**
   * Where the reading comes from.
   *
   * @return a rule with its edition, or "common practice, no source"
   */
  String source();

  /**
   * Two on half a court, each staying in one lane for serve and receive.
   *
   * @param a the court in which A stays
   * @param b the court in which B stays: the other one for a straight lane, the same one for a
   *     diagonal lane
   * @return the reading
   */
  static Places fixedLane(ServiceCourt a, ServiceCourt b) {
    return new FixedLane(BySide.of(a, b));
  }

  /**
   * Doubles. The server's partners change courts after each point they score on serve; receivers
   * never change.
   *
   * <p>With side-out scoring this keeps the 1999 rule 5.B.7: a side's score is even exactly while
   * its {@link Partner#RIGHT_AT_EVEN} stands on the right. With rally scoring a point won by the
   * receivers moves nobody, and the serve that follows comes from the right court on an even score
   * and from the left on an odd one, by whoever stands there (from memory; the rule text of the
   * option was not read).
   */
  record Pairs() implements Places {
    @Override
    public String label() {
      return "doubles";
    }

    @Override
    public String source() {
      return "rules 5.B.4 to 5.B.7 (1999); for rally scoring from memory";
    }
  }

  /**
   * Two players: the server stands right on an even own score and left on an odd one, the receiver
   * stands diagonally across.
   *
   * @param label the name for people
   * @param source where it comes from
   */
  record ByScore(String label, String source) implements Places {}

  /**
   * Two players who serve and receive in the lane in which they play.
   *
   * @param courts the court in which each side stays
   */
  record FixedLane(BySide<ServiceCourt> courts) implements Places {
    @Override
    public String label() {
      return "half court, fixed lane";
    }

    @Override
    public String source() {
      return "common practice, no source";
    }
  }
}
