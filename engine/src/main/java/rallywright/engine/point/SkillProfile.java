package rallywright.engine.point;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import rallywright.engine.drill.Skill;
import rallywright.engine.drill.SkillWeights;

/**
 * How good a player is at each skill.
 *
 * @param logits every skill in logits of a rally chance; 0 is a player of level 3.5
 */
public record SkillProfile(Map<Skill, Double> logits) {

  /** Farther than this from 0 no skill may stand, in logits. */
  public static final double LARGEST_LOGIT = 20;

  /** Copies the map; asks for every skill; the check is written so that NaN fails it. */
  public SkillProfile {
    Map<Skill, Double> copy = new EnumMap<>(Skill.class);
    for (Skill skill : Skill.values()) {
      Double value = logits.get(skill);
      if (value == null || !(Math.abs(value) <= LARGEST_LOGIT)) {
        throw new IllegalArgumentException(
            "The %s (%s) must be a number from -20 to 20 in logits. Maybe 0, which is level 3.5."
                .formatted(skill.words(), value));
      }
      copy.put(skill, value);
    }
    logits = Collections.unmodifiableMap(copy);
  }

  /**
   * A player who is equally good at everything.
   *
   * @param logit every skill, in logits
   * @return the profile
   */
  public static SkillProfile flat(double logit) {
    Map<Skill, Double> logits = new EnumMap<>(Skill.class);
    for (Skill skill : Skill.values()) {
      logits.put(skill, logit);
    }
    return new SkillProfile(logits);
  }

  /**
   * One skill.
   *
   * @param skill the skill
   * @return in logits
   */
  public double of(Skill skill) {
    return logits.getOrDefault(skill, 0.0);
  }

  /**
   * This player with one skill changed.
   *
   * @param skill the skill
   * @param logit its new value
   * @return the changed profile
   */
  public SkillProfile with(Skill skill, double logit) {
    Map<Skill, Double> changed = new EnumMap<>(logits);
    changed.put(skill, logit);
    return new SkillProfile(changed);
  }

  /**
   * The skills that count, weighted.
   *
   * @param weights how much each counts
   * @return in logits
   */
  public double weighted(SkillWeights weights) {
    double sum = 0;
    for (Map.Entry<Skill, Double> share : weights.shares().entrySet()) {
      sum += share.getValue() * of(share.getKey());
    }
    return sum;
  }

  /**
   * The mean of all skills.
   *
   * @return in logits
   */
  public double mean() {
    return logits.values().stream().mapToDouble(Double::doubleValue).average().orElse(0);
  }
}
