package rallywright.web.demo;

import java.time.Clock;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.SplittableRandom;
import rallywright.engine.simulation.SeededIds;
import rallywright.store.ClubStore;

/** Fills an empty store with an invented club and ten weeks of simulated sessions. */
public final class DemoClub {

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
    LocalDate today = LocalDate.now(clock);
    DemoSeason season = DemoSeason.played(SEED, today, clock.getZone());
    store.players().saveAll(season.people().players());
    season.people().groups().forEach(store.groups()::save);
    store.venues().save(season.people().venue());
    season.sessions().forEach(played -> store(store, played));
    SeededIds ids = SeededIds.of(new SplittableRandom(SEED + 1));
    DemoHistory.Played last = season.sessions().get(season.sessions().size() - 1);
    store.events().append(DemoNotes.of(last, ids));
    LocalDate next = today.with(TemporalAdjusters.next(DayOfWeek.TUESDAY));
    store.sessions().save(season.history().planned(season.people().groups().get(0), next));
  }

  private static void store(ClubStore store, DemoHistory.Played played) {
    store.sessions().save(played.session());
    store.events().append(played.events());
  }
}
