package rallywright.web.plan;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import rallywright.catalogue.Catalogue;
import rallywright.engine.club.Player;
import rallywright.engine.club.PlayerId;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.DrillKey;
import rallywright.engine.plan.Attendee;
import rallywright.engine.plan.BlockId;
import rallywright.engine.plan.Coverage;
import rallywright.engine.plan.Line;
import rallywright.engine.plan.PlanEdit;
import rallywright.engine.plan.PlanEditor;
import rallywright.engine.plan.PlanKnowledge;
import rallywright.engine.plan.PlanProblem;
import rallywright.engine.plan.PlannedBlock;
import rallywright.engine.plan.SessionPlan;
import rallywright.engine.plan.SessionWish;
import rallywright.engine.practice.PlayerStanding;
import rallywright.engine.practice.SkillWorth;
import rallywright.engine.reading.ClubReading;
import rallywright.engine.reading.PracticeReading;
import rallywright.engine.season.SeasonWeek;
import rallywright.engine.session.GameProgress;
import rallywright.engine.session.Session;
import rallywright.engine.session.SessionProgress;
import rallywright.store.ClubStore;
import rallywright.web.page.NotHere;
import rallywright.web.progress.ClubReadings;

/** Joins who is there, what their scores say and the drills into a problem for the planner. */
@Component
class PlanDesk {

  private static final String COVERAGE = "plan.coverage.";
  private static final String MORE = "plan.more.";

  private final ClubStore store;
  private final ClubReadings readings;
  private final Catalogue catalogue = Catalogue.shipped();
  private final AtomicReference<@Nullable KeptEditor> kept = new AtomicReference<>();

  PlanDesk(ClubStore store, ClubReadings readings) {
    this.store = store;
    this.readings = readings;
  }

  List<Drill> drills() {
    return catalogue.drills();
  }

  Optional<Drill> drill(PlannedBlock block) {
    return catalogue.drill(block.drill());
  }

  /**
   * Everything that a plan for these players is made from.
   *
   * @param present who is there, walk-ins included
   * @param walkIns those of them who are not stored yet
   * @param wish what the coach asks for
   * @param more who only fills in, and which skills stand in front
   */
  PlanProblem problem(
      List<PlayerId> present, List<Player> walkIns, SessionWish wish, MoreWishes more) {
    ClubReading reading = readings.now();
    List<Attendee> attendees = attendees(present);
    for (Player walkIn : walkIns) {
      PlayerStanding standing = PlayerStanding.newcomer(walkIn.firstName(), Optional.empty());
      attendees.add(new Attendee(walkIn.id(), standing, walkIn.limits()));
    }
    PlayerWishes single = more.single();
    attendees.replaceAll(
        each -> each.withWeight(single.weight(each.id())).during(single.stay(each.id())));
    attendees.replaceAll(
        each -> more.fillsIn().filter(each.id()::equals).isPresent() ? each.fillingIn() : each);
    PlanKnowledge knowledge =
        PlanKnowledge.firstIdeas(attendees)
            .withPaces(reading.paces())
            .withGains(PracticeReading.beside(reading.gains()));
    SkillWorth focused = SeasonWeek.inFront(knowledge.worth(), more.focus());
    return new PlanProblem(attendees, catalogue.drills(), wish, knowledge.withWorth(focused))
        .withYardsticks(catalogue.yardsticks());
  }

  /** What is known of players who are stored. */
  List<Attendee> attendees(List<PlayerId> ids) {
    ClubReading reading = readings.now();
    List<Attendee> attendees = new ArrayList<>();
    for (PlayerId id : ids) {
      store.players().find(id).ifPresent(player -> attendees.add(attendee(player, reading)));
    }
    return attendees;
  }

  private static Attendee attendee(Player player, ClubReading reading) {
    PlayerStanding standing;
    try {
      standing = reading.standing(player.id());
    } catch (IllegalArgumentException cameSince) {
      // Somebody was put on the list between the reading and this look at the list.
      standing = PlayerStanding.newcomer(player.firstName(), Optional.ofNullable(player.level()));
    }
    return new Attendee(player.id(), standing, player.limits());
  }

  /**
   * The problem behind a stored session.
   *
   * @throws NotHere if a drill of its plan is no longer in the list
   */
  PlanProblem problem(Session session) {
    session.plan().blocks().stream()
        .filter(block -> !block.games().isEmpty())
        .map(PlannedBlock::drill)
        .filter(key -> catalogue.drills().stream().noneMatch(drill -> drill.key().equals(key)))
        .findFirst()
        .ifPresent(PlanDesk::refuseGone);
    return problem(session.plan().present(), List.of(), wish(session), more(session));
  }

  private static void refuseGone(DrillKey drill) {
    throw new NotHere(
        ("The drill \"%s\" of this plan is not in the list of drills any more, so the plan cannot"
                + " be changed. The session can still be scored and looked at; maybe plan a new"
                + " one.")
            .formatted(drill));
  }

  SessionWish wish(Session session) {
    Coverage coverage =
        store.settings().get(COVERAGE + session.id()).map(Coverage::valueOf).orElse(Coverage.FULL);
    return SessionWish.of(session.plan().minutes(), session.plan().courts())
        .withCoverage(coverage)
        .withRequests(more(session).requests());
  }

  /** What was asked for beyond the usual. */
  MoreWishes more(Session session) {
    MoreWishes more =
        store.settings().get(MORE + session.id()).map(MoreWishes::of).orElse(MoreWishes.NONE);
    return more.with(more.single().startingAt(session.start()));
  }

  void keepWish(Session session, Coverage coverage, MoreWishes more) {
    store.settings().put(COVERAGE + session.id(), coverage.name());
    store.settings().put(MORE + session.id(), more.text());
  }

  /** A change of a plan; a wish or a drill that is no longer there is answered as a refusal. */
  PlanEdit edit(Session session, Function<PlanEditor, PlanEdit> change) {
    try {
      return withEditor(session, change);
    } catch (IllegalArgumentException unmet) {
      return new PlanEdit.Refused(String.valueOf(unmet.getMessage()));
    }
  }

  /**
   * Lets an editor of a stored session's plan do some work. The last editor is kept for the next
   * change of the same session, as long as nothing that it was made from is another; it is out of
   * the hands of everybody else while it works.
   */
  <T> T withEditor(Session session, Function<PlanEditor, T> work) {
    MadeFrom now =
        new MadeFrom(readings.now(), session.plan().present(), wish(session), more(session));
    KeptEditor last = kept.getAndSet(null);
    KeptEditor editor =
        last != null && last.from().equals(now)
            ? last
            : new KeptEditor(now, PlanEditor.of(problem(session)));
    T answer = work.apply(editor.editor());
    kept.set(editor);
    return answer;
  }

  private record MadeFrom(
      ClubReading reading, List<PlayerId> present, SessionWish wish, MoreWishes more) {}

  private record KeptEditor(MadeFrom from, PlanEditor editor) {}

  /** The blocks that were begun or hold a score; they may not be changed any more. */
  static Set<BlockId> touched(SessionProgress progress) {
    Set<BlockId> touched = new HashSet<>();
    for (PlannedBlock block : progress.session().plan().blocks()) {
      boolean scored =
          block.games().stream()
              .flatMap(game -> progress.game(game.id()).stream())
              .anyMatch(game -> game.status() != GameProgress.Status.NOT_BEGUN);
      if (scored
          || progress.startedAt(block.id()).isPresent()
          || !progress.yardsticks(block.id()).isEmpty()) {
        touched.add(block.id());
      }
    }
    return touched;
  }

  /** The blocks of a template with today's players: warm-ups of the plan, then its drills. */
  SessionPlan fromTemplate(PlanProblem problem, SessionPlan planned, SessionPlan template) {
    PlanEditor editor = PlanEditor.of(problem);
    SessionPlan plan =
        planned.withBlocks(
            planned.blocks().stream()
                .filter(block -> block.kind() == PlannedBlock.Kind.WARM_UP)
                .toList());
    for (PlannedBlock block : template.blocks()) {
      if (!block.games().isEmpty()) {
        plan = withTemplateBlock(editor, plan, block);
      } else if (block.kind() != PlannedBlock.Kind.WARM_UP) {
        List<PlannedBlock> withBreak = new ArrayList<>(plan.blocks());
        withBreak.add(block);
        plan = plan.withBlocks(withBreak);
      }
    }
    return plan;
  }

  private static SessionPlan withTemplateBlock(
      PlanEditor editor, SessionPlan plan, PlannedBlock block) {
    Line line = Line.of(block.games().get(0).place().lane());
    PlanEdit added = editor.add(plan, block.drill(), line, plan.blocks().size());
    if (!(added instanceof PlanEdit.Changed first)) {
      return plan;
    }
    SessionPlan grown = first.plan();
    int place = grown.blocks().size() - 1;
    while (turns(grown.blocks().get(place)) < turns(block)) {
      PlanEdit more = editor.moreGames(grown, grown.blocks().get(place).id());
      if (!(more instanceof PlanEdit.Changed changed)) {
        return grown;
      }
      grown = changed.plan();
    }
    return grown;
  }

  static int turns(PlannedBlock block) {
    return block.games().stream().mapToInt(game -> game.turn()).max().orElse(0);
  }
}
