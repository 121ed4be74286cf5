package rallywright.engine.plan;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import rallywright.engine.drill.SkillGroup;

/**
 * What holds of a plan: the answer to every change by hand.
 *
 * @param clock the time of the whole session and the booked time
 * @param minutesByGroup minutes that a player plays on each skill group on average
 * @param benefit what the drills bring a player on average, in units that only compare plans
 * @param bound what no plan for the same wish can pass, if one more block to explain costs it what
 *     it costs this plan: the benefit and by how much another plan could be better, prices counted
 * @param brokenRules what the plan does not keep to, one sentence each
 * @param notes what the coach wants to know beside that: who comes late, courts that stay empty
 */
public record PlanCheck(
    Clock clock,
    Map<SkillGroup, Double> minutesByGroup,
    double benefit,
    double bound,
    List<BrokenRule> brokenRules,
    List<PlanNote> notes) {

  /**
   * The time of a session.
   *
   * @param minutesMean the mean in minutes
   * @param minutesSd the standard deviation in minutes
   * @param minutesP90 done by then nine times in ten
   * @param minutesReserved done by then with the wished confidence
   * @param minutesBooked the booked time
   */
  public record Clock(
      double minutesMean,
      double minutesSd,
      double minutesP90,
      double minutesReserved,
      double minutesBooked) {

    /**
     * Whether the session fits the booked time with the wished confidence.
     *
     * @return true if it does
     */
    public boolean fits() {
      return minutesReserved <= minutesBooked;
    }

    /**
     * The clock in words.
     *
     * @return for example "About 81 minutes; nine times in ten done within 88 of 90."
     */
    public String words() {
      return "About %d minutes; nine times in ten done within %d of %d."
          .formatted(
              Math.round(minutesMean), (long) Math.ceil(minutesP90), Math.round(minutesBooked));
    }
  }

  /**
   * A rule that a plan does not keep to.
   *
   * @param rule which rule
   * @param sentence what is wrong and what to try
   */
  public record BrokenRule(PlanRule rule, String sentence) {}

  /** Copies the collections. */
  public PlanCheck {
    EnumMap<SkillGroup, Double> copy = new EnumMap<>(SkillGroup.class);
    copy.putAll(minutesByGroup);
    minutesByGroup = Collections.unmodifiableMap(copy);
    brokenRules = List.copyOf(brokenRules);
    notes = List.copyOf(notes);
  }

  /**
   * How much better a plan could be at most, in words.
   *
   * @return for example "At most 3 in 100 better is possible."
   */
  public String gapWords() {
    long better = better(benefit, bound);
    return better == 0
        ? "No better plan is possible."
        : "At most %d in 100 better is possible.".formatted(better);
  }

  /** By how many in 100 a benefit can grow up to a bound, rounded up. */
  static long better(double benefit, double bound) {
    double gap = benefit > 0 ? Math.max(0, bound / benefit - 1) : bound > 0 ? 1 : 0;
    return (long) Math.ceil(100 * gap - 1e-9);
  }
}
