package rallywright.engine.reading;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.DrillForm;
import rallywright.engine.drill.DrillKey;
import rallywright.engine.pace.RallyPace;
import rallywright.engine.plan.DrillPaces;
import rallywright.engine.session.GameProgress;

/**
 * The pace of each drill after the times between taps.
 *
 * <p>A tap ends a rally; the time to the next tap of the same phone is the wait and the next rally
 * together. Taps of two phones are not compared, so their clocks do not matter. A gap below {@value
 * #SHORTEST_SECONDS} s is a double tap or a correction, one above {@value #LONGEST_SECONDS} s a
 * break (assumptions of this project). Of the rest, a gap counts as far as it lies within {@value
 * #FENCES} robust standard deviations of the drill's median on the log scale; one beyond is taken
 * as lying there, so that a ball fetched from the car park does not make the drill slow (median,
 * median absolute deviation and winsorizing: Huber and Ronchetti, <em>Robust Statistics</em>,
 * second edition, chapters 1 and 5, cited from memory).
 */
public final class RecordedPaces implements DrillPaces {

  private static final double SHORTEST_SECONDS = 3;
  private static final double LONGEST_SECONDS = 120;
  private static final double FENCES = 2.5;

  /** Makes the median absolute deviation of normal values their standard deviation: 1/Φ⁻¹(3/4). */
  private static final double NORMAL_PER_MAD = 1.4826022185056018;

  /** So few gaps tell nothing of their own spread; then the drill's first idea of it is used. */
  private static final int FEW = 8;

  private final Map<DrillKey, List<Double>> seconds;

  private RecordedPaces(Map<DrillKey, List<Double>> seconds) {
    this.seconds = seconds;
  }

  static RecordedPaces of(List<PlayedGame> games) {
    Map<DrillKey, List<Double>> seconds = new HashMap<>();
    for (PlayedGame played : games) {
      seconds
          .computeIfAbsent(played.drill().key(), key -> new ArrayList<>())
          .addAll(gaps(played.game()));
    }
    return new RecordedPaces(seconds);
  }

  private static List<Double> gaps(GameProgress game) {
    List<Double> gaps = new ArrayList<>();
    for (int i = 1; i < game.rallyTimes().size(); i++) {
      double gap = (game.rallyTimes().get(i) - game.rallyTimes().get(i - 1)) / 1000.0;
      boolean onePhone = game.rallyPhones().get(i).equals(game.rallyPhones().get(i - 1));
      if (onePhone && gap >= SHORTEST_SECONDS && gap <= LONGEST_SECONDS) {
        gaps.add(gap);
      }
    }
    return gaps;
  }

  @Override
  public RallyPace of(Drill drill, DrillForm.Scored game) {
    RallyPace first = DrillPaces.FIRST_IDEAS.of(drill, game);
    List<Double> gaps = seconds.getOrDefault(drill.key(), List.of());
    return first.afterRallies(steady(gaps, first.rallyLogSd()));
  }

  /**
   * The gaps with those far out brought in.
   *
   * @param gaps in seconds
   * @param usualLogSd the spread of rallies before any was timed, on the log scale
   */
  static List<Double> steady(List<Double> gaps, double usualLogSd) {
    if (gaps.isEmpty()) {
      return gaps;
    }
    List<Double> logs = gaps.stream().map(Math::log).toList();
    double middle = median(logs);
    double deviation = median(logs.stream().map(log -> Math.abs(log - middle)).toList());
    double spread = gaps.size() < FEW ? usualLogSd : deviation * NORMAL_PER_MAD;
    double fence = FENCES * Math.max(spread, usualLogSd / 2);
    return logs.stream()
        .map(log -> Math.exp(Math.min(middle + fence, Math.max(middle - fence, log))))
        .toList();
  }

  private static double median(List<Double> values) {
    List<Double> sorted = values.stream().sorted().toList();
    int half = sorted.size() / 2;
    return sorted.size() % 2 == 1
        ? sorted.get(half)
        : (sorted.get(half - 1) + sorted.get(half)) / 2;
  }
}
