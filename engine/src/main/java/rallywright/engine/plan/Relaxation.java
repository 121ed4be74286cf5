package rallywright.engine.plan;

import rallywright.engine.pace.SessionTime;
import rallywright.engine.plan.SearchModel.Option;
import rallywright.engine.practice.PracticeMinutes;

/**
 * A bound that no plan can pass: minutes may be split at will, no change-over costs time, and the
 * booked time is the only rule.
 *
 * <p>For the maintainer: for any price λ of a minute, the sum over drills of the largest (benefit -
 * λ time) plus λ times the time available bounds every plan from above (Lagrange duality, textbook
 * result); the λ with the smallest bound is found by halving. Since mean × (1 + z × cv of the day)
 * is at most the booked time, the time available is the booked time divided by that, less warm-ups.
 */
final class Relaxation {

  private Relaxation() {}

  static double bound(SearchModel model, double reserve) {
    double[] minutesPerMinute = new double[model.drills()];
    for (Option option : model.options()) {
      double share = option.minutesPerStint() / (option.stint().seconds().mean() / 60);
      minutesPerMinute[option.drill()] = Math.max(minutesPerMinute[option.drill()], share);
    }
    double booked = model.context().wish().minutes() / (1 + reserve * SessionTime.DAY_CV);
    double budget = Math.max(0, booked - model.warmUpSeconds() / 60);
    double low = 0;
    double high = 0;
    for (int drill = 0; drill < model.drills(); drill++) {
      high = Math.max(high, model.rate(drill) * minutesPerMinute[drill]);
    }
    while (high - low > 1e-12) {
      double price = (low + high) / 2;
      if (minutesBought(model, minutesPerMinute, price) > budget) {
        low = price;
      } else {
        high = price;
      }
    }
    return dual(model, minutesPerMinute, high, budget);
  }

  /** The minutes m at which rate × effective(m) - price × m / share is largest. */
  private static double best(double rate, double share, double price) {
    double worth = rate * share;
    return worth > price ? PracticeMinutes.SATURATION_MINUTES * Math.log(worth / price) : 0;
  }

  private static double minutesBought(SearchModel model, double[] shares, double price) {
    double sum = 0;
    for (int drill = 0; drill < shares.length; drill++) {
      if (shares[drill] > 0) {
        sum += best(model.rate(drill), shares[drill], price) / shares[drill];
      }
    }
    return sum;
  }

  private static double dual(SearchModel model, double[] shares, double price, double budget) {
    double sum = price * budget;
    for (int drill = 0; drill < shares.length; drill++) {
      if (shares[drill] > 0) {
        double minutes = best(model.rate(drill), shares[drill], price);
        double effective = PracticeMinutes.effective(minutes);
        sum += model.rate(drill) * effective - price * minutes / shares[drill];
      }
    }
    return sum;
  }
}
