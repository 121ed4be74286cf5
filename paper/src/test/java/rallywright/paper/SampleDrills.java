package rallywright.paper;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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
import rallywright.engine.drill.Yardstick;
import rallywright.engine.quantity.Source;
import rallywright.engine.score.BySide;
import rallywright.engine.score.Ending.Stroke;
import rallywright.engine.score.GameFormat;
import rallywright.engine.score.RoundThePost;

/** Drills made up for the tests of the printed pages. */
final class SampleDrills {

  private static final Advice ADVICE =
      new Advice(List.of(), List.of("Soft hands.", "Paddle up."), List.of(), List.of("Call ball."));

  private static final RallySeconds SECONDS =
      new RallySeconds(new SecondsPrior(8, 5), new SecondsPrior(10, 4), Source.ASSUMPTION);

  static final Drill STEPS =
      timed(
          "body-warm-up",
          "Body warm-up",
          "Walk, jog and side-step round the court, then arms and hips. Nobody is out of breath.",
          DrillKind.GENERAL_WARM_UP);

  static final Drill PADDLE =
      timed(
          "paddle-warm-up",
          "Paddle warm-up",
          "In pairs at the line: forehand dinks, backhand dinks, then both in turn.",
          DrillKind.PADDLE_WARM_UP);

  static final Drill DINK =
      game(
          "dink-game",
          "Dink game",
          "Every ball bounces in the kitchen or is taken out of the air; a ball past it loses.",
          RoundThePost.LEGAL_ON_FULL_COURT,
          layout(side(Role.EVEN, 7, HalfArea.KITCHEN), side(Role.EVEN, 7, HalfArea.KITCHEN)));

  static final Drill DROP =
      game(
          "drop-game",
          "Drop game",
          "Back drops until a ball can be followed to the line; up keeps it deep.",
          RoundThePost.NOT_ALLOWED,
          layout(
              side(Role.BACK, 21, HalfArea.BEHIND_THE_KITCHEN),
              side(Role.UP, 7, HalfArea.WHOLE_HALF)));

  static final Drill FULL =
      new Drill(
          new DrillKey("half-court-game"),
          "Half-court game",
          "Puts it all together with serve and return.",
          "Serve and return, then everything goes inside the lane.",
          DrillKind.FULL_GAME,
          Progression.FULL_POINT,
          new DrillForm.Scored(
              layout(
                  side(Role.SERVER, 22, HalfArea.WHOLE_HALF),
                  side(Role.RECEIVER, 22, HalfArea.WHOLE_HALF)),
              new Feed(Feed.By.SERVER, "A serve by the rules."),
              GameFormat.HALF_COURT_GAME,
              Serving.FIXED_LANE,
              RoundThePost.NOT_ALLOWED,
              RoleAdvantage.assumed(-0.2),
              SECONDS),
          Intensity.HARD,
          ADVICE);

  static final Yardstick DROPS =
      new Yardstick(
          new DrillKey("twenty-drops"),
          "Twenty drops",
          Skill.DROP,
          20,
          "The ball lands in the kitchen and could not be attacked.",
          "The feeder at the line feeds deep, the player drops from the baseline.",
          new Yardstick.OnCourt(Spot.feet(5, 21), Spot.feet(5, 7), HalfArea.KITCHEN),
          new Yardstick.Difficulty(0, 0.5, Source.ASSUMPTION),
          new SecondsPrior(6, 2),
          ADVICE);

  private static final List<Drill> ALL = List.of(STEPS, PADDLE, DINK, DROP, FULL);

  private SampleDrills() {}

  static DrillBook book() {
    return new DrillBook(
        key -> ALL.stream().filter(drill -> drill.key().equals(key)).findFirst(),
        key -> DROPS.key().equals(key) ? Optional.of(DROPS) : Optional.empty());
  }

  private static Drill timed(String key, String name, String rule, DrillKind kind) {
    return new Drill(
        new DrillKey(key),
        name,
        "Gets everybody ready.",
        rule,
        kind,
        Progression.WARM_UP,
        new DrillForm.Timed(Optional.empty(), Optional.empty(), 5),
        Intensity.EASY,
        ADVICE);
  }

  private static Drill game(
      String key, String name, String rule, RoundThePost roundThePost, Layout layout) {
    return new Drill(
        new DrillKey(key),
        name,
        "Isolates one skill.",
        rule,
        DrillKind.SCORED_GAME,
        Progression.LINE,
        new DrillForm.Scored(
            layout,
            new Feed(Feed.By.RALLY_WINNER, "A soft ball to start."),
            GameFormat.DRILL_GAME,
            Serving.FEED,
            roundThePost,
            layout.isEven() ? RoleAdvantage.NONE : RoleAdvantage.assumed(-0.85),
            SECONDS),
        Intensity.STEADY,
        ADVICE);
  }

  private static Layout layout(DrillSide near, DrillSide far) {
    return new Layout(List.of(Direction.values()), BySide.of(near, far));
  }

  private static DrillSide side(Role role, double feetFromNet, HalfArea bounds) {
    return new DrillSide(
        role,
        "Plays the part.",
        List.of(Stand.everywhere(Spot.feet(5, feetFromNet))),
        InBounds.everywhere(bounds),
        Set.of(Stroke.DINK, Stroke.DROP),
        role == Role.BACK ? Advance.MAY_COME_FORWARD : Advance.STAYS,
        new SkillWeights(Map.of(Skill.DINK, 0.5, Skill.DROP, 0.5)),
        Set.of());
  }
}
