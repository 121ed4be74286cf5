package rallywright.engine.skill;

import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;

/** A sparse sum over latents with an offset, built up weight by weight. */
final class SparseRow {
  private final Map<Integer, Double> weights = new TreeMap<>();
  private double offset;

  SparseRow plus(int latent, double weight) {
    if (weight != 0) {
      weights.merge(latent, weight, Double::sum);
    }
    return this;
  }

  SparseRow plusOffset(double value) {
    offset += value;
    return this;
  }

  /** Ascending. */
  IntStream latents() {
    return weights.keySet().stream().mapToInt(Integer::intValue);
  }

  double weight(int latent) {
    return weights.getOrDefault(latent, 0.0);
  }

  double offset() {
    return offset;
  }

  /** As a vector over {@code size} latents, without the offset. */
  double[] dense(int size) {
    double[] vector = new double[size];
    weights.forEach((latent, weight) -> vector[latent] = weight);
    return vector;
  }

  double dot(double[] x) {
    double sum = offset;
    for (Map.Entry<Integer, Double> entry : weights.entrySet()) {
      sum += entry.getValue() * x[entry.getKey()];
    }
    return sum;
  }
}
