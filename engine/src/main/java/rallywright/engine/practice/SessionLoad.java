package rallywright.engine.practice;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What one session asked of one player.
 *
 * <p>Load = rating of effort × minutes (session-RPE; Foster et al. 2001, see {@link EffortRating}).
 * A number for comparing this player's weeks with one another, not one player with another.
 *
 * @param date the day
 * @param minutes how long the session took, warm-ups and rests included, 0 or more
 * @param effort the player's rating, empty where none was given
 */
public record SessionLoad(LocalDate date, double minutes, Optional<EffortRating> effort) {

  /** Checks the range; the check is written so that NaN fails it. */
  public SessionLoad {
    if (!(minutes >= 0 && minutes < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          "The minutes of a session (%s) must be 0 or more.".formatted(minutes));
    }
  }

  /**
   * The load.
   *
   * @return rating × minutes, or empty without a rating
   */
  public OptionalDouble load() {
    return effort
        .map(rated -> OptionalDouble.of(rated.value() * minutes))
        .orElse(OptionalDouble.empty());
  }
}
