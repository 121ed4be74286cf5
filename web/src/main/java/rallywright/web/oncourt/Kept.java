package rallywright.web.oncourt;

import java.util.Objects;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Something that is worked out when it is first asked for, and then kept. Two threads that ask at
 * once may both work it out; it must be the same each time.
 *
 * @param <T> what it is
 */
final class Kept<T> {

  private volatile @Nullable T value;

  /** What is kept; worked out where it is not there yet. */
  T or(Supplier<T> work) {
    T known = value;
    if (known == null) {
      known = Objects.requireNonNull(work.get());
      value = known;
    }
    return known;
  }
}
