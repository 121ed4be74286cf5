package rallywright.engine.practice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class WeekLoadTest {

  /** A Tuesday. */
  private static final LocalDate TODAY = LocalDate.of(2026, 3, 31);

  private static SessionLoad session(LocalDate day, double minutes, int rating) {
    return new SessionLoad(day, minutes, Optional.of(new EffortRating(rating)));
  }

  @Test
  void load_isRatingTimesMinutes() {
    // Foster et al. 2001: rating (0 to 10) times minutes; 60 min rated 5 are 300, 90 rated 5 450.
    assertThat(session(TODAY, 60, 5).load()).hasValue(300);
    assertThat(session(TODAY, 90, 5).load()).hasValue(450);
    assertThat(new SessionLoad(TODAY, 60, Optional.empty()).load()).isEmpty();
  }

  @Test
  void week_ofSixSessions_isTheirSum() {
    // The week of the printed example (fellrnr.com, Training Monotony): 300, 0, 450, 0, 240, 600, 0
    // makes 1590.
    LocalDate monday = LocalDate.of(2026, 3, 23);
    List<SessionLoad> days =
        List.of(
            session(monday, 60, 5),
            session(monday.plusDays(2), 90, 5),
            session(monday.plusDays(4), 60, 4),
            session(monday.plusDays(5), 100, 6));
    WeekLoad week = WeekLoad.weeks(days, monday.plusDays(6), 1).get(0);
    assertThat(week.load()).isEqualTo(1590);
    assertThat(week.minutes()).isEqualTo(310);
    assertThat(week.sessions()).isEqualTo(4);
  }

  @Test
  void weeks_runFromMondayToSunday_oldestFirst_alsoWithoutASession() {
    List<SessionLoad> days =
        List.of(
            session(LocalDate.of(2026, 3, 30), 60, 5),
            session(LocalDate.of(2026, 3, 29), 60, 3),
            session(LocalDate.of(2026, 3, 1), 60, 9));
    List<WeekLoad> weeks = WeekLoad.weeks(days, TODAY, 4);
    assertThat(weeks).extracting(WeekLoad::load).containsExactly(0.0, 0.0, 180.0, 300.0);
    assertThat(weeks.get(3).monday()).isEqualTo(LocalDate.of(2026, 3, 30));
  }

  @Test
  void sessionWithoutARating_isNamedAndNotCountedAsRest() {
    List<SessionLoad> days =
        List.of(session(TODAY, 60, 5), new SessionLoad(TODAY, 90, Optional.empty()));
    WeekLoad week = WeekLoad.weeks(days, TODAY, 1).get(0);
    assertThat(week.unrated()).isEqualTo(1);
    assertThat(week.isRated()).isTrue();
    assertThat(week.minutes()).isEqualTo(150);
    assertThat(week.load()).isEqualTo(300);
    assertThat(WeekLoad.weeks(List.of(days.get(1)), TODAY, 1).get(0).isRated()).isFalse();
  }

  @Test
  void ratingsAndMinutes_outsideOfTheirRange_areRefused() {
    assertThatThrownBy(() -> new EffortRating(11)).hasMessageContaining("(11)");
    assertThatThrownBy(() -> new EffortRating(-1)).hasMessageContaining("from 0 to 10");
    assertThatThrownBy(() -> new SessionLoad(TODAY, Double.NaN, Optional.empty()))
        .hasMessageContaining("(NaN)");
  }
}
