package rallywright.web.plan;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Function;
import org.springframework.stereotype.Component;
import rallywright.engine.club.Player;
import rallywright.engine.plan.PlanEdit;
import rallywright.engine.plan.SessionPlan;
import rallywright.engine.session.Session;
import rallywright.engine.session.SessionId;
import rallywright.store.ClubStore;
import rallywright.web.oncourt.OpenSession;
import rallywright.web.oncourt.SessionDesk;
import rallywright.web.progress.ClubReadings;

/**
 * Stores changed plans. A change is worked out first, without holding up whoever scores, and stored
 * only if the session is still the one that it was worked out for.
 */
@Component
class PlanKeeper {

  private static final int TRIES = 4;

  private final ClubStore store;
  private final SessionDesk sessions;
  private final ClubReadings readings;

  PlanKeeper(ClubStore store, SessionDesk sessions, ClubReadings readings) {
    this.store = store;
    this.sessions = sessions;
    this.readings = readings;
  }

  /** Whether a session was kept. */
  enum Kept {
    YES,
    CHANGED_MEANWHILE
  }

  /** Changes the plan of a session; worked out anew if somebody else changes it meanwhile. */
  PlanEdit change(SessionId id, Function<OpenSession, PlanEdit> change) {
    for (int attempt = 0; attempt < TRIES; attempt++) {
      OpenSession seen = sessions.find(id).orElseThrow(PlanPages::notHere);
      PlanEdit edit = change.apply(seen);
      if (!(edit instanceof PlanEdit.Changed changed) || keep(seen, changed.plan()) == Kept.YES) {
        return edit;
      }
    }
    return new PlanEdit.Refused(
        "Somebody else is changing this session. Maybe look at it again and try once more.");
  }

  /** Stores another plan for a session, unless the session is another one by now. */
  Kept keep(OpenSession seen, SessionPlan plan) {
    AtomicLong revision = new AtomicLong();
    Runnable beside = () -> revision.set(store.revision());
    Kept kept = keep(seen, seen.session().withPlan(plan), List.of(), beside);
    if (kept == Kept.YES && seen.events().isEmpty()) {
      readings.onlyAPlanChanged(revision.get());
    }
    return kept;
  }

  /** Stores a new session with those who walked in and what belongs beside it. */
  void keepNew(Session session, List<Player> walkIns, Runnable beside) {
    long revision =
        store.inOneStep(
            () -> {
              walkIns.forEach(store.players()::save);
              beside.run();
              store.sessions().save(session);
              return store.revision();
            });
    if (walkIns.isEmpty() && !session.date().isBefore(LocalDate.now(ZoneId.systemDefault()))) {
      readings.onlyAPlanChanged(revision);
    }
  }

  /**
   * Stores those who walked in, what belongs beside a session, and it, unless the session is
   * another one by now.
   */
  Kept keep(OpenSession seen, Session next, List<Player> walkIns, Runnable beside) {
    return store.inOneStep(
        () -> {
          Optional<OpenSession> now = sessions.find(seen.session().id());
          if (now.isEmpty() || !now.get().isAs(seen)) {
            return Kept.CHANGED_MEANWHILE;
          }
          walkIns.forEach(store.players()::save);
          beside.run();
          store.sessions().save(next);
          return Kept.YES;
        });
  }
}
