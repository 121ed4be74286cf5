package rallywright.engine.plan;

import java.util.Set;
import rallywright.engine.club.Limit;
import rallywright.engine.drill.Demand;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.DrillKind;
import rallywright.engine.drill.Intensity;
import rallywright.engine.score.Side;

/** Which roles of a drill a player with limits may take. */
public enum RoleAccess {
  /** Either role. */
  BOTH,
  /** The first role alone. */
  ONLY_A,
  /** The second role alone. */
  ONLY_B,
  /** None: the drill is not for this player. */
  NEITHER;

  /**
   * The roles that limits leave open.
   *
   * @param limits what the player should not be asked to do
   * @param drill the drill
   * @return the roles
   */
  public static RoleAccess of(Set<Limit> limits, Drill drill) {
    if (limits.isEmpty() || drill.layout().isEmpty()) {
      return BOTH;
    }
    boolean a = mayTake(limits, drill, Side.A);
    boolean b = mayTake(limits, drill, Side.B);
    if (drill.kind() == DrillKind.FULL_GAME && a != b) {
      return NEITHER;
    }
    return a && b ? BOTH : a ? ONLY_A : b ? ONLY_B : NEITHER;
  }

  private static boolean mayTake(Set<Limit> limits, Drill drill, Side side) {
    Set<Demand> demands = drill.layout().orElseThrow().sides().of(side).demands();
    return limits.stream()
        .noneMatch(
            limit ->
                demands.contains(sparedBy(limit))
                    || (limit == Limit.EASY_ONLY && drill.intensity() == Intensity.HARD));
  }

  private static Demand sparedBy(Limit limit) {
    return switch (limit) {
      case NO_OVERHEADS -> Demand.OVERHEADS;
      case NO_LUNGING -> Demand.LUNGING;
      case NO_RUNNING_BACK -> Demand.RUNNING_BACK;
      case EASY_ONLY -> Demand.HARD_WORK;
    };
  }

  /**
   * Whether a side's role is open.
   *
   * @param side the side
   * @return true if the player may take it
   */
  public boolean mayTake(Side side) {
    return this == BOTH || this == (side == Side.A ? ONLY_A : ONLY_B);
  }

  /** Whether this player can meet the other one in some order of roles. */
  boolean fits(RoleAccess other) {
    return (mayTake(Side.A) && other.mayTake(Side.B)) || (mayTake(Side.B) && other.mayTake(Side.A));
  }
}
