package rallywright.web.demo;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.random.RandomGenerator;
import rallywright.catalogue.Catalogue;
import rallywright.engine.club.Group;
import rallywright.engine.club.Player;
import rallywright.engine.club.PlayerId;
import rallywright.engine.drill.Skill;
import rallywright.engine.drill.Yardstick;
import rallywright.engine.plan.Attendee;
import rallywright.engine.plan.BlockId;
import rallywright.engine.plan.BlockTime;
import rallywright.engine.plan.PlanAnswer;
import rallywright.engine.plan.PlanKnowledge;
import rallywright.engine.plan.PlanProblem;
import rallywright.engine.plan.PlannedBlock;
import rallywright.engine.plan.SearchWatch;
import rallywright.engine.plan.SessionPlan;
import rallywright.engine.plan.SessionPlanner;
import rallywright.engine.plan.SessionWish;
import rallywright.engine.reading.ClubHistory;
import rallywright.engine.reading.ClubReading;
import rallywright.engine.session.CourtEvent;
import rallywright.engine.session.GameFormats;
import rallywright.engine.session.Session;
import rallywright.engine.session.SessionId;
import rallywright.engine.session.SessionProgress;
import rallywright.engine.simulation.ClubTruth;
import rallywright.engine.simulation.SeededIds;
import rallywright.engine.simulation.SimulatedSession;
import rallywright.engine.simulation.TrueSkills;
import rallywright.engine.skill.SkillPrior;

/** Plans and plays the demo's sessions one after the other, each from what the ones before say. */
final class DemoHistory {

  private static final LocalTime START = LocalTime.of(18, 0);
  private static final int MINUTES = 90;
  private static final int YARDSTICK_MINUTES = 10;
  private static final int FEWEST = 6;
  private static final int YARDSTICK_EVERY = 4;

  private final InventedPeople people;
  private final Catalogue catalogue;
  private final ZoneId zone;
  private final RandomGenerator random;
  private final SeededIds ids;
  private final List<SessionProgress> past = new ArrayList<>();
  private final Map<PlayerId, Map<Skill, Double>> practised = new HashMap<>();
  private final List<TrueSkills> weeks = new ArrayList<>();
  private ClubTruth truth;

  private DemoHistory(
      InventedPeople people, Catalogue catalogue, ZoneId zone, RandomGenerator random) {
    this.people = people;
    this.catalogue = catalogue;
    this.zone = zone;
    this.random = random;
    this.ids = SeededIds.of(random);
    this.truth =
        ClubTruth.drawn(
            TrueSkills.drawn(people.players(), SkillPrior.DEFAULT, random),
            catalogue.drills(),
            catalogue.yardsticks(),
            random);
    this.weeks.add(truth.skills());
  }

  /** A session with all that was noted. */
  record Played(Session session, List<CourtEvent> events) {}

  static DemoHistory begin(
      InventedPeople people, Catalogue catalogue, ZoneId zone, RandomGenerator random) {
    return new DemoHistory(people, catalogue, zone, random);
  }

  /** Who is in the club. */
  InventedPeople people() {
    return people;
  }

  /** What is true now. */
  ClubTruth truth() {
    return truth;
  }

  /** What was true in each week so far, the first week first. */
  List<TrueSkills> weeks() {
    return List.copyOf(weeks);
  }

  /** Every session so far. */
  List<SessionProgress> past() {
    return List.copyOf(past);
  }

  /** A week later: skills wander, and what was practised since the last time feeds them. */
  void nextWeek() {
    truth = truth.withSkills(truth.skills().afterWeek(SkillPrior.DEFAULT, practised, random));
    weeks.add(truth.skills());
    practised.clear();
  }

  Played played(Group group, LocalDate date) {
    Session planned = planned(group, date);
    if (past.size() % YARDSTICK_EVERY == 0) {
      planned = planned.withPlan(withYardstick(planned.plan()));
    }
    Session session = planned.withState(Session.State.DONE);
    List<CourtEvent> events =
        SimulatedSession.play(
            session,
            truth,
            new SimulatedSession.Trade(catalogue.drills(), catalogue.yardsticks()),
            date.atTime(START).atZone(zone).toInstant().toEpochMilli(),
            random);
    past.add(
        SessionProgress.of(
            session,
            (block, game) -> GameFormats.of(catalogue.drill(block.drill()), block, game),
            events));
    notePractice(session.plan());
    return new Played(session, events);
  }

  Session planned(Group group, LocalDate date) {
    List<Player> present = present(group);
    ClubReading reading =
        ClubReading.withUsualSpreads(
            new ClubHistory(
                people.players(), catalogue.drills(), catalogue.yardsticks(), past, date));
    List<Attendee> attendees =
        present.stream()
            .map(each -> new Attendee(each.id(), reading.standing(each.id()), each.limits()))
            .toList();
    int courts = present.size() > 8 ? 3 : 2;
    SessionWish wish = SessionWish.of(MINUTES, courts);
    // The simulation lets every lane wait after each game; its evenings are planned from taps
    // alone.
    PlanKnowledge knowledge =
        PlanKnowledge.firstIdeas(attendees).withPaces(reading.paces().ofTapsAlone());
    PlanProblem problem = new PlanProblem(attendees, catalogue.drills(), wish, knowledge);
    PlanAnswer answer = SessionPlanner.plan(problem, afterOneRound -> SearchWatch.Verdict.STOP);
    if (answer instanceof PlanAnswer.Planned found) {
      return new Session(
          new SessionId(ids.next()),
          group.name(),
          date,
          START,
          people.venue().id(),
          group.id(),
          found.plan(),
          Session.State.PLANNED);
    }
    throw new IllegalStateException("The demo's session could not be planned: " + answer);
  }

  private List<Player> present(Group group) {
    List<Player> present = new ArrayList<>();
    for (Player player : people.players()) {
      boolean member = group.members().contains(player.id());
      if (random.nextDouble() < (member ? 0.9 : 0.25)) {
        present.add(player);
      }
    }
    for (Player player : people.players()) {
      if (present.size() < FEWEST && !present.contains(player)) {
        present.add(player);
      }
    }
    return present;
  }

  private SessionPlan withYardstick(SessionPlan plan) {
    List<Yardstick> choice = catalogue.yardsticks();
    Yardstick chosen = choice.get((past.size() / YARDSTICK_EVERY) % choice.size());
    List<PlannedBlock> blocks = new ArrayList<>(plan.blocks());
    blocks.add(
        new PlannedBlock(
            new BlockId(chosen.key().value() + "-1"),
            PlannedBlock.Kind.YARDSTICK,
            chosen.key(),
            PlannedBlock.End.BY_CLOCK,
            new BlockTime(YARDSTICK_MINUTES, 1),
            List.of(),
            List.of(),
            "A count to compare with later ones."));
    return new SessionPlan(
        plan.minutes() + YARDSTICK_MINUTES, plan.courts(), plan.present(), blocks);
  }

  private void notePractice(SessionPlan plan) {
    for (PlannedBlock block : plan.blocks()) {
      Optional<Set<Skill>> skills = catalogue.drill(block.drill()).map(d -> d.skills());
      if (!block.games().isEmpty() && skills.isPresent() && !skills.get().isEmpty()) {
        double each = block.time().mean() / skills.get().size();
        for (PlayerId player : plan.present()) {
          Map<Skill, Double> minutes =
              practised.computeIfAbsent(player, who -> new EnumMap<>(Skill.class));
          skills.get().forEach(skill -> minutes.merge(skill, each, Double::sum));
        }
      }
    }
  }
}
