package rallywright.engine.skill;

/**
 * A number that carries its first and second derivatives by two variables through sums, products
 * and quotients (forward differentiation, exact).
 */
record Jet(double value, double d1, double d2, double d11, double d12, double d22) {
  static final Jet ZERO = constant(0);
  static final Jet ONE = constant(1);

  static Jet constant(double value) {
    return new Jet(value, 0, 0, 0, 0, 0);
  }

  /** σ(η) as a function of the first variable η. */
  static Jet chanceOfFirst(double eta) {
    double p = Logistic.chance(eta);
    double q = Logistic.chance(-eta);
    return new Jet(p, p * q, 0, p * q * (q - p), 0, 0);
  }

  /** σ(η) as a function of the second variable η. */
  static Jet chanceOfSecond(double eta) {
    Jet first = chanceOfFirst(eta);
    return new Jet(first.value, 0, first.d1, 0, 0, first.d11);
  }

  Jet plus(Jet o) {
    return new Jet(value + o.value, d1 + o.d1, d2 + o.d2, d11 + o.d11, d12 + o.d12, d22 + o.d22);
  }

  Jet times(double c) {
    return new Jet(c * value, c * d1, c * d2, c * d11, c * d12, c * d22);
  }

  Jet times(Jet o) {
    return new Jet(
        value * o.value,
        value * o.d1 + d1 * o.value,
        value * o.d2 + d2 * o.value,
        value * o.d11 + 2 * d1 * o.d1 + d11 * o.value,
        value * o.d12 + d1 * o.d2 + d2 * o.d1 + d12 * o.value,
        value * o.d22 + 2 * d2 * o.d2 + d22 * o.value);
  }

  /** 1 minus this. */
  Jet complement() {
    return ONE.plus(times(-1));
  }

  Jet reciprocal() {
    double r = 1 / value;
    return compose(r, -r * r, 2 * r * r * r);
  }

  Jet log() {
    return compose(Math.log(value), 1 / value, -1 / (value * value));
  }

  /** f(this), from f and its two derivatives at the value. */
  private Jet compose(double f, double slope, double bend) {
    return new Jet(
        f,
        slope * d1,
        slope * d2,
        slope * d11 + bend * d1 * d1,
        slope * d12 + bend * d1 * d2,
        slope * d22 + bend * d2 * d2);
  }
}
