package rallywright.web.rotation;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import rallywright.engine.rotation.DayAnswer;
import rallywright.engine.rotation.DayResult;
import rallywright.engine.rotation.PlayDay;
import rallywright.web.page.AllowedNumber;
import rallywright.web.page.FormReader;

/** The scores of a round as they are typed in: {@code a0} and {@code b0} for its first match. */
final class DayScores {

  /** Two lanes on each of the most courts. */
  private static final int MOST_MATCHES = 24;

  private static final AllowedNumber POINTS =
      new AllowedNumber("The points", 0, DayResult.MOST_POINTS, "Maybe 11.");
  private static final AllowedNumber ROUND =
      new AllowedNumber("The number of the round", 1, 1000, "Maybe load the page again.");

  private DayScores() {}

  /** What was typed in; a match without points stays as it is. */
  static List<DayResult> typed(FormReader in) {
    List<DayResult> results = new ArrayList<>();
    if (in.raw("round").isEmpty()) {
      return results;
    }
    int round = in.neededWhole("round", ROUND);
    for (int place = 0; place < MOST_MATCHES; place++) {
      if (!(in.raw("a" + place) + in.raw("b" + place)).isBlank()) {
        int match = place;
        int a = in.neededWhole("a" + place, POINTS);
        int b = in.neededWhole("b" + place, POINTS);
        @Nullable DayResult result =
            in.failed() ? null : in.built("score", () -> new DayResult(round, match, a, b));
        if (result != null) {
          results.add(result);
        }
      }
    }
    return results;
  }

  /** A day with these scores, and then changed once more; nothing is kept if one is refused. */
  static DayAnswer kept(PlayDay day, List<DayResult> results, Function<PlayDay, DayAnswer> then) {
    PlayDay scored = day;
    for (DayResult result : results) {
      DayAnswer answer = scored.with(result);
      if (!(answer instanceof DayAnswer.Ready ready)) {
        return answer;
      }
      scored = ready.day();
    }
    return then.apply(scored);
  }
}
