package rallywright.engine.skill;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.BiConsumer;
import java.util.function.IntPredicate;

/**
 * A weighted sum of skills, each of a player in a week, and of shared effects, in logits. The edge
 * in a rally, a difference between two weeks and a single skill are all such sums.
 */
public final class SkillSum {
  private final Map<Key, Double> skills;
  private final Map<Integer, Double> effects;
  private final Map<Integer, Double> gains;

  private SkillSum(Builder builder) {
    skills = new LinkedHashMap<>(builder.skills);
    effects = new LinkedHashMap<>(builder.effects);
    gains = new LinkedHashMap<>(builder.gains);
  }

  /**
   * One skill of one player in one week.
   *
   * @param player number of the player
   * @param skill number of the skill
   * @param week the week
   */
  public record Key(int player, int skill, int week) {}

  /**
   * A single skill.
   *
   * @param key which
   * @return the sum with weight 1 on it
   */
  public static SkillSum skill(Key key) {
    return builder().plusSkill(1, key).build();
  }

  /**
   * By how much a skill rose from one week to another.
   *
   * @param key the skill in the later week
   * @param since the earlier week
   * @return later minus earlier
   */
  public static SkillSum rise(Key key, int since) {
    return builder()
        .plusSkill(1, key)
        .plusSkill(-1, new Key(key.player(), key.skill(), since))
        .build();
  }

  /**
   * A single shared effect.
   *
   * @param effect its number
   * @return the sum with weight 1 on it
   */
  public static SkillSum effect(int effect) {
    return builder().plusEffect(1, effect).build();
  }

  /**
   * What an effective minute of a drill brings.
   *
   * @param gain number of the drill's gain
   * @return the sum with weight 1 on it
   */
  public static SkillSum gain(int gain) {
    return builder().plusGain(1, gain).build();
  }

  /**
   * An empty sum to add to.
   *
   * @return the builder
   */
  public static Builder builder() {
    return new Builder();
  }

  /**
   * The sum with every sign turned.
   *
   * @return minus this
   */
  public SkillSum negated() {
    return times(-1);
  }

  /**
   * The sum with every weight multiplied.
   *
   * @param factor by what
   * @return factor times this
   */
  public SkillSum times(double factor) {
    if (factor == 1) {
      return this;
    }
    Builder builder = builder();
    skills.forEach((key, weight) -> builder.plusSkill(factor * weight, key));
    effects.forEach((effect, weight) -> builder.plusEffect(factor * weight, effect));
    gains.forEach((gain, weight) -> builder.plusGain(factor * weight, gain));
    return builder.build();
  }

  /** The skills of some players, without the others and without what all share. */
  SkillSum onlyOf(IntPredicate players) {
    Builder builder = builder();
    skills.forEach(
        (key, weight) -> {
          if (players.test(key.player())) {
            builder.plusSkill(weight, key);
          }
        });
    return builder.build();
  }

  void forEachSkill(BiConsumer<Key, Double> action) {
    skills.forEach(action);
  }

  void forEachEffect(BiConsumer<Integer, Double> action) {
    effects.forEach(action);
  }

  void forEachGain(BiConsumer<Integer, Double> action) {
    gains.forEach(action);
  }

  /** Gathers the weights of a sum. */
  public static final class Builder {
    private final Map<Key, Double> skills = new LinkedHashMap<>();
    private final Map<Integer, Double> effects = new LinkedHashMap<>();
    private final Map<Integer, Double> gains = new LinkedHashMap<>();

    private Builder() {}

    /**
     * Adds a weighted skill.
     *
     * @param weight dimensionless
     * @param key which skill
     * @return this builder
     */
    public Builder plusSkill(double weight, Key key) {
      if (weight != 0) {
        skills.merge(key, weight, Double::sum);
      }
      return this;
    }

    /**
     * Adds a weighted shared effect.
     *
     * @param weight dimensionless
     * @param effect its number
     * @return this builder
     */
    public Builder plusEffect(double weight, int effect) {
      effects.merge(effect, weight, Double::sum);
      return this;
    }

    /**
     * Adds a weighted gain.
     *
     * @param weight effective minutes, or dimensionless
     * @param gain its number
     * @return this builder
     */
    public Builder plusGain(double weight, int gain) {
      gains.merge(gain, weight, Double::sum);
      return this;
    }

    /**
     * The sum as it stands.
     *
     * @return the sum
     */
    public SkillSum build() {
      return new SkillSum(this);
    }
  }
}
