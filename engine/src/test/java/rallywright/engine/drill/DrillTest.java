package rallywright.engine.drill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rallywright.engine.court.Direction;
import rallywright.engine.court.HalfArea;
import rallywright.engine.court.Lane;
import rallywright.engine.court.Spot;
import rallywright.engine.quantity.Source;
import rallywright.engine.score.BySide;
import rallywright.engine.score.Ending.Stroke;
import rallywright.engine.score.GameFormat;
import rallywright.engine.score.Places;
import rallywright.engine.score.RoundThePost;
import rallywright.engine.score.ServiceCourt;
import rallywright.engine.score.Side;

class DrillTest {

  private static final Feed FEED = new Feed(Feed.By.RALLY_WINNER, "A soft ball to start.");
  private static final RallySeconds SECONDS =
      new RallySeconds(new SecondsPrior(8, 5), new SecondsPrior(10, 4), Source.ASSUMPTION);
  private static final Advice ADVICE =
      new Advice(List.of(), List.of(), List.of(), List.of("Stop at pain."));

  @Test
  void weights_thatDoNotSumToOne_areRefused() {
    assertThatThrownBy(() -> new SkillWeights(Map.of(Skill.DINK, 0.5, Skill.DROP, 0.4)))
        .hasMessage("The weights sum to 0.9000 but must sum to 1. Maybe a skill is missing.");
    assertThatThrownBy(() -> new SkillWeights(Map.of(Skill.DINK, 40.0)))
        .hasMessageContaining("from 0 to 1")
        .hasMessageContaining("40 % is 0.4");
    assertThatThrownBy(() -> new SkillWeights(Map.of(Skill.DINK, Double.NaN)))
        .hasMessageContaining("NaN");
    assertThatThrownBy(() -> new SkillWeights(Map.of())).hasMessageContaining("sum to 1");
  }

  @Test
  void weights_givenAsThirds_sumToExactlyOne() {
    SkillWeights thirds =
        new SkillWeights(
            Map.of(Skill.DINK, 0.3333333, Skill.DROP, 0.3333333, Skill.RESET, 0.3333334));
    assertThat(thirds.shares().values().stream().mapToDouble(Double::doubleValue).sum())
        .isCloseTo(1, within(1e-15));
    assertThat(thirds.of(Skill.LOB)).isZero();
    assertThat(thirds.skills()).containsExactly(Skill.DROP, Skill.RESET, Skill.DINK);
  }

  @Test
  void evenDrill_withAnAdvantage_isRefused() {
    Layout even = layout(side(Role.EVEN), side(Role.EVEN));
    assertThatThrownBy(() -> game(even, RoleAdvantage.assumed(-0.2)))
        .hasMessageContaining("must be 0 in an even drill");
    assertThat(game(even, RoleAdvantage.NONE).advantage().chanceBetweenEquals()).isEqualTo(0.5);
  }

  @Test
  void unevenDrill_withoutSpreadOfTheAdvantage_isRefused() {
    Layout uneven = layout(side(Role.BACK), side(Role.UP));
    assertThatThrownBy(() -> game(uneven, RoleAdvantage.NONE))
        .hasMessageContaining("needs an advantage with a spread");
  }

  /** Arithmetic: 1 / (1 + e^0.85) = 0.29943. */
  @Test
  void advantage_ofTheBackPlayer_isThreeRalliesInTen() {
    assertThat(RoleAdvantage.assumed(-0.85).chanceBetweenEquals()).isCloseTo(0.29943, within(1e-5));
    assertThatThrownBy(() -> RoleAdvantage.assumed(Double.NaN)).hasMessageContaining("-3 to 3");
  }

  @Test
  void roles_thatAreTheSameButNotEven_areRefused() {
    assertThatThrownBy(() -> layout(side(Role.UP), side(Role.UP)))
        .hasMessageContaining("must differ, or both be even");
    assertThatThrownBy(() -> layout(side(Role.UP), side(Role.EVEN)))
        .hasMessageContaining("(up and even)");
  }

  @Test
  void roundThePost_countsOnlyOnADiagonal() {
    DrillForm.Scored game = game(layout(side(Role.EVEN), side(Role.EVEN)), RoleAdvantage.NONE);
    assertThat(game.roundThePostIn(Direction.STRAIGHT)).isEqualTo(RoundThePost.NOT_ALLOWED);
    assertThat(game.roundThePostIn(Direction.CROSS_ODD))
        .isEqualTo(RoundThePost.LEGAL_ON_FULL_COURT);
  }

  @Test
  void fixedLane_onAStraightLane_keepsNearEvenAndFarOdd() {
    DrillForm.Scored game = game(layout(side(Role.EVEN), side(Role.EVEN)), RoleAdvantage.NONE);
    assertThat(game.formatOn(Lane.STRAIGHT_RIGHT).places())
        .isEqualTo(Places.fixedLane(ServiceCourt.EVEN, ServiceCourt.ODD));
    assertThat(game.formatOn(Lane.CROSS_ODD).places())
        .isEqualTo(Places.fixedLane(ServiceCourt.ODD, ServiceCourt.ODD));
  }

  /** Definition of the log-normal: mean = exp(m + s²/2), variance = mean² (exp(s²) - 1). */
  @Test
  void seconds_inLogarithms_giveBackMeanAndSpread() {
    SecondsPrior seconds = new SecondsPrior(8, 5);
    double s2 = seconds.logSd() * seconds.logSd();
    assertThat(Math.exp(seconds.logMean() + s2 / 2)).isCloseTo(8, within(1e-12));
    assertThat(8 * Math.sqrt(Math.expm1(s2))).isCloseTo(5, within(1e-12));
    assertThat(SECONDS.mean()).isEqualTo(18);
    assertThat(SECONDS.sd()).isCloseTo(Math.sqrt(41), within(1e-12));
  }

  @Test
  void drill_whoseKindAndFormDisagree_isRefused() {
    DrillForm.Timed timed = new DrillForm.Timed(Optional.empty(), Optional.empty(), 5);
    assertThatThrownBy(() -> drill(DrillKind.SCORED_GAME, Progression.LINE, timed))
        .hasMessageContaining("needs a game");
    assertThatThrownBy(() -> drill(DrillKind.GENERAL_WARM_UP, Progression.LINE, timed))
        .hasMessageContaining("cannot stand at");
    DrillForm.Scored game = game(layout(side(Role.EVEN), side(Role.EVEN)), RoleAdvantage.NONE);
    assertThatThrownBy(() -> drill(DrillKind.FULL_GAME, Progression.FULL_POINT, game))
        .hasMessageContaining("starts with a serve");
  }

  @Test
  void hardDrill_asksForHardWork() {
    Drill drill =
        drill(
            DrillKind.SCORED_GAME,
            Progression.LINE,
            game(layout(side(Role.EVEN), side(Role.EVEN)), RoleAdvantage.NONE));
    assertThat(drill.demands()).containsExactly(Demand.LUNGING, Demand.HARD_WORK);
    assertThat(drill.skills()).containsExactly(Skill.DINK);
    assertThat(drill.minutes()).isEmpty();
  }

  @Test
  void sideA_standsAtTheNearEnd() {
    Layout layout = layout(side(Role.BACK), side(Role.UP));
    assertThat(layout.positions(Side.A, Lane.CROSS_EVEN).get(0).along().metres()).isNegative();
    assertThat(layout.positions(Side.B, Lane.CROSS_EVEN).get(0).along().metres()).isPositive();
    assertThat(layout.players()).isEqualTo(2);
  }

  private static Drill drill(DrillKind kind, Progression progression, DrillForm form) {
    return new Drill(
        new DrillKey("some-drill"),
        "Some drill",
        "A drill made up for this test.",
        "First to miss loses the rally.",
        kind,
        progression,
        form,
        Intensity.HARD,
        ADVICE);
  }

  private static DrillForm.Scored game(Layout layout, RoleAdvantage advantage) {
    return new DrillForm.Scored(
        layout,
        FEED,
        GameFormat.DRILL_GAME,
        Serving.FEED,
        RoundThePost.LEGAL_ON_FULL_COURT,
        advantage,
        SECONDS);
  }

  private static Layout layout(DrillSide a, DrillSide b) {
    return new Layout(List.of(Direction.values()), BySide.of(a, b));
  }

  private static DrillSide side(Role role) {
    return new DrillSide(
        role,
        "Keep the ball low.",
        List.of(Stand.everywhere(Spot.feet(5, 7.5))),
        InBounds.everywhere(HalfArea.KITCHEN),
        Set.of(Stroke.DINK),
        Advance.STAYS,
        SkillWeights.only(Skill.DINK),
        Set.of(Demand.LUNGING));
  }
}
