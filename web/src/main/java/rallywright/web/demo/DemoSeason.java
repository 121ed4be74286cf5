package rallywright.web.demo;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import rallywright.catalogue.Catalogue;
import rallywright.engine.club.Group;
import rallywright.engine.simulation.SeededIds;

/**
 * Ten weeks of an invented club: a Tuesday every week, and most Fridays.
 *
 * @param people who is in the club
 * @param history what is true and what was noted
 * @param sessions every session with what was noted, oldest first
 */
record DemoSeason(InventedPeople people, DemoHistory history, List<DemoHistory.Played> sessions) {

  /** Weeks of history. */
  static final int WEEKS = 10;

  private static final int DAYS_FROM_TUESDAY_TO_FRIDAY = 3;
  private static final int FRIDAYS = 3;

  /** Keeps a copy. */
  DemoSeason {
    sessions = List.copyOf(sessions);
  }

  /** Plays a season whose last session is on the last Tuesday before a day. */
  static DemoSeason played(long seed, LocalDate today, ZoneId zone) {
    SplittableRandom random = new SplittableRandom(seed);
    InventedPeople people = InventedPeople.with(SeededIds.of(random));
    DemoHistory history = DemoHistory.begin(people, Catalogue.shipped(), zone, random);
    Group tuesday = people.groups().get(0);
    Group friday = people.groups().get(1);
    LocalDate date = firstTuesday(today);
    List<DemoHistory.Played> sessions = new ArrayList<>();
    for (int week = 0; week < WEEKS; week++) {
      sessions.add(history.played(tuesday, date.plusWeeks(week)));
      if (week + 1 < WEEKS) {
        if (week % FRIDAYS != FRIDAYS - 1) {
          sessions.add(
              history.played(friday, date.plusWeeks(week).plusDays(DAYS_FROM_TUESDAY_TO_FRIDAY)));
        }
        history.nextWeek();
      }
    }
    return new DemoSeason(people, history, sessions);
  }

  /** The Tuesday of the first week. */
  static LocalDate firstTuesday(LocalDate today) {
    return today.with(TemporalAdjusters.previous(DayOfWeek.TUESDAY)).minusWeeks(WEEKS - 1L);
  }
}
