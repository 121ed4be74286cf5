package rallywright.engine.plan;

import java.util.List;
import rallywright.engine.drill.Drill;

/** Looks on while a plan is searched for, and may end the search. */
@FunctionalInterface
public interface SearchWatch {

  /** Looks away: the search goes to its end. */
  SearchWatch NOBODY = progress -> Verdict.GO_ON;

  /** Whether the search goes on. */
  enum Verdict {
    /** It goes on. */
    GO_ON,
    /** It ends; the best plan found so far is the answer. */
    STOP
  }

  /**
   * How far the search is.
   *
   * @param done the share of the steps done, 0 to 1
   * @param benefit what the best plan so far brings
   * @param bound what no plan can pass
   * @param best what the best plan so far is made of, in the order of a session
   */
  record Progress(double done, double benefit, double bound, List<Chosen> best) {

    /** Copies the list. */
    public Progress {
      best = List.copyOf(best);
    }

    /**
     * The progress in words.
     *
     * @return for example "40 in 100 done; at most 2 in 100 better is possible."
     */
    public String words() {
      return "%d in 100 done; at most %d in 100 better is possible."
          .formatted(Math.round(100 * done), PlanCheck.better(benefit, bound));
    }
  }

  /**
   * A drill of the best plan so far.
   *
   * @param drill the drill
   * @param line along which line it is played
   * @param rounds how many rounds of it, 1 or more
   */
  record Chosen(Drill drill, Line line, int rounds) {}

  /**
   * Hears of the progress, now and then.
   *
   * @param progress how far the search is
   * @return whether to go on
   */
  Verdict hear(Progress progress);
}
