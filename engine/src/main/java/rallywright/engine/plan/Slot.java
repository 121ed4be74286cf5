package rallywright.engine.plan;

import rallywright.engine.drill.DrillKey;
import rallywright.engine.drill.SkillGroup;

/** A place in a session that the coach keeps for something; the planner fills the rest. */
public sealed interface Slot {

  /** The most rounds that can be kept for one drill. */
  int MOST_ROUNDS = 8;

  /**
   * One drill that must be in the plan.
   *
   * @param drill the drill
   * @param line straight or cross-court
   * @param rounds how many rounds of games at least, 1 to 8
   */
  record Pinned(DrillKey drill, Line line, int rounds) implements Slot {

    /** Checks the number of rounds. */
    public Pinned {
      if (rounds < 1 || rounds > MOST_ROUNDS) {
        throw new IllegalArgumentException(
            "The rounds kept for %s (%d) must be from 1 to 8. Maybe 2.".formatted(drill, rounds));
      }
    }
  }

  /**
   * Any drill that trains a group of skills; which one, the planner chooses on the day.
   *
   * @param group the group
   */
  record AnyOf(SkillGroup group) implements Slot {}
}
