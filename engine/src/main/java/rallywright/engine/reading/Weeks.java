package rallywright.engine.reading;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.time.temporal.TemporalAdjusters;

/**
 * Weeks counted from the first session's, each beginning on a Monday (ISO 8601).
 *
 * @param firstMonday the Monday of week 0
 */
record Weeks(LocalDate firstMonday) {

  static Weeks from(LocalDate earliest) {
    return new Weeks(earliest.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY)));
  }

  /** The week of a day; days before week 0 belong to it too. */
  int of(LocalDate day) {
    return (int) Math.max(0, ChronoUnit.WEEKS.between(firstMonday, day));
  }

  LocalDate mondayOf(int week) {
    return firstMonday.plusWeeks(week);
  }
}
