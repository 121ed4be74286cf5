package rallywright.engine.practice;

import rallywright.engine.drill.Skill;

/**
 * How much each skill matters in doubles, one table for everybody.
 *
 * <p><b>Card.</b> Shares that sum to 1. Source: assumption of this project; no measurement stands
 * behind any of these numbers. The idea: nearly every rally has a serve, a return and a third shot;
 * most long rallies are decided by soft balls and by hands at the line; lobs and overheads are
 * rare. Limits: the same for every level and style, blind to how a player's own points end.
 */
public enum DoublesTable implements SkillWorth {
  /** The one table. */
  SHARES;

  @Override
  public double of(PlayerStanding player, Skill skill) {
    return share(skill);
  }

  private static double share(Skill skill) {
    return switch (skill) {
      case SERVE -> 0.08;
      case RETURN -> 0.10;
      case DRIVE -> 0.06;
      case DROP -> 0.14;
      case RESET -> 0.13;
      case DINK -> 0.14;
      case ATTACK -> 0.08;
      case COUNTER -> 0.11;
      case PRESSING_VOLLEY -> 0.10;
      case LOB -> 0.02;
      case OVERHEAD -> 0.04;
    };
  }
}
