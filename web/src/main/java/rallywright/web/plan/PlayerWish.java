package rallywright.web.plan;

import java.time.DateTimeException;
import java.time.Duration;
import java.time.LocalTime;
import java.util.Optional;
import rallywright.engine.club.PlayerId;
import rallywright.engine.plan.Stay;

/**
 * What is wished for one player of a session.
 *
 * @param player who
 * @param comes when they come, by the clock; empty for the start
 * @param leaves when they leave, by the clock; empty for the end
 * @param counts how much their practice counts
 */
record PlayerWish(
    PlayerId player, Optional<LocalTime> comes, Optional<LocalTime> leaves, Counts counts) {

  private static final int HALF_A_DAY = 12 * 60;
  private static final int DAY = 2 * HALF_A_DAY;

  /** How much somebody's practice counts beside that of the others. */
  enum Counts {
    USUAL(1, "as everybody"),
    THREE_TIMES(3, "three times"),
    TWICE(2, "twice"),
    HALF(0.5, "half"),
    NOT_AT_ALL(0, "not at all: plays along");

    private final double weight;
    private final String words;

    Counts(double weight, String words) {
      this.weight = weight;
      this.words = words;
    }

    double weight() {
      return weight;
    }

    String words() {
      return words;
    }
  }

  /**
   * From when to when in minutes from the start; what lies before the start is the start. Times
   * that cannot be, see {@link #problem}, count as not said.
   */
  Stay stay(LocalTime start) {
    int from = Math.max(0, comes.map(time -> minutes(start, time)).orElse(0));
    int until = leaves.map(time -> minutes(start, time)).orElse(Stay.TO_THE_END);
    return from < until && from < Stay.TO_THE_END
        ? new Stay(from, Math.min(until, Stay.TO_THE_END))
        : Stay.THROUGHOUT;
  }

  /** Minutes from the start to a time: within half a day of it, so that midnight does no harm. */
  private static int minutes(LocalTime start, LocalTime time) {
    int minutes = Math.floorMod((int) Duration.between(start, time).toMinutes(), DAY);
    return minutes > HALF_A_DAY ? minutes - DAY : minutes;
  }

  /** What is wrong with the times beside the session's start, if anything is. */
  Optional<String> problem(String name, LocalTime start) {
    if (leaves.isPresent() && minutes(start, leaves.get()) <= 0) {
      return Optional.of(
          "%s leaves at %s, but the session starts at %s. Maybe a later time."
              .formatted(name, leaves.get(), start));
    }
    boolean turned =
        comes.isPresent()
            && leaves.isPresent()
            && minutes(start, comes.get()) >= minutes(start, leaves.get());
    return turned
        ? Optional.of(
            "%s leaves at %s, before coming at %s. Maybe swap the two times."
                .formatted(name, leaves.get(), comes.get()))
        : Optional.empty();
  }

  boolean isNothing() {
    return comes.isEmpty() && leaves.isEmpty() && counts == Counts.USUAL;
  }

  /** As it is kept with the session. */
  String text() {
    return String.join("@", player.value(), time(comes), time(leaves), counts.name());
  }

  private static String time(Optional<LocalTime> time) {
    return time.map(LocalTime::toString).orElse("");
  }

  /** As it was kept; empty where it cannot be read. */
  static Optional<PlayerWish> of(String text) {
    String[] parts = text.split("@", -1);
    try {
      return Optional.of(
          new PlayerWish(
              new PlayerId(parts[0]), time(parts[1]), time(parts[2]), Counts.valueOf(parts[3])));
    } catch (DateTimeException | IllegalArgumentException | IndexOutOfBoundsException unreadable) {
      return Optional.empty();
    }
  }

  private static Optional<LocalTime> time(String text) {
    return text.isEmpty() ? Optional.empty() : Optional.of(LocalTime.parse(text));
  }
}
