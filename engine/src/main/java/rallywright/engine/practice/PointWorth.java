package rallywright.engine.practice;

import java.util.EnumMap;
import java.util.Map;
import rallywright.engine.drill.Skill;
import rallywright.engine.point.FirstStages;
import rallywright.engine.point.PointStages;
import rallywright.engine.point.SkillProfile;
import rallywright.engine.point.SkillWorths;

/**
 * The worth of skills in games won, through the stages of a point; see {@link SkillWorths}.
 *
 * @param stages what is contested in a point
 * @param play which game is meant
 */
public record PointWorth(PointStages stages, SkillWorths.Play play) implements SkillWorth {

  /** Doubles, before any ending was noted. */
  public static final PointWorth DOUBLES =
      new PointWorth(FirstStages.DOUBLES, SkillWorths.Play.DOUBLES);

  @Override
  public Map<Skill, Double> of(PlayerStanding player) {
    SkillWorths worths = worths(player);
    Map<Skill, Double> all = new EnumMap<>(Skill.class);
    for (Skill skill : Skill.values()) {
      all.put(skill, worths.perLogit(skill));
    }
    return all;
  }

  /**
   * The worths in full.
   *
   * @param player whose game it is
   * @return games won per logit, and what follows
   */
  public SkillWorths worths(PlayerStanding player) {
    return SkillWorths.of(stages, profile(player), play);
  }

  /**
   * A player's skills as now estimated.
   *
   * @param player the player
   * @return the means of the estimates
   */
  public static SkillProfile profile(PlayerStanding player) {
    Map<Skill, Double> logits = new EnumMap<>(Skill.class);
    for (Skill skill : Skill.values()) {
      logits.put(skill, player.in(skill).mean());
    }
    return new SkillProfile(logits);
  }
}
