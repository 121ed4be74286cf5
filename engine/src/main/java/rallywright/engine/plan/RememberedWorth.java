package rallywright.engine.plan;

import java.util.IdentityHashMap;
import java.util.Map;
import rallywright.engine.drill.Skill;
import rallywright.engine.practice.PlayerStanding;
import rallywright.engine.practice.SkillWorth;

/** What skills are worth, worked out once for every player. */
final class RememberedWorth implements SkillWorth {

  private final SkillWorth worth;
  private final IdentityHashMap<PlayerStanding, Map<Skill, Double>> known = new IdentityHashMap<>();

  RememberedWorth(SkillWorth worth) {
    this.worth = worth;
  }

  boolean isOf(SkillWorth other) {
    return worth == other;
  }

  @Override
  public Map<Skill, Double> of(PlayerStanding player) {
    return known.computeIfAbsent(player, worth::of);
  }
}
