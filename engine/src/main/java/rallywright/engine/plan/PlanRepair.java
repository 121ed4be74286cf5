package rallywright.engine.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;

/**
 * Mends a plan that breaks rules with as few changes as it finds, and shortens a plan when less
 * time is left.
 *
 * <p>For the maintainer: all plans that one change away mends a broken rule are looked at, the best
 * few are changed once more, and so on, each plan looked at once; the first plan that keeps to
 * every rule has the fewest changes among those looked at.
 */
public final class PlanRepair {

  private static final int MOST_CHANGES = 8;
  private static final int KEPT = 4;

  private final PlanReading reading;
  private final RepairMoves moves;

  /**
   * A plan with how it came about.
   *
   * @param plan the plan
   * @param check what holds of it
   * @param changes what was changed, one sentence each; empty where nothing was wrong or nothing
   *     helped
   */
  public record Repaired(SessionPlan plan, PlanCheck check, List<String> changes) {

    /** Copies the list. */
    public Repaired {
      changes = List.copyOf(changes);
    }

    private Repaired with(SessionPlan next, PlanCheck of, String change) {
      List<String> more = new ArrayList<>(changes);
      more.add(change);
      return new Repaired(next, of, more);
    }

    private int broken() {
      return check.brokenRules().size();
    }

    private double over() {
      PlanCheck.Clock clock = check.clock();
      return Math.max(0, clock.minutesReserved() - clock.minutesBooked());
    }
  }

  private static final Comparator<Repaired> BETTER =
      Comparator.comparingInt(Repaired::broken)
          .thenComparing(Repaired::over)
          .thenComparing(each -> -each.check().benefit());

  private PlanRepair(PlanProblem problem) {
    PlanContext context = new PlanContext(problem);
    SearchModel model = new SearchModel(context, 60 * SessionPlanner.fixedMinutes(problem));
    reading = new PlanReading(context, model, new SearchRules(model));
    moves = new RepairMoves(context, model);
  }

  /**
   * For plans of a problem.
   *
   * @param problem everything the plan was made from
   * @return the one who mends
   */
  public static PlanRepair of(PlanProblem problem) {
    return new PlanRepair(problem);
  }

  /**
   * Mends a plan.
   *
   * @param plan the plan
   * @return the plan with the fewest changes found that keeps to every rule; where none is found,
   *     the one that breaks fewest
   */
  public Repaired repair(SessionPlan plan) {
    Repaired best = new Repaired(plan, reading.check(plan), List.of());
    List<Repaired> now = List.of(best);
    Set<SessionPlan> seen = new HashSet<>(Set.of(plan));
    for (int change = 0; change < MOST_CHANGES && best.broken() > 0; change++) {
      List<Repaired> next = new ArrayList<>();
      for (Repaired each : now) {
        for (RepairMoves.Move move : moves.of(each.plan(), each.check())) {
          if (seen.add(move.plan())) {
            next.add(each.with(move.plan(), reading.check(move.plan()), move.words()));
          }
        }
      }
      next.sort(BETTER);
      now = next.subList(0, Math.min(KEPT, next.size()));
      best = now.isEmpty() || BETTER.compare(best, now.get(0)) <= 0 ? best : now.get(0);
    }
    return best;
  }

  /**
   * Shortens a plan, when the session starts late or rain cuts it short: what brings least for its
   * time goes first. Warm-ups stay, and so does what must be kept.
   *
   * @param plan the plan
   * @param minutes the minutes that are left, warm-ups included
   * @param begun how many blocks from the start are begun and stay
   * @return the shorter plan with what was left out; it is too long still where nothing more can go
   */
  public Repaired shorten(SessionPlan plan, int minutes, int begun) {
    SessionPlan shorter = new SessionPlan(minutes, plan.courts(), plan.present(), plan.blocks());
    Repaired now = new Repaired(shorter, reading.check(shorter), List.of());
    while (now.over() > 0) {
      Repaired best = null;
      double least = Double.POSITIVE_INFINITY;
      for (RepairMoves.Move move : moves.less(now.plan(), begun)) {
        PlanCheck check = reading.check(move.plan());
        double saved = now.check().clock().minutesMean() - check.clock().minutesMean();
        double loss = (now.check().benefit() - check.benefit()) / Math.max(1e-6, saved);
        if (saved > 0 && loss < least) {
          least = loss;
          best = now.with(move.plan(), check, move.words());
        }
      }
      if (best == null) {
        return now;
      }
      now = best;
    }
    return now;
  }

  /**
   * The block that brings least for its time.
   *
   * @param plan the plan
   * @return its place, from 0; empty where there are only warm-ups and rests
   */
  public OptionalInt leastValuable(SessionPlan plan) {
    double before = reading.check(plan).benefit();
    int least = -1;
    double smallest = Double.POSITIVE_INFINITY;
    for (int place = 0; place < plan.blocks().size(); place++) {
      PlannedBlock block = plan.blocks().get(place);
      if (!block.games().isEmpty()) {
        List<PlannedBlock> others = new ArrayList<>(plan.blocks());
        others.remove(place);
        double loss = before - reading.check(plan.withBlocks(others)).benefit();
        double rate = loss / block.time().mean();
        least = rate < smallest ? place : least;
        smallest = Math.min(smallest, rate);
      }
    }
    return least < 0 ? OptionalInt.empty() : OptionalInt.of(least);
  }
}
