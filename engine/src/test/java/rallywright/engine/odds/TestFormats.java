package rallywright.engine.odds;

import rallywright.engine.quantity.Probability;
import rallywright.engine.score.EndChange;
import rallywright.engine.score.GameFormat;
import rallywright.engine.score.Goal;
import rallywright.engine.score.Partner;
import rallywright.engine.score.Places;
import rallywright.engine.score.Score;
import rallywright.engine.score.Scoring;
import rallywright.engine.score.Serve;
import rallywright.engine.score.ServerNumber;
import rallywright.engine.score.Side;
import rallywright.engine.score.WinBy;

/** Formats and positions in the short words of the tables. */
final class TestFormats {

  private TestFormats() {}

  static GameFormat format(Scoring scoring, int target, int winBy) {
    Places places = scoring.hasTwoServers() ? Places.PAIRS : Places.SINGLES;
    Goal goal = Goal.firstTo(target).withWinBy(winBy == 1 ? WinBy.ONE : WinBy.TWO);
    return new GameFormat(scoring, places, goal, Score.LOVE_ALL, Side.A, EndChange.NONE);
  }

  static GameFormat doubles(int target, int winBy) {
    return format(Scoring.SIDE_OUT_TWO_SERVERS, target, winBy);
  }

  static Score score(String text) {
    String[] parts = text.split("-", -1);
    return Score.of(Integer.parseInt(parts[0]), Integer.parseInt(parts[1]));
  }

  /** A server as the tables name it, "A1" to "B2". */
  static Serve serve(String text) {
    return new Serve(
        text.charAt(0) == 'A' ? Side.A : Side.B,
        text.charAt(1) == '1' ? ServerNumber.FIRST : ServerNumber.SECOND,
        Partner.RIGHT_AT_EVEN);
  }

  static RallyChances serves(double a, double b) {
    return RallyChances.ofServe(Probability.of(a), Probability.of(b));
  }

  static RallyChances rally(double a) {
    return RallyChances.ofRally(Probability.of(a));
  }
}
