package rallywright.engine.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.DrillKind;

/** The warm-ups of a session, scaled to its length: general first, then paddle, then volleys. */
final class WarmUpTimes {

  /** The share of the booked time that goes to warm-ups. Assumption of this project. */
  static final double SHARE = 0.15;

  /** No warm-up is shorter than this. Assumption of this project. */
  static final double SHORTEST_MINUTES = 2;

  private static final double STEP_MINUTES = 0.5;

  private WarmUpTimes() {}

  /**
   * One warm-up.
   *
   * @param drill which one
   * @param minutes how long
   */
  record WarmUp(Drill drill, double minutes) {}

  static List<WarmUp> of(PlanProblem problem) {
    List<WarmUp> warmUps = new ArrayList<>();
    if (problem.wish().warmUps() == WarmUps.LEFT_OUT_BY_CHOICE) {
      return warmUps;
    }
    List<Drill> drills = firstOfEachKind(problem.drills());
    double usual = drills.stream().mapToDouble(WarmUpTimes::usual).sum();
    double scale = Math.min(1, SHARE * problem.wish().minutes() / usual);
    for (Drill drill : drills) {
      double minutes = Math.rint(scale * usual(drill) / STEP_MINUTES) * STEP_MINUTES;
      warmUps.add(new WarmUp(drill, Math.max(SHORTEST_MINUTES, minutes)));
    }
    return warmUps;
  }

  private static List<Drill> firstOfEachKind(List<Drill> drills) {
    List<Drill> first = new ArrayList<>();
    for (DrillKind kind : DrillKind.values()) {
      drills.stream()
          .filter(drill -> kind.isWarmUp() && drill.kind() == kind)
          .findFirst()
          .ifPresent(first::add);
    }
    first.sort(Comparator.comparing(Drill::kind));
    return first;
  }

  private static double usual(Drill drill) {
    return drill.minutes().orElse(SHORTEST_MINUTES);
  }
}
