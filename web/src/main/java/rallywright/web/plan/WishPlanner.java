package rallywright.web.plan;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
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

/** Makes a stored session of a wish, a new one or one in the place of what was planned so far. */
@Component
final class WishPlanner {

  private final ClubStore store;
  private final PlanDesk desk;

  WishPlanner(ClubStore store, PlanDesk desk) {
    this.store = store;
    this.desk = desk;
  }

  /**
   * What became of a wish.
   *
   * @param session the id of the stored session, or empty where nothing was stored
   * @param refused why nothing was stored
   * @param plan whether there is another plan now
   */
  record Outcome(String session, List<String> refused, Plan plan) {}

  /** Whether the plan is another one. */
  enum Plan {
    NEW,
    KEPT
  }

  /** Plans a new session. */
  Outcome newSession(WishForm.Wished wished) {
    return store.inOneStep(() -> planned(wished, new SessionId(store.freshId()), Optional.empty()));
  }

  /**
   * Changes a session. Its plan stays where only its name, day or place is another; it is made anew
   * where somebody else comes, the time or the courts changed, and nothing was played yet.
   */
  Outcome changed(WishForm.Wished wished, OpenSession open) {
    return store.inOneStep(
        () -> {
          if (asksForTheSame(wished, open.session())) {
            return stored(wished, open.session().id(), open.plan(), Plan.KEPT, open);
          }
          return PlanDesk.touched(open.progress()).isEmpty()
              ? planned(wished, open.session().id(), Optional.of(open))
              : refused(
                  List.of(
                      "Some of this session was played already, so who is there, the minutes, the"
                          + " courts and the drills stay as they are. Maybe change the blocks that"
                          + " are still to come by hand."));
        });
  }

  private boolean asksForTheSame(WishForm.Wished wished, Session session) {
    SessionWish before = desk.wish(session);
    return wished.walkIns().isEmpty()
        && wished.template().isEmpty()
        && wished.minutes() == before.minutes()
        && wished.courts() == before.courts()
        && wished.coverage() == before.coverage()
        && wished.more().equals(desk.more(session))
        && new HashSet<>(wished.present()).equals(new HashSet<>(session.plan().present()));
  }

  private Outcome planned(WishForm.Wished wished, SessionId id, Optional<OpenSession> before) {
    SessionWish wish =
        SessionWish.of(wished.minutes(), wished.courts())
            .withCoverage(wished.coverage())
            .withRequests(wished.more().requests());
    List<PlayerId> present = new ArrayList<>(wished.present());
    wished.walkIns().forEach(player -> present.add(player.id()));
    PlanProblem problem = desk.problem(present, wished.walkIns(), wish, wished.more());
    PlanAnswer answer =
        before
            .map(open -> SessionPlanner.planAnew(problem, open.plan()))
            .orElseGet(() -> SessionPlanner.plan(problem));
    if (answer instanceof PlanAnswer.Refused refused) {
      return refused(refused.sentences());
    }
    SessionPlan plan = ((PlanAnswer.Planned) answer).plan();
    if (wished.template().isPresent()) {
      plan = desk.fromTemplate(problem, plan, wished.template().get());
    }
    wished.walkIns().forEach(store.players()::save);
    return stored(wished, id, plan, Plan.NEW, before.orElse(null));
  }

  private Outcome stored(
      WishForm.Wished wished,
      SessionId id,
      SessionPlan plan,
      Plan made,
      @Nullable OpenSession before) {
    Session session =
        new Session(
            id,
            wished.name(),
            wished.date(),
            wished.start(),
            wished.venue(),
            wished.group(),
            plan,
            before == null ? Session.State.PLANNED : before.session().state());
    store.sessions().save(session);
    desk.keepWish(session, wished.coverage(), wished.more());
    return new Outcome(id.value(), List.of(), made);
  }

  private static Outcome refused(List<String> sentences) {
    return new Outcome("", sentences, Plan.KEPT);
  }
}
