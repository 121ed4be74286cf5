package rallywright.web.signin;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.LinkedHashMap;
import java.util.Map;
import org.springframework.stereotype.Component;

/**
 * Slows down whoever guesses. A device may fail a few times; then each further attempt has to wait
 * twice as long as the one before. All devices together have a small store of attempts that refills
 * slowly, so that many devices do not help. Nobody is locked out for good. The numbers are
 * assumptions of this project.
 */
@Component
public final class Attempts {

  private static final int FREE_FAILURES = 5;
  private static final Duration FIRST_WAIT = Duration.ofSeconds(5);
  private static final Duration LONGEST_WAIT = Duration.ofMinutes(15);
  private static final Duration FORGOTTEN_AFTER = Duration.ofHours(1);
  private static final int MOST_DOUBLINGS = 10;
  private static final int MOST_DEVICES = 2000;
  private static final int STORE = 40;
  private static final Duration REFILL = Duration.ofSeconds(3);

  private final InstantSource clock;
  private final Map<String, Device> devices = new LinkedHashMap<>();
  private double stored = STORE;
  private Instant refilled;

  /** Nobody has tried yet. */
  public Attempts() {
    this(InstantSource.system());
  }

  Attempts(InstantSource clock) {
    this.clock = clock;
    this.refilled = clock.instant();
  }

  private record Device(int failures, Instant last, Instant next) {}

  /**
   * Asks for one attempt, which counts as failed until {@link #succeeded} is called.
   *
   * @param device the address of the device
   * @return how long to wait before the next attempt, or zero if this one may go ahead
   */
  public synchronized Duration ask(String device) {
    Instant now = clock.instant();
    refill(now);
    Device known = devices.get(device);
    if (known != null && known.next().isAfter(now)) {
      return Duration.between(now, known.next());
    }
    if (stored < 1) {
      return REFILL;
    }
    stored--;
    boolean fresh = known == null || known.last().plus(FORGOTTEN_AFTER).isBefore(now);
    int failures = fresh || known == null ? 1 : known.failures() + 1;
    devices.remove(device);
    devices.put(device, new Device(failures, now, now.plus(waitAfter(failures))));
    if (devices.size() > MOST_DEVICES) {
      devices.remove(devices.keySet().iterator().next());
    }
    return Duration.ZERO;
  }

  /** The attempt was right: the device starts anew. */
  public synchronized void succeeded(String device) {
    devices.remove(device);
    stored = Math.min(STORE, stored + 1);
  }

  private void refill(Instant now) {
    double parts = (double) Duration.between(refilled, now).toMillis() / REFILL.toMillis();
    stored = Math.min(STORE, stored + Math.max(0, parts));
    refilled = now;
  }

  private static Duration waitAfter(int failures) {
    if (failures < FREE_FAILURES) {
      return Duration.ZERO;
    }
    int doublings = Math.min(failures - FREE_FAILURES, MOST_DOUBLINGS);
    Duration wait = FIRST_WAIT.multipliedBy(1L << doublings);
    return wait.compareTo(LONGEST_WAIT) < 0 ? wait : LONGEST_WAIT;
  }
}
