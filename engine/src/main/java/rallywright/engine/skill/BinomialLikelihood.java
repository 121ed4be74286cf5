package rallywright.engine.skill;

/**
 * Rallies, or balls of a yardstick, all with the same chance σ(η).
 *
 * @param hits how often it happened; games and yardsticks give whole numbers, published data may
 *     not
 * @param misses how often it did not
 */
record BinomialLikelihood(double hits, double misses) implements Likelihood {
  BinomialLikelihood {
    if (!(hits >= 0 && misses >= 0 && hits + misses < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          "The counts (" + hits + ", " + misses + ") must both be 0 or more.");
    }
  }

  @Override
  public int predictors() {
    return 1;
  }

  @Override
  public Curve at(double eta, double etaOther) {
    // One exponential and one logarithm serve both chances: most of the time of a fit goes here.
    double odds = Math.exp(-Math.abs(eta));
    double likely = 1 / (1 + odds);
    double unlikely = odds * likely;
    double logLikely = -Math.log1p(odds);
    double logUnlikely = logLikely - Math.abs(eta);
    double chance = eta >= 0 ? likely : unlikely;
    double other = eta >= 0 ? unlikely : likely;
    double balls = hits + misses;
    double value =
        eta >= 0
            ? hits * logLikely + misses * logUnlikely
            : hits * logUnlikely + misses * logLikely;
    return new Curve(value, hits * other - misses * chance, 0, -balls * chance * other, 0, 0);
  }
}
