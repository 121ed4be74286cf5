package rallywright.engine.skill;

import java.util.Arrays;

/**
 * How much each skill counts in a role: one weight for each skill of the club, dimensionless.
 * Drills use weights from 0 to 1 that sum to 1, so that a role is a mixture of skills.
 */
public final class Weights {
  private final double[] values;

  private Weights(double[] values) {
    this.values = values;
  }

  /**
   * Weights in the order of the skills.
   *
   * @param values one for each skill, each from 0 to 1
   * @return the weights
   * @throws IllegalArgumentException if a weight lies outside 0 to 1 or is not a number
   */
  public static Weights of(double... values) {
    for (double value : values) {
      if (!(value >= 0 && value <= 1)) {
        throw new IllegalArgumentException(
            "The weight (" + value + ") must lie from 0 to 1. Maybe it was meant in percent.");
      }
    }
    return new Weights(values.clone());
  }

  /**
   * A role that is one skill and nothing else.
   *
   * @param skill number of the skill, from 0
   * @param skills how many skills there are
   * @return weight 1 on that skill
   */
  public static Weights single(int skill, int skills) {
    double[] values = new double[skills];
    values[skill] = 1;
    return new Weights(values);
  }

  /**
   * How many skills the weights are for.
   *
   * @return 1 or more
   */
  public int skills() {
    return values.length;
  }

  /**
   * The weight of one skill.
   *
   * @param skill number of the skill, from 0
   * @return from 0 to 1
   */
  public double of(int skill) {
    return values[skill];
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Weights weights && Arrays.equals(values, weights.values);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(values);
  }

  @Override
  public String toString() {
    return Arrays.toString(values);
  }
}
