package rallywright.engine.skill;

/** What follows from the chances of a rally: a win chance, an expected number of points. */
@FunctionalInterface
public interface RallyOutcome {
  /**
   * The number that follows.
   *
   * @param serveA chance that A's side wins a rally that A serves
   * @param serveB chance that B's side wins a rally that B serves
   * @return the number
   */
  double given(double serveA, double serveB);
}
