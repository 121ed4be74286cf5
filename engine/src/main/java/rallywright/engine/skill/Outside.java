package rallywright.engine.skill;

import java.util.Arrays;
import java.util.List;

/**
 * For each piece of evidence that spans groups, and each group in it, the variance of what lies in
 * the other groups: of the first predictor, the covariance, of the second.
 */
final class Outside {
  private final double[][][] variances;

  private Outside(double[][][] variances) {
    this.variances = variances;
  }

  /** As if the other groups were known exactly. */
  static Outside none(List<CrossTerm> cross) {
    double[][][] zero = new double[cross.size()][][];
    for (int i = 0; i < zero.length; i++) {
      zero[i] = new double[cross.get(i).cuts().size()][3];
    }
    return new Outside(zero);
  }

  /**
   * From the variances within each group.
   *
   * @param within for each evidence and group in it the variance of that group's share
   */
  static Outside of(double[][][] within) {
    double[][][] others = new double[within.length][][];
    for (int i = 0; i < within.length; i++) {
      others[i] = new double[within[i].length][3];
      for (int j = 0; j < within[i].length; j++) {
        for (int other = 0; other < within[i].length; other++) {
          for (int k = 0; k < 3 && other != j; k++) {
            others[i][j][k] += within[i][other][k];
          }
        }
      }
    }
    return new Outside(others);
  }

  /** From the variances of what lies in the other groups. */
  static Outside ofOthers(double[][][] others) {
    return new Outside(others);
  }

  double[] of(int evidence, int group) {
    return Arrays.copyOf(variances[evidence][group], 3);
  }
}
