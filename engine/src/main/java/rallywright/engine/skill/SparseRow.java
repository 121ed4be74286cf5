package rallywright.engine.skill;

import java.util.Arrays;

/** A sparse sum over latents with an offset, built up weight by weight. */
final class SparseRow {
  private static final int USUAL = 8;

  private int[] latents = new int[USUAL];
  private double[] weights = new double[USUAL];
  private int size;
  private double offset;

  SparseRow plus(int latent, double weight) {
    if (weight == 0) {
      return this;
    }
    int place = place(latent);
    if (place >= 0) {
      weights[place] += weight;
      return this;
    }
    if (size == latents.length) {
      latents = Arrays.copyOf(latents, 2 * size);
      weights = Arrays.copyOf(weights, 2 * size);
    }
    int at = -1 - place;
    System.arraycopy(latents, at, latents, at + 1, size - at);
    System.arraycopy(weights, at, weights, at + 1, size - at);
    latents[at] = latent;
    weights[at] = weight;
    size++;
    return this;
  }

  private int place(int latent) {
    return Arrays.binarySearch(latents, 0, size, latent);
  }

  SparseRow plusOffset(double value) {
    offset += value;
    return this;
  }

  /** Ascending. */
  int[] latents() {
    return Arrays.copyOf(latents, size);
  }

  double weight(int latent) {
    int place = place(latent);
    return place < 0 ? 0 : weights[place];
  }

  double offset() {
    return offset;
  }

  /** As a vector over {@code length} latents, without the offset. */
  double[] dense(int length) {
    double[] vector = new double[length];
    for (int i = 0; i < size; i++) {
      vector[latents[i]] = weights[i];
    }
    return vector;
  }

  double dot(double[] x) {
    double sum = offset;
    for (int i = 0; i < size; i++) {
      sum += weights[i] * x[latents[i]];
    }
    return sum;
  }
}
