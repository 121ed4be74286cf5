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
    double chance = Logistic.chance(eta);
    double other = Logistic.chance(-eta);
    double balls = hits + misses;
    double value = hits * Logistic.logChance(eta) + misses * Logistic.logChance(-eta);
    return new Curve(value, hits * other - misses * chance, 0, -balls * chance * other, 0, 0);
  }
}
