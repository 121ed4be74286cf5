package rallywright.paper;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rallywright.catalogue.Catalogue;
import rallywright.engine.club.Limit;
import rallywright.engine.club.Player;
import rallywright.engine.drill.Skill;
import rallywright.engine.plan.Attendee;
import rallywright.engine.plan.PlanAnswer;
import rallywright.engine.plan.PlanProblem;
import rallywright.engine.plan.SearchWatch;
import rallywright.engine.plan.SessionPlanner;
import rallywright.engine.plan.SessionWish;
import rallywright.engine.practice.PlayerStanding;
import rallywright.engine.practice.SkillStanding;
import rallywright.engine.session.Session;
import rallywright.engine.session.SessionId;

/** Sessions of invented people as the planner makes them from the drills that ship. */
final class PlannedSessions {

  private PlannedSessions() {}

  /** A sheet must hold any full plan, also one that is not the best. */
  private static SearchWatch.Verdict oneRound(SearchWatch.Progress progress) {
    return SearchWatch.Verdict.STOP;
  }

  /** A session of players who differ, so that some games have head starts. */
  static SheetRequest of(int players, int minutes, int courts) {
    return of(players, minutes, courts, Map.of());
  }

  /** The same where some have a limit: the place of the player, then the limit. */
  static SheetRequest of(int players, int minutes, int courts, Map<Integer, Limit> limits) {
    List<Player> present = SampleSession.usual(players).request().players();
    List<Attendee> attendees = new ArrayList<>();
    for (int place = 0; place < players; place++) {
      Set<Limit> spared = limits.containsKey(place) ? Set.of(limits.get(place)) : Set.of();
      attendees.add(attendee(present.get(place), 0.45 * Math.sin(2.0 * place + 1), spared));
    }
    Catalogue catalogue = Catalogue.shipped();
    SessionWish wish = SessionWish.of(minutes, courts);
    PlanProblem problem = PlanProblem.of(attendees, catalogue.drills(), wish);
    PlanAnswer answer = SessionPlanner.plan(problem, PlannedSessions::oneRound);
    if (!(answer instanceof PlanAnswer.Planned planned)) {
      throw new IllegalStateException("The session could not be planned: " + answer);
    }
    Session session =
        new Session(
            new SessionId("s7"),
            "Line to baseline",
            LocalDate.of(2026, 11, 24),
            LocalTime.of(18, 0),
            null,
            null,
            planned.plan(),
            Session.State.PLANNED);
    return new SheetRequest(
        session,
        present,
        new DrillBook(catalogue::drill, catalogue::yardstick),
        new PhoneAccess.Open(SampleSession.ADDRESS),
        Origin.DEMO);
  }

  private static Attendee attendee(Player player, double strength, Set<Limit> limits) {
    PlayerStanding standing = PlayerStanding.newcomer(player.firstName(), Optional.empty());
    for (Skill skill : Skill.values()) {
      standing = standing.with(new SkillStanding(skill, strength, 0.2, 100, List.of(10.0)));
    }
    return new Attendee(player.id(), standing, limits);
  }
}
