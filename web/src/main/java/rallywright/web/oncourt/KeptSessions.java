package rallywright.web.oncourt;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import rallywright.engine.session.SessionId;
import rallywright.store.ClubStore;
import rallywright.store.StoredEvent;

/**
 * The sessions that were asked for last, in memory. One is used again as long as the trail of
 * changes says that since then nothing but log entries came; its own new entries are then read and
 * nothing else. What a change sees of itself is never kept.
 */
final class KeptSessions {

  private static final int MOST = 64;

  private final ClubStore store;
  private final ChangeTrail trail;
  private final Map<SessionId, Found> kept =
      new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<SessionId, Found> eldest) {
          return size() > MOST;
        }
      };

  KeptSessions(ClubStore store, ChangeTrail trail) {
    this.store = store;
    this.trail = trail;
  }

  private record Found(long revision, OpenSession session) {}

  /**
   * A session as it is now.
   *
   * @param id its id
   * @param reading reads it as a whole
   */
  Optional<OpenSession> find(SessionId id, Supplier<Optional<OpenSession>> reading) {
    if (store.isChanging()) {
      return reading.get();
    }
    Optional<OpenSession> same = unchanged(id, store.revision());
    if (same.isPresent()) {
      return same;
    }
    return store.atOneMoment(
        () -> {
          long now = store.revision();
          Optional<OpenSession> found = known(id, now).or(reading);
          found.ifPresent(session -> keep(id, now, session));
          return found;
        });
  }

  /** The session as kept, where nothing of its own came since. */
  private Optional<OpenSession> unchanged(SessionId id, long now) {
    Found last = last(id);
    if (last == null
        || trail.addedBetween(last.revision(), now).map(all -> all.contains(id)).orElse(true)) {
      return Optional.empty();
    }
    keep(id, now, last.session());
    return Optional.of(last.session());
  }

  private Optional<OpenSession> known(SessionId id, long now) {
    Found last = last(id);
    if (last == null) {
      return Optional.empty();
    }
    Optional<Set<SessionId>> added = trail.addedBetween(last.revision(), now);
    if (added.isEmpty() || !added.get().contains(id)) {
      return added.map(others -> last.session());
    }
    List<StoredEvent> more = store.events().after(id, last.session().lastArrival());
    return Optional.of(last.session().with(more));
  }

  private @Nullable Found last(SessionId id) {
    synchronized (kept) {
      return kept.get(id);
    }
  }

  private void keep(SessionId id, long revision, OpenSession session) {
    synchronized (kept) {
      Found other = kept.get(id);
      if (other == null || other.revision() <= revision) {
        kept.put(id, new Found(revision, session));
      }
    }
  }
}
