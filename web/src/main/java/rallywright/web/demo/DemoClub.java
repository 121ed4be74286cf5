package rallywright.web.demo;

import java.time.Clock;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.SplittableRandom;
import rallywright.catalogue.Catalogue;
import rallywright.engine.club.Group;
import rallywright.engine.simulation.SeededIds;
import rallywright.store.ClubStore;

/** Fills an empty store with an invented club and ten weeks of simulated sessions. */
public final class DemoClub {

  /** Weeks of history. */
  public static final int WEEKS = 10;

  /** The seed of everything that is drawn. */
  public static final long SEED = 20_260_107L;

  private DemoClub() {}

  /** What a start found or did. */
  public enum Loading {
    /** The club was empty and now has a history. */
    LOADED,
    /** The club held something already and was left alone. */
    LEFT_ALONE
  }

  /**
   * Loads the demo, all of it or nothing, unless the store holds anything already.
   *
   * @param store the demo's store
   * @param clock tells today: the last simulated session is on the last Tuesday before
   * @return whether it was loaded
   */
  public static Loading load(ClubStore store, Clock clock) {
    return store.inOneStep(
        () -> {
          if (!store.isEmpty()) {
            return Loading.LEFT_ALONE;
          }
          fill(store, clock);
          return Loading.LOADED;
        });
  }

  private static void fill(ClubStore store, Clock clock) {
    SplittableRandom random = new SplittableRandom(SEED);
    InventedPeople people = InventedPeople.with(SeededIds.of(random));
    store.players().saveAll(people.players());
    people.groups().forEach(store.groups()::save);
    store.venues().save(people.venue());
    LocalDate today = LocalDate.now(clock);
    LocalDate last = today.with(TemporalAdjusters.previous(DayOfWeek.TUESDAY));
    DemoHistory history = DemoHistory.begin(people, Catalogue.shipped(), clock.getZone(), random);
    Group tuesday = people.groups().get(0);
    Group friday = people.groups().get(1);
    for (int week = 0; week < WEEKS; week++) {
      LocalDate date = last.minusWeeks(WEEKS - 1L - week);
      history.beginWeek();
      // The Friday before comes first, so that the last session is a Tuesday's.
      if (week % 3 != 0) {
        store(store, history.played(friday, date.minusDays(4)));
      }
      store(store, history.played(tuesday, date));
    }
    LocalDate next = today.with(TemporalAdjusters.next(DayOfWeek.TUESDAY));
    store.sessions().save(history.planned(tuesday, next));
  }

  private static void store(ClubStore store, DemoHistory.Played played) {
    store.sessions().save(played.session());
    store.events().append(played.events());
  }
}
