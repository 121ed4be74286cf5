package rallywright.engine.drill;

import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import rallywright.engine.score.Ending.Stroke;

/**
 * One side of a drill: the place and the task.
 *
 * @param role the role
 * @param task what the role tries to do, one sentence
 * @param stands where each player of the side starts: one player, or two partners
 * @param inBounds where a ball that comes to this side may land
 * @param strokes the strokes that this role may play; after the feed nothing else counts
 * @param advance whether the role may leave its place toward the net
 * @param weights how much each skill counts in this role
 * @param demands what the role asks of the body
 */
public record DrillSide(
    Role role,
    String task,
    List<Stand> stands,
    InBounds inBounds,
    Set<Stroke> strokes,
    Advance advance,
    SkillWeights weights,
    Set<Demand> demands) {

  /** Checks the task, the number of players and that some stroke is allowed. */
  public DrillSide {
    task = Wording.checked("task of the " + role.words() + " role", task, Wording.LINE);
    stands = List.copyOf(stands);
    if (stands.isEmpty() || stands.size() > 2) {
      throw new IllegalArgumentException(
          "A side has 1 or 2 players, but %d were placed. Maybe one belongs to the other side."
              .formatted(stands.size()));
    }
    if (strokes.isEmpty()) {
      throw new IllegalArgumentException(
          "The %s role must be allowed at least one stroke. Maybe: dink.".formatted(role.words()));
    }
    strokes = Collections.unmodifiableSet(EnumSet.copyOf(strokes));
    EnumSet<Demand> asked = EnumSet.noneOf(Demand.class);
    asked.addAll(demands);
    demands = Collections.unmodifiableSet(asked);
  }
}
