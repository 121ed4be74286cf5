package rallywright.store;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import rallywright.engine.plan.SessionPlan;
import rallywright.engine.session.Session;
import rallywright.engine.session.SessionId;

/** One open club for each database, for tests that try many cases; each case takes a session. */
final class OpenClubs {

  private static final Map<TestDatabase, ClubStore> STORES = new EnumMap<>(TestDatabase.class);

  private OpenClubs() {}

  static synchronized ClubStore of(TestDatabase database) {
    return STORES.computeIfAbsent(database, each -> ClubStore.open(each.fresh()));
  }

  static SessionId freshSession(ClubStore store) {
    SessionId id = new SessionId(store.freshId());
    store
        .sessions()
        .save(
            new Session(
                id,
                "Case",
                LocalDate.of(2026, 1, 5),
                LocalTime.of(9, 0),
                null,
                null,
                new SessionPlan(60, 1, List.of(), List.of()),
                Session.State.RUNNING));
    return id;
  }
}
