package rallywright.engine.skill;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntPredicate;

/**
 * A weighted sum of skills, each of a player in a week, and of shared effects, in logits. The edge
 * in a rally, a difference between two weeks and a single skill are all such sums.
 */
public final class SkillSum {
  private final Entries<Key> skills;
  private final Entries<Integer> effects;
  private final Entries<Integer> gains;

  private SkillSum(Builder builder) {
    skills = builder.skills.copy();
    effects = builder.effects.copy();
    gains = builder.gains.copy();
  }

  /** A key and its weight. */
  interface Visitor<K> {
    void visit(K key, double weight);
  }

  /** A few weighted keys in the order in which they came; a sum has seldom more than a dozen. */
  private static final class Entries<K> {
    private static final double[] NONE = {};

    private final List<K> keys;
    private double[] weights;

    private Entries(List<K> keys, double[] weights) {
      this.keys = keys;
      this.weights = weights;
    }

    private Entries() {
      this(new ArrayList<>(0), NONE);
    }

    private Entries<K> copy() {
      return new Entries<>(List.copyOf(keys), Arrays.copyOf(weights, keys.size()));
    }

    private void plus(K key, double weight) {
      int place = keys.indexOf(key);
      if (place >= 0) {
        weights[place] += weight;
        return;
      }
      if (keys.size() == weights.length) {
        weights = Arrays.copyOf(weights, 2 * weights.length + 2);
      }
      weights[keys.size()] = weight;
      keys.add(key);
    }

    private void forEach(Visitor<K> visitor) {
      for (int i = 0; i < keys.size(); i++) {
        visitor.visit(keys.get(i), weights[i]);
      }
    }
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

  void forEachSkill(Visitor<Key> action) {
    skills.forEach(action);
  }

  void forEachEffect(Visitor<Integer> action) {
    effects.forEach(action);
  }

  void forEachGain(Visitor<Integer> action) {
    gains.forEach(action);
  }

  /** Gathers the weights of a sum. */
  public static final class Builder {
    private final Entries<Key> skills = new Entries<>();
    private final Entries<Integer> effects = new Entries<>();
    private final Entries<Integer> gains = new Entries<>();

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
        skills.plus(key, weight);
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
      effects.plus(effect, weight);
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
      gains.plus(gain, weight);
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
