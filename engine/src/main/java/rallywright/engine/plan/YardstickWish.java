package rallywright.engine.plan;

import java.util.List;
import rallywright.engine.drill.DrillKey;

/** Which closed tests stand in a plan. */
public sealed interface YardstickWish {

  /** No test. */
  YardstickWish NONE = new Named(List.of());

  /**
   * The tests that the coach names.
   *
   * @param keys the yardsticks in order
   */
  record Named(List<DrillKey> keys) implements YardstickWish {

    /** Copies the list. */
    public Named {
      keys = List.copyOf(keys);
    }
  }

  /** One test, of the skill in which those present are known worst, where that is wide. */
  record WhereUnsure() implements YardstickWish {}

  /**
   * One test, of the skill in which those present are known worst, in every so many sessions.
   *
   * @param sessions how many sessions from one test to the next, 1 to 52
   * @param sinceLast how many sessions were held since the last test, 0 or more
   */
  record Every(int sessions, int sinceLast) implements YardstickWish {

    /** Checks the ranges. */
    public Every {
      if (sessions < 1 || sessions > 52 || sinceLast < 0) {
        throw new IllegalArgumentException(
            "A test every %d sessions, %d since the last: it must be every 1 to 52, and 0 or more."
                    .formatted(sessions, sinceLast)
                + " Maybe every 4.");
      }
    }

    boolean isDue() {
      return sinceLast + 1 >= sessions;
    }
  }
}
