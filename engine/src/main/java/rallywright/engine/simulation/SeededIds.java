package rallywright.engine.simulation;

import java.util.UUID;
import java.util.random.RandomGenerator;

/** Ids in the form of a random UUID, the same for the same seed. */
public final class SeededIds {

  private static final long VERSION_4 = 0x4000L;
  private static final long VARIANT = 0x8000_0000_0000_0000L;

  private final RandomGenerator random;

  private SeededIds(RandomGenerator random) {
    this.random = random;
  }

  /**
   * Ids from a source of chance.
   *
   * @param random the seeded source
   * @return the ids to come
   */
  public static SeededIds of(RandomGenerator random) {
    return new SeededIds(random);
  }

  /**
   * The next id.
   *
   * @return 36 characters in lower case
   */
  public String next() {
    long high = (random.nextLong() & ~0xF000L) | VERSION_4;
    long low = (random.nextLong() >>> 2) | VARIANT;
    return new UUID(high, low).toString();
  }
}
