package rallywright.engine.practice;

import java.util.Map;
import rallywright.engine.drill.Skill;

/**
 * What each skill is worth to a player: how much winning hangs on it.
 *
 * <p>The usual instance is {@link PointWorth}, which follows points through their stages.
 */
@FunctionalInterface
public interface SkillWorth {

  /**
   * The worth of one logit of each skill.
   *
   * @param player whose game it is
   * @return one for each skill, 0 or more; only ratios matter
   */
  Map<Skill, Double> of(PlayerStanding player);
}
