package rallywright.engine.rotation;

/**
 * Sums and products of the numbers below a prime power, or pairs of them: a finite field or a
 * product of two.
 */
final class CoupleField {

  private final int size;
  private final int prime;
  private final int[] reduction;
  private final int multiplier;

  /**
   * A field of prime^degree elements: polynomials modulo x^degree = reduction.
   *
   * @param reduction the coefficients of that remainder, the constant first
   * @param multiplier m, such that m, 1 - m and 2 m - 1 are not 0
   */
  private CoupleField(int size, int prime, int[] reduction, int multiplier) {
    this.size = size;
    this.prime = prime;
    this.reduction = reduction;
    this.multiplier = multiplier;
  }

  static CoupleField of(int couples) {
    return switch (couples) {
      case 4 -> new CoupleField(4, 2, new int[] {1, 1}, 2);
      case 8 -> new CoupleField(8, 2, new int[] {1, 1, 0}, 2);
      case 16 -> new CoupleField(16, 2, new int[] {1, 1, 0, 0}, 2);
      case 9 -> new CoupleField(9, 3, new int[] {2, 0}, 3);
      case 20 -> new CoupleField(20, 0, new int[0], 0);
      default -> new CoupleField(couples, couples, new int[] {0}, 2);
    };
  }

  /** The partner of man i against man j: m i + (1 - m) j. */
  int woman(int i, int j) {
    if (size == 20) {
      return 5 * of(4).woman(i / 5, j / 5) + of(5).woman(i % 5, j % 5);
    }
    int oneLess = sum(1, negative(multiplier));
    return sum(product(multiplier, i), product(oneLess, j));
  }

  int sum(int a, int b) {
    if (size == 20) {
      return 5 * of(4).sum(a / 5, b / 5) + of(5).sum(a % 5, b % 5);
    }
    int sum = 0;
    for (int power = 1; power < size; power *= prime) {
      sum += power * ((a / power % prime + b / power % prime) % prime);
    }
    return sum;
  }

  private int negative(int a) {
    int negative = 0;
    for (int power = 1; power < size; power *= prime) {
      negative += power * Math.floorMod(-(a / power % prime), prime);
    }
    return negative;
  }

  private int product(int a, int b) {
    if (reduction.length == 1) {
      return a * b % prime;
    }
    int product = 0;
    int shifted = a;
    for (int power = 1; power < size; power *= prime) {
      for (int times = b / power % prime; times > 0; times--) {
        product = sum(product, shifted);
      }
      shifted = timesX(shifted);
    }
    return product;
  }

  private int timesX(int a) {
    int top = size / prime;
    int carried = a / top;
    int shifted = a % top * prime;
    for (int times = carried; times > 0; times--) {
      int power = 1;
      for (int coefficient : reduction) {
        for (int more = coefficient; more > 0; more--) {
          shifted = sum(shifted, power);
        }
        power *= prime;
      }
    }
    return shifted;
  }
}
