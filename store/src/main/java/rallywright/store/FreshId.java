package rallywright.store;

import java.util.Locale;
import java.util.random.RandomGenerator;

/** Ids of the form UUID version 7 (RFC 9562): the time in milliseconds, then random bits. */
final class FreshId {

  private FreshId() {}

  static String at(long millis, RandomGenerator random) {
    long high = (millis << 16) | 0x7000 | (random.nextLong() & 0x0fff);
    long low = (random.nextLong() & 0x3fff_ffff_ffff_ffffL) | 0x8000_0000_0000_0000L;
    String digits = String.format(Locale.ROOT, "%016x%016x", high, low);
    return String.join(
        "-",
        digits.substring(0, 8),
        digits.substring(8, 12),
        digits.substring(12, 16),
        digits.substring(16, 20),
        digits.substring(20));
  }
}
