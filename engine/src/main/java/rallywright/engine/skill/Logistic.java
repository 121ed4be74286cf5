package rallywright.engine.skill;

/** The logistic curve between a logit and a chance, exact in both tails. */
final class Logistic {
  private Logistic() {}

  /** 1/(1+e^−η), from 0 to 1. */
  static double chance(double eta) {
    if (eta >= 0) {
      return 1 / (1 + Math.exp(-eta));
    }
    double odds = Math.exp(eta);
    return odds / (1 + odds);
  }

  /** The natural logarithm of {@link #chance}, without loss where the chance is small. */
  static double logChance(double eta) {
    return eta >= 0 ? -Math.log1p(Math.exp(-eta)) : eta - Math.log1p(Math.exp(eta));
  }
}
