package rallywright.engine.skill;

/** Something that was scored or practised in a week and that says something about players. */
public sealed interface Evidence permits Game, YardstickResult, Practice {
  /**
   * The week in which it happened.
   *
   * @return from 0
   */
  int week();
}
