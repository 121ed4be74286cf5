package rallywright.web.progress;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.Period;
import java.util.List;
import org.junit.jupiter.api.Test;

class ComparisonTest {

  private static final LocalDate MONDAY = LocalDate.of(2026, 1, 5);
  private static final Days TEN_WEEKS =
      new Days(MONDAY.datesUntil(MONDAY.plusWeeks(10), Period.ofWeeks(1)).toList());

  @Test
  void noDates_compareTheFirstWithTheLastWeek() {
    Comparison comparison = Comparison.of(TEN_WEEKS, "", "");
    assertThat(comparison.fromMonday()).isEqualTo(MONDAY);
    assertThat(comparison.toMonday()).isEqualTo(MONDAY.plusWeeks(9));
    assertThat(comparison.words()).contains("5 January").contains("9 March");
  }

  @Test
  void anyDay_standsForItsWeek_andDaysOutsideForTheNearestWeek() {
    Comparison comparison = Comparison.of(TEN_WEEKS, "2026-01-18", "2031-01-01");
    assertThat(comparison.fromMonday()).isEqualTo(LocalDate.of(2026, 1, 12));
    assertThat(comparison.toMonday()).isEqualTo(MONDAY.plusWeeks(9));
    assertThat(Comparison.of(TEN_WEEKS, "1999-01-01", "").fromMonday()).isEqualTo(MONDAY);
  }

  @Test
  void sameWeekTwice_saysThatThereIsNothingToCompare() {
    Comparison comparison = Comparison.of(TEN_WEEKS, "2026-01-13", "2026-01-15");
    assertThat(comparison.form().problems().isEmpty()).isTrue();
    assertThat(comparison.words()).contains("nothing to compare").contains("Maybe");
  }

  @Test
  void datesThatAreNone_areNamed_andTheWholeTimeIsShown() {
    Comparison comparison = Comparison.of(TEN_WEEKS, "31 January", "2026-02-31");
    assertThat(comparison.form().problem("from")).contains("31 January").contains("Maybe");
    assertThat(comparison.form().problem("to")).contains("2026-02-31").contains("Maybe");
    assertThat(comparison.form().value("from")).isEqualTo("31 January");
    assertThat(comparison.fromMonday()).isEqualTo(MONDAY);
  }

  @Test
  void datesTheWrongWayRound_areRefused() {
    Comparison comparison = Comparison.of(TEN_WEEKS, "2026-02-10", "2026-01-10");
    assertThat(comparison.form().problem("from")).contains("2026-02-10").contains("2026-01-10");
  }

  @Test
  void days_standByTrueDistance() {
    // From 5 January to 9 March 2026 are 63 days; 1 February is day 27 and 1 March day 55.
    assertThat(TEN_WEEKS.part(LocalDate.of(2026, 2, 1))).isCloseTo(27 / 63.0, within(1e-12));
    assertThat(TEN_WEEKS.ticks()).extracting(Days.Tick::words).containsExactly("Feb", "Mar");
    assertThat(new Days(List.of(MONDAY)).ticks()).hasSize(2);
  }
}
