package rallywright.engine.drill;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * How much each skill counts in a role: shares that sum to 1.
 *
 * @param shares the share of each skill that counts, above 0 and at most 1; skills left out count 0
 */
public record SkillWeights(Map<Skill, Double> shares) {

  /** How far the sum may lie from 1, for decimals that a person types. */
  public static final double SUM_TOLERANCE = 1e-6;

  /** Checks the shares and brings their sum to exactly 1. */
  public SkillWeights {
    // Always added in the order of the skills, or the last digit would hang on the start of the
    // JVM.
    EnumMap<Skill, Double> inOrder = new EnumMap<>(Skill.class);
    inOrder.putAll(shares);
    EnumMap<Skill, Double> kept = new EnumMap<>(Skill.class);
    double sum = 0;
    for (Map.Entry<Skill, Double> share : inOrder.entrySet()) {
      double value = share.getValue();
      if (!(value >= 0 && value <= 1)) {
        throw new IllegalArgumentException(
            "The weight of %s (%s) must lie from 0 to 1.".formatted(share.getKey().words(), value)
                + " Maybe it was meant in percent: 40 % is 0.4.");
      }
      sum += value;
      if (value > 0) {
        kept.put(share.getKey(), value);
      }
    }
    if (!(Math.abs(sum - 1) <= SUM_TOLERANCE)) {
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT,
              "The weights sum to %.4g but must sum to 1. Maybe a skill is missing.",
              sum));
    }
    double total = sum;
    kept.replaceAll((skill, value) -> value / total);
    shares = Collections.unmodifiableMap(kept);
  }

  /**
   * One skill alone.
   *
   * @param skill the skill that counts
   * @return its weight is 1
   */
  public static SkillWeights only(Skill skill) {
    return new SkillWeights(Map.of(skill, 1.0));
  }

  /**
   * The weight of one skill.
   *
   * @param skill the skill asked for
   * @return its share, 0 if it does not count
   */
  public double of(Skill skill) {
    return shares.getOrDefault(skill, 0.0);
  }

  /**
   * The skills that count.
   *
   * @return those with a weight above 0, in the order of {@link Skill}
   */
  public Set<Skill> skills() {
    return shares.keySet();
  }
}
