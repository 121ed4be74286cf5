package rallywright.engine.practice;

import rallywright.engine.drill.Skill;

/**
 * What a skill is worth to a player: how much winning hangs on it.
 *
 * <p>The first instance is a table for everybody, {@link DoublesTable}; one that follows the
 * player's own points through their stages can take its place without any change here.
 */
@FunctionalInterface
public interface SkillWorth {

  /**
   * The worth of one logit of a skill.
   *
   * @param player whose game it is
   * @param skill the skill
   * @return 0 or more; only ratios matter
   */
  double of(PlayerStanding player, Skill skill);
}
