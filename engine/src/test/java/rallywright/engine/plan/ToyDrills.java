package rallywright.engine.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import rallywright.engine.club.PlayerId;
import rallywright.engine.court.Direction;
import rallywright.engine.court.HalfArea;
import rallywright.engine.court.Spot;
import rallywright.engine.drill.Advance;
import rallywright.engine.drill.Advice;
import rallywright.engine.drill.Demand;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.DrillForm;
import rallywright.engine.drill.DrillKey;
import rallywright.engine.drill.DrillKind;
import rallywright.engine.drill.DrillSide;
import rallywright.engine.drill.Feed;
import rallywright.engine.drill.InBounds;
import rallywright.engine.drill.Intensity;
import rallywright.engine.drill.Layout;
import rallywright.engine.drill.Progression;
import rallywright.engine.drill.RallySeconds;
import rallywright.engine.drill.Role;
import rallywright.engine.drill.RoleAdvantage;
import rallywright.engine.drill.SecondsPrior;
import rallywright.engine.drill.Serving;
import rallywright.engine.drill.Skill;
import rallywright.engine.drill.SkillWeights;
import rallywright.engine.drill.Stand;
import rallywright.engine.drill.Yardstick;
import rallywright.engine.practice.PlayerStanding;
import rallywright.engine.practice.SkillStanding;
import rallywright.engine.practice.SkillWorth;
import rallywright.engine.quantity.Source;
import rallywright.engine.score.BySide;
import rallywright.engine.score.Ending.Stroke;
import rallywright.engine.score.GameFormat;
import rallywright.engine.score.RoundThePost;

/** Drills and players invented for the tests of the plan. */
public final class ToyDrills {

  /** What skills are worth, made up: so that tests of rules do not hang on the point model. */
  static final SkillWorth WORTH =
      player ->
          Map.ofEntries(
              Map.entry(Skill.SERVE, 0.08),
              Map.entry(Skill.RETURN, 0.10),
              Map.entry(Skill.DRIVE, 0.06),
              Map.entry(Skill.DROP, 0.14),
              Map.entry(Skill.RESET, 0.13),
              Map.entry(Skill.DINK, 0.14),
              Map.entry(Skill.ATTACK, 0.08),
              Map.entry(Skill.COUNTER, 0.11),
              Map.entry(Skill.PRESSING_VOLLEY, 0.10),
              Map.entry(Skill.LOB, 0.02),
              Map.entry(Skill.OVERHEAD, 0.04));

  /** A problem in which skills have the made-up worth. */
  static PlanProblem problem(List<Attendee> attendees, List<Drill> drills, SessionWish wish) {
    PlanKnowledge knowledge = PlanKnowledge.firstIdeas(attendees).withWorth(WORTH);
    return new PlanProblem(attendees, drills, wish, knowledge);
  }

  static final RallySeconds SECONDS =
      new RallySeconds(new SecondsPrior(8, 5), new SecondsPrior(10, 4), Source.ASSUMPTION);

  private ToyDrills() {}

  public static List<Drill> all() {
    List<Drill> drills = new ArrayList<>(warmUps());
    drills.add(even("dinks", Skill.DINK, Progression.LINE, Intensity.EASY));
    drills.add(even("hands", Skill.COUNTER, Progression.LINE, Intensity.HARD));
    drills.add(even("speed-ups", Skill.ATTACK, Progression.LINE, Intensity.HARD));
    drills.add(uneven("resets", Skill.RESET, Skill.PRESSING_VOLLEY, Progression.TRANSITION));
    drills.add(uneven("drops", Skill.DROP, Skill.PRESSING_VOLLEY, Progression.BASELINE));
    drills.add(uneven("drives", Skill.DRIVE, Skill.COUNTER, Progression.BASELINE));
    drills.add(overheads());
    drills.add(full());
    return drills;
  }

  public static List<Drill> warmUps() {
    return List.of(
        timed("general", DrillKind.GENERAL_WARM_UP, 5),
        timed("paddle", DrillKind.PADDLE_WARM_UP, 5),
        timed("volleys", DrillKind.VOLLEY_WARM_UP, 4));
  }

  public static Drill even(String key, Skill skill, Progression progression, Intensity intensity) {
    DrillSide side = side(Role.EVEN, skill, Set.of());
    return drill(
        key, DrillKind.SCORED_GAME, progression, game(side, side, RoleAdvantage.NONE), intensity);
  }

  public static Drill uneven(String key, Skill back, Skill up, Progression progression) {
    DrillSide a = side(Role.BACK, back, Set.of());
    DrillSide b = side(Role.UP, up, Set.of());
    DrillForm.Scored game = game(a, b, RoleAdvantage.assumed(-0.85));
    return drill(key, DrillKind.SCORED_GAME, progression, game, Intensity.STEADY);
  }

  /** The player up must strike overheads; the lobber need not. */
  public static Drill overheads() {
    DrillSide a = side(Role.BACK, Skill.LOB, Set.of());
    DrillSide b = side(Role.UP, Skill.OVERHEAD, Set.of(Demand.OVERHEADS));
    DrillForm.Scored game = game(a, b, RoleAdvantage.assumed(-0.4));
    return drill("lobs", DrillKind.SCORED_GAME, Progression.BASELINE, game, Intensity.STEADY);
  }

  /** The player up must lunge; the other one need not. */
  static Drill lunging(String key) {
    DrillSide a = side(Role.BACK, Skill.DINK, Set.of());
    DrillSide b = side(Role.UP, Skill.DINK, Set.of(Demand.LUNGING));
    DrillForm.Scored game = game(a, b, RoleAdvantage.assumed(0.2));
    return drill(key, DrillKind.SCORED_GAME, Progression.LINE, game, Intensity.STEADY);
  }

  public static Drill full() {
    DrillForm.Scored game =
        new DrillForm.Scored(
            new Layout(
                List.of(Direction.values()),
                BySide.of(
                    side(Role.SERVER, Skill.SERVE, Set.of()),
                    side(Role.RECEIVER, Skill.RETURN, Set.of()))),
            new Feed(Feed.By.SERVER, "Serve diagonally."),
            GameFormat.HALF_COURT_GAME,
            Serving.BY_SCORE,
            RoundThePost.NOT_ALLOWED,
            RoleAdvantage.assumed(-0.1),
            SECONDS);
    return drill("full", DrillKind.FULL_GAME, Progression.FULL_POINT, game, Intensity.STEADY);
  }

  /** Two against two on a whole court. */
  static Drill doubles(String key, Skill skill) {
    DrillSide side = side(Role.EVEN, skill, 2);
    DrillForm.Scored game = game(side, side, RoleAdvantage.NONE);
    return drill(key, DrillKind.SCORED_GAME, Progression.LINE, game, Intensity.EASY);
  }

  /** Two at the baseline against one at the line. */
  static Drill twoAgainstOne(String key) {
    DrillSide back = side(Role.BACK, Skill.DROP, 2);
    DrillSide up = side(Role.UP, Skill.PRESSING_VOLLEY, 1);
    DrillForm.Scored game = game(back, up, RoleAdvantage.assumed(0.2));
    return drill(key, DrillKind.SCORED_GAME, Progression.BASELINE, game, Intensity.STEADY);
  }

  /** Two who keep a rally going for ten minutes. */
  static Drill together(String key, Skill skill) {
    DrillSide side = side(Role.EVEN, skill, 1);
    DrillForm form =
        new DrillForm.Timed(
            Optional.of(new Layout(List.of(Direction.values()), BySide.of(side, side))),
            Optional.of(new Feed(Feed.By.IN_TURN, "A soft ball to start.")),
            10);
    return drill(key, DrillKind.COOPERATIVE, Progression.LINE, form, Intensity.EASY);
  }

  /** The same drill with things to bring. */
  static Drill needing(Drill drill, String equipment) {
    Advice advice = drill.advice();
    return new Drill(
        drill.key(),
        drill.name(),
        drill.purpose(),
        drill.rule(),
        drill.kind(),
        drill.progression(),
        drill.form(),
        drill.intensity(),
        new Advice(List.of(equipment), advice.cues(), advice.mistakes(), advice.safety()));
  }

  /** A test of one skill with twenty balls of six seconds, nobody feeds. */
  public static Yardstick yardstick(String key, Skill skill) {
    return new Yardstick(
        new DrillKey(key),
        "Twenty " + key,
        skill,
        20,
        "Lands in the kitchen.",
        "From the baseline.",
        new Yardstick.OnCourt(
            Direction.STRAIGHT, Spot.feet(5, 22), Optional.empty(), HalfArea.WHOLE_HALF),
        new Yardstick.Difficulty(0, 0.5, Source.ASSUMPTION),
        new SecondsPrior(6, 2),
        new Advice(List.of(), List.of(), List.of(), List.of("Stop at pain.")));
  }

  private static DrillSide side(Role role, Skill skill, int players) {
    return new DrillSide(
        role,
        "Keeps the ball in play.",
        Collections.nCopies(players, Stand.everywhere(Spot.feet(5, 8))),
        InBounds.everywhere(HalfArea.WHOLE_HALF),
        Set.of(Stroke.DINK),
        Advance.STAYS,
        SkillWeights.only(skill),
        Set.of());
  }

  private static DrillForm.Scored game(DrillSide a, DrillSide b, RoleAdvantage advantage) {
    return new DrillForm.Scored(
        new Layout(List.of(Direction.values()), BySide.of(a, b)),
        new Feed(Feed.By.RALLY_WINNER, "A soft ball to start."),
        GameFormat.DRILL_GAME,
        Serving.FEED,
        RoundThePost.LEGAL_ON_FULL_COURT,
        advantage,
        SECONDS);
  }

  private static Drill timed(String key, DrillKind kind, double minutes) {
    DrillForm form = new DrillForm.Timed(Optional.empty(), Optional.empty(), minutes);
    return drill(key, kind, Progression.WARM_UP, form, Intensity.EASY);
  }

  private static DrillSide side(Role role, Skill skill, Set<Demand> demands) {
    return new DrillSide(
        role,
        "Keeps the ball in play.",
        List.of(Stand.everywhere(Spot.feet(5, 8))),
        InBounds.everywhere(HalfArea.WHOLE_HALF),
        Set.of(Stroke.DINK),
        Advance.STAYS,
        SkillWeights.only(skill),
        demands);
  }

  private static Drill drill(
      String key, DrillKind kind, Progression at, DrillForm form, Intensity intensity) {
    return new Drill(
        new DrillKey(key),
        "The " + key,
        "A drill made up for tests.",
        "Made up for tests.",
        kind,
        at,
        form,
        intensity,
        new Advice(List.of(), List.of(), List.of(), List.of("Stop at pain.")));
  }

  /** Players with skills that differ a little, all of them seen often enough. */
  static List<Attendee> players(int count) {
    List<Attendee> players = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      String name = "P" + i;
      PlayerStanding standing = PlayerStanding.newcomer(name, Optional.empty());
      for (Skill skill : Skill.values()) {
        double mean = 0.2 * Math.sin(3.0 * i + 7.0 * skill.words().length());
        standing = standing.with(new SkillStanding(skill, mean, 0.2, 100, List.of(10.0)));
      }
      players.add(new Attendee(new PlayerId(name), standing, Set.of()));
    }
    return players;
  }

  static Attendee with(Attendee player, Skill skill, double mean) {
    SkillStanding standing = new SkillStanding(skill, mean, 0.2, 100, List.of(0.0, 0.0, 0.0));
    return new Attendee(player.id(), player.standing().with(standing), player.limits());
  }

  static PlanAnswer.Planned planned(PlanProblem problem) {
    PlanAnswer answer = SessionPlanner.plan(problem);
    if (answer instanceof PlanAnswer.Planned planned) {
      return planned;
    }
    throw new AssertionError(answer.toString());
  }

  static Map<String, Double> minutesByDrill(SessionPlan plan) {
    Map<String, Double> minutes = new TreeMap<>();
    for (PlannedBlock block : plan.blocks()) {
      minutes.merge(block.drill().value(), block.time().mean(), Double::sum);
    }
    return minutes;
  }
}
