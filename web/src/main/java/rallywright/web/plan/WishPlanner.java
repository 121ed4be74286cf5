package rallywright.web.plan;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;
import rallywright.engine.club.PlayerId;
import rallywright.engine.plan.PlanAnswer;
import rallywright.engine.plan.PlanProblem;
import rallywright.engine.plan.SessionPlan;
import rallywright.engine.plan.SessionPlanner;
import rallywright.engine.plan.SessionWish;
import rallywright.engine.session.Session;
import rallywright.engine.session.SessionId;
import rallywright.store.ClubStore;
import rallywright.web.oncourt.OpenSession;

/**
 * Makes a stored session of a wish, a new one or one in the place of what was planned so far. The
 * search itself holds nobody up; only what it found is stored in one step.
 */
@Component
final class WishPlanner {

  private final ClubStore store;
  private final PlanDesk desk;
  private final PlanKeeper keeper;

  WishPlanner(ClubStore store, PlanDesk desk, PlanKeeper keeper) {
    this.store = store;
    this.desk = desk;
    this.keeper = keeper;
  }

  /**
   * What became of a wish.
   *
   * @param session the id of the stored session, or empty where nothing was stored
   * @param refused why nothing was stored
   */
  record Outcome(String session, List<String> refused) {

    /** The coach stopped the search. */
    static final Outcome STOPPED =
        refused(List.of("The search was stopped; nothing was stored. Change anything and go on."));

    static Outcome stored(SessionId session) {
      return new Outcome(session.value(), List.of());
    }

    static Outcome refused(List<String> sentences) {
      return new Outcome("", sentences);
    }
  }

  /** Plans a new session. */
  Outcome newSession(WishForm.Wished wished, PlanRun run) {
    return planned(wished, Optional.empty(), run);
  }

  /** Plans a session anew from what is known today. */
  Outcome anew(OpenSession open, PlanRun run) {
    PlanAnswer answer = SessionPlanner.planAnew(desk.problem(open.session()), open.plan(), run);
    if (answer instanceof PlanAnswer.Refused refused) {
      return Outcome.refused(refused.sentences());
    }
    return run.isStopped()
        ? Outcome.STOPPED
        : outcome(open, keeper.keep(open, ((PlanAnswer.Planned) answer).plan()));
  }

  /** Whether these wishes leave the plan of a session as it is. */
  boolean asksForTheSame(WishForm.Wished wished, Session session) {
    SessionWish before = desk.wish(session);
    return wished.walkIns().isEmpty()
        && wished.template().isEmpty()
        && wished.minutes() == before.minutes()
        && wished.courts() == before.courts()
        && wished.coverage() == before.coverage()
        && wished.more().equals(desk.more(session))
        && new HashSet<>(wished.present()).equals(new HashSet<>(session.plan().present()));
  }

  /** Stores another name, day or place of a session, whose plan stays as it is. */
  Outcome renamed(WishForm.Wished wished, OpenSession open) {
    return outcome(open, keep(wished, open, open.plan()));
  }

  /** Plans a session for other wishes, if nothing of it was played yet. */
  Outcome changed(WishForm.Wished wished, OpenSession open, PlanRun run) {
    return PlanDesk.touched(open.progress()).isEmpty()
        ? planned(wished, Optional.of(open), run)
        : Outcome.refused(
            List.of(
                "Some of this session was played already, so who is there, the minutes, the"
                    + " courts and the drills stay as they are. Maybe change the blocks that"
                    + " are still to come by hand."));
  }

  private Outcome planned(WishForm.Wished wished, Optional<OpenSession> before, PlanRun run) {
    SessionWish wish =
        SessionWish.of(wished.minutes(), wished.courts())
            .withCoverage(wished.coverage())
            .withRequests(wished.more().requests());
    List<PlayerId> present = new ArrayList<>(wished.present());
    wished.walkIns().forEach(player -> present.add(player.id()));
    PlanProblem problem = desk.problem(present, wished.walkIns(), wish, wished.more());
    PlanAnswer answer =
        before
            .map(open -> SessionPlanner.planAnew(problem, open.plan(), run))
            .orElseGet(() -> SessionPlanner.plan(problem, run));
    if (answer instanceof PlanAnswer.Refused refused) {
      return Outcome.refused(refused.sentences());
    }
    SessionPlan found = ((PlanAnswer.Planned) answer).plan();
    SessionPlan plan =
        wished.template().map(each -> desk.fromTemplate(problem, found, each)).orElse(found);
    if (run.isStopped()) {
      return Outcome.STOPPED;
    }
    return before
        .map(open -> outcome(open, keep(wished, open, plan)))
        .orElseGet(() -> storedNew(wished, plan));
  }

  private Outcome storedNew(WishForm.Wished wished, SessionPlan plan) {
    SessionId id = new SessionId(store.freshId());
    Session session = session(wished, id, plan, Session.State.PLANNED);
    keeper.keepNew(session, wished.walkIns(), () -> storeWishes(wished, session));
    return Outcome.stored(id);
  }

  private PlanKeeper.Kept keep(WishForm.Wished wished, OpenSession open, SessionPlan plan) {
    Session session = session(wished, open.session().id(), plan, open.session().state());
    return keeper.keep(open, session, wished.walkIns(), () -> storeWishes(wished, session));
  }

  private void storeWishes(WishForm.Wished wished, Session session) {
    desk.keepWish(session, wished.coverage(), wished.more());
  }

  private static Session session(
      WishForm.Wished wished, SessionId id, SessionPlan plan, Session.State state) {
    return new Session(
        id,
        wished.name(),
        wished.date(),
        wished.start(),
        wished.venue(),
        wished.group(),
        plan,
        state);
  }

  private static Outcome outcome(OpenSession open, PlanKeeper.Kept kept) {
    return kept == PlanKeeper.Kept.YES
        ? Outcome.stored(open.session().id())
        : Outcome.refused(
            List.of(
                "This session was changed or begun while the plan was made, so it stayed as it is"
                    + " now. Maybe look at it and try again."));
  }
}
