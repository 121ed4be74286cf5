package rallywright.engine.skill;

/** Something that was scored in a week and that says something about players. */
public sealed interface Evidence permits Game, YardstickResult {
  /**
   * The week in which it was scored.
   *
   * @return from 0
   */
  int week();
}
