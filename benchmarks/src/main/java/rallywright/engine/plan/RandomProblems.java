package rallywright.engine.plan;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import rallywright.engine.club.PlayerId;
import rallywright.engine.court.Direction;
import rallywright.engine.court.HalfArea;
import rallywright.engine.court.Spot;
import rallywright.engine.drill.Advance;
import rallywright.engine.drill.Advice;
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
import rallywright.engine.practice.PlayerStanding;
import rallywright.engine.practice.SkillStanding;
import rallywright.engine.quantity.Source;
import rallywright.engine.score.BySide;
import rallywright.engine.score.Ending.Stroke;
import rallywright.engine.score.GameFormat;
import rallywright.engine.score.RoundThePost;

/**
 * Sessions to plan, drawn at random from a seed: invented drills, players, times and courts. The
 * same seed gives the same problem.
 */
public final class RandomProblems {

  /** What skills are worth, made up: stored optima must not hang on the point model. */
  private static final Map<Skill, Double> WORTH =
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

  private static final List<List<String>> EQUIPMENT =
      List.of(List.of(), List.of("cones"), List.of("ball basket"));

  private final SplittableRandom random;

  private RandomProblems(long seed) {
    random = new SplittableRandom(seed);
  }

  /**
   * A problem.
   *
   * @param drills how many drills there are beside the warm-ups, 1 or more
   * @param seed fixes the draw
   * @return the problem
   */
  public static PlanProblem of(int drills, long seed) {
    return new RandomProblems(seed).problem(drills);
  }

  private PlanProblem problem(int count) {
    List<Drill> drills = new ArrayList<>(warmUps());
    for (int i = 0; i < count; i++) {
      boolean full = i % 12 == 11;
      drills.add(full ? fullGame("full-" + i) : game("drill-" + i));
    }
    List<Attendee> players = new ArrayList<>();
    int present = 2 + random.nextInt(11);
    for (int i = 0; i < present; i++) {
      players.add(player("P" + i));
    }
    SessionWish wish = SessionWish.of(45 + 5 * random.nextInt(16), 1 + random.nextInt(4));
    Coverage coverage = random.nextInt(2) == 0 ? Coverage.FULL : Coverage.NEEDS;
    PlanKnowledge knowledge = PlanKnowledge.firstIdeas(players).withWorth(player -> WORTH);
    return new PlanProblem(players, drills, wish.withCoverage(coverage), knowledge);
  }

  private Attendee player(String name) {
    PlayerStanding standing = PlayerStanding.newcomer(name, Optional.empty());
    double level = 0.6 * random.nextDouble(-1, 1);
    for (Skill skill : Skill.values()) {
      double mean = level + 0.8 * random.nextDouble(-1, 1);
      int rallies = random.nextInt(80);
      List<Double> minutes = List.of(20 * random.nextDouble(), 20 * random.nextDouble());
      standing =
          standing.with(
              new SkillStanding(skill, mean, random.nextDouble(0.1, 0.6), rallies, minutes));
    }
    return new Attendee(new PlayerId(name), standing, Set.of());
  }

  private Drill game(String key) {
    Progression[] places = {Progression.LINE, Progression.TRANSITION, Progression.BASELINE};
    Intensity intensity = List.of(Intensity.values()).get(random.nextInt(3));
    boolean even = random.nextInt(3) == 0;
    DrillSide a = side(even ? Role.EVEN : Role.BACK);
    DrillSide b = even ? a : side(Role.UP);
    RoleAdvantage advantage =
        even ? RoleAdvantage.NONE : RoleAdvantage.assumed(random.nextDouble(-1, 0.2));
    DrillForm form =
        new DrillForm.Scored(
            new Layout(directions(), BySide.of(a, b)),
            new Feed(Feed.By.IN_TURN, "A soft ball to start."),
            GameFormat.DRILL_GAME,
            Serving.FEED,
            RoundThePost.NOT_ALLOWED,
            advantage,
            seconds());
    Progression at = places[random.nextInt(places.length)];
    return drill(key, DrillKind.SCORED_GAME, at, form, intensity);
  }

  private Drill fullGame(String key) {
    DrillForm form =
        new DrillForm.Scored(
            new Layout(directions(), BySide.of(side(Role.SERVER), side(Role.RECEIVER))),
            new Feed(Feed.By.SERVER, "Serve diagonally."),
            GameFormat.HALF_COURT_GAME,
            Serving.BY_SCORE,
            RoundThePost.NOT_ALLOWED,
            RoleAdvantage.assumed(-0.1),
            seconds());
    return drill(key, DrillKind.FULL_GAME, Progression.FULL_POINT, form, Intensity.STEADY);
  }

  private List<Direction> directions() {
    return switch (random.nextInt(4)) {
      case 0 -> List.of(Direction.STRAIGHT);
      case 1 -> List.of(Direction.CROSS_EVEN, Direction.CROSS_ODD);
      default -> List.of(Direction.values());
    };
  }

  private RallySeconds seconds() {
    return new RallySeconds(
        new SecondsPrior(4 + random.nextInt(6), 3),
        new SecondsPrior(8 + random.nextInt(5), 3),
        Source.ASSUMPTION);
  }

  private DrillSide side(Role role) {
    Map<Skill, Double> weights = new EnumMap<>(Skill.class);
    Skill first = List.of(Skill.values()).get(random.nextInt(Skill.values().length));
    Skill second = List.of(Skill.values()).get(random.nextInt(Skill.values().length));
    double share = 0.5 + 0.1 * random.nextInt(5);
    weights.merge(first, share, Double::sum);
    weights.merge(second, 1 - share, Double::sum);
    return new DrillSide(
        role,
        "Keeps the ball in play.",
        List.of(Stand.everywhere(Spot.feet(5, 8))),
        InBounds.everywhere(HalfArea.WHOLE_HALF),
        Set.of(Stroke.DINK),
        Advance.STAYS,
        new SkillWeights(weights),
        Set.of());
  }

  private List<Drill> warmUps() {
    DrillForm form = new DrillForm.Timed(Optional.empty(), Optional.empty(), 5);
    return List.of(
        drill("body", DrillKind.GENERAL_WARM_UP, Progression.WARM_UP, form, Intensity.EASY),
        drill("paddle", DrillKind.PADDLE_WARM_UP, Progression.WARM_UP, form, Intensity.EASY));
  }

  private Drill drill(
      String key, DrillKind kind, Progression at, DrillForm form, Intensity intensity) {
    List<String> equipment =
        kind.isScored() ? EQUIPMENT.get(random.nextInt(EQUIPMENT.size())) : List.of();
    return new Drill(
        new DrillKey(key),
        "The " + key,
        "A drill drawn at random.",
        "Drawn at random.",
        kind,
        at,
        form,
        intensity,
        new Advice(equipment, List.of(), List.of(), List.of("Stop at pain.")));
  }
}
