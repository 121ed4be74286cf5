package rallywright.engine.plan;

import java.util.function.BiFunction;

/**
 * One random session, planned by the search and by the oracle.
 *
 * @param drills how many drills there were to choose from
 * @param seed the seed of the session
 * @param found the score that the search reached
 * @param seconds how long the search took
 * @param oracle what the oracle says
 * @param relaxed the engine's own bound on the score
 */
record OracleCase(
    int drills,
    long seed,
    double found,
    double seconds,
    CpSatOracle.Outcome oracle,
    double relaxed) {

  static OracleCase of(int drills, long seed, double secondsAllowed) {
    return of(drills, seed, (model, rules) -> CpSatOracle.solve(model, rules, secondsAllowed));
  }

  /** The search anew, beside what the oracle said in an earlier run. */
  static OracleCase beside(int drills, long seed, CpSatOracle.Outcome earlier) {
    return of(drills, seed, (model, rules) -> earlier);
  }

  private static OracleCase of(
      int drills, long seed, BiFunction<SearchModel, SearchRules, CpSatOracle.Outcome> oracle) {
    PlanProblem problem = RandomProblems.of(drills, seed);
    SearchModel model = model(problem);
    SearchRules rules = new SearchRules(model);
    long before = System.nanoTime();
    double found = score(model, rules, problem.wish().seed());
    double seconds = (System.nanoTime() - before) / 1e9;
    return new OracleCase(
        drills, seed, found, seconds, oracle.apply(model, rules), Relaxation.bound(model, rules));
  }

  static SearchModel model(PlanProblem problem) {
    return new SearchModel(new PlanContext(problem), 60 * SessionPlanner.fixedMinutes(problem));
  }

  static double score(SearchModel model, SearchRules rules, long seed) {
    int[] stints = new PlanSearch(model, rules, seed).best(SearchWatch.NOBODY);
    return rules.score(Walk.through(model, stints));
  }

  /** By how much the oracle's best is better, as a share of it; below 0 where it is worse. */
  double gap() {
    return (oracle.score() - found) / Math.abs(oracle.score());
  }
}
