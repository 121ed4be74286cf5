package rallywright.engine.reading;

import java.util.ArrayList;
import java.util.List;

/**
 * Some rallies, one after the other, and the time from the end of the one before them to the end of
 * the last: play and the waits before it, which one tap a rally cannot part.
 *
 * @param rallies how many, 1 or more
 * @param seconds above 0
 */
record RallySpan(int rallies, double seconds) {

  /** So few spans tell nothing of their own spread; then the drill's first idea of it is used. */
  private static final int FEW = 8;

  /** Makes the median absolute deviation of normal values their standard deviation: 1/Φ⁻¹(3/4). */
  static final double NORMAL_PER_MAD = 1.4826022185056018;

  /** Beyond so many robust standard deviations a time is brought in. Assumption of this project. */
  static final double FENCES = 2.5;

  /** Seconds for each rally. */
  double perRally() {
    return seconds / rallies;
  }

  /** This span with the next one behind it. */
  RallySpan then(RallySpan next) {
    return new RallySpan(rallies + next.rallies, seconds + next.seconds);
  }

  /**
   * The spans with those far out brought in to {@value #FENCES} robust standard deviations of the
   * median, on the log scale; long spans lie closer to it by nature.
   *
   * @param spans the spans
   * @param rallyLogSd the spread of single rallies before any was timed, on the log scale
   */
  static List<RallySpan> steady(List<RallySpan> spans, double rallyLogSd) {
    if (spans.isEmpty()) {
      return spans;
    }
    double variance = rallyLogSd * rallyLogSd;
    List<Double> logs = spans.stream().map(span -> span.centred(variance)).toList();
    double middle = median(logs);
    List<Double> distances = new ArrayList<>();
    for (int i = 0; i < spans.size(); i++) {
      distances.add(Math.abs(logs.get(i) - middle) / spans.get(i).logSd(variance));
    }
    double spread = spans.size() < FEW ? 1 : median(distances) * NORMAL_PER_MAD;
    double fence = FENCES * Math.max(spread, 0.5);
    List<RallySpan> steady = new ArrayList<>();
    for (int i = 0; i < spans.size(); i++) {
      RallySpan span = spans.get(i);
      double out = logs.get(i) - middle;
      double most = fence * span.logSd(variance);
      double shift = Math.max(-most, Math.min(most, out)) - out;
      steady.add(new RallySpan(span.rallies, span.seconds * Math.exp(shift)));
    }
    return steady;
  }

  /** The log of the mean rally, brought to where a single rally's log would lie on average. */
  private double centred(double variance) {
    double meanVariance = meanVariance(variance);
    return Math.log(perRally()) - (variance - meanVariance) / 2;
  }

  private double logSd(double variance) {
    return Math.sqrt(meanVariance(variance));
  }

  /** The log variance of the mean of several log-normal rallies, by their mean and variance. */
  private double meanVariance(double variance) {
    return Math.log1p(Math.expm1(variance) / rallies);
  }

  static double median(List<Double> values) {
    List<Double> sorted = values.stream().sorted().toList();
    int half = sorted.size() / 2;
    return sorted.size() % 2 == 1
        ? sorted.get(half)
        : (sorted.get(half - 1) + sorted.get(half)) / 2;
  }
}
