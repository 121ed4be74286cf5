package rallywright.engine.point;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import rallywright.engine.drill.Skill;
import rallywright.engine.drill.SkillWeights;
import rallywright.engine.odds.GameOdds;
import rallywright.engine.odds.RallyChances;
import rallywright.engine.point.RallyChain.Winner;
import rallywright.engine.quantity.Probability;
import rallywright.engine.quantity.Source;
import rallywright.engine.score.BySide;
import rallywright.engine.score.Ending.Stage;
import rallywright.engine.score.GameFormat;
import rallywright.engine.score.Partner;
import rallywright.engine.score.Serve;
import rallywright.engine.score.Side;

class PointGameTest {

  private static final double STEP = 1e-4;

  /** A central difference of step h errs by h² times the third derivative over six. */
  private static final double DIFFERENCE = 1e-8;

  private static SkillProfile drawn(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Map<Skill, Double> logits = new EnumMap<>(Skill.class);
    for (Skill skill : Skill.values()) {
      logits.put(skill, random.nextGaussian());
    }
    return new SkillProfile(logits);
  }

  private static Team.Pair pair(long seed, Team.CourtSides sides) {
    return new Team.Pair(drawn(seed), drawn(seed + 1), sides);
  }

  /** The chain by hand: a product of the chances to go on, the loops summed as geometric series. */
  @Test
  void rally_betweenEquals_isTheProductOfItsStages() {
    RallyChain rally =
        RallyChain.between(FirstStages.DOUBLES, SkillProfile.flat(1), SkillProfile.flat(1));
    double third = 0.94 * 0.92;
    double transition = third * 0.79;
    double end = transition / (1 - 0.77 * 0.3);
    double net = end * 0.77 * 0.7;
    assertThat(rally.reaches(Stage.TRANSITION)).isCloseTo(transition, within(1e-12));
    assertThat(rally.endsIn(Stage.TRANSITION, Winner.RECEIVER))
        .isCloseTo(end * 0.14, within(1e-12));
    assertThat(rally.serverWins())
        .isCloseTo(0.01 + 0.94 * 0.06 + third * 0.05 + end * 0.09 + net / 2, within(1e-12));
  }

  @Test
  void endings_ofARally_sumToOne() {
    RallyChain rally = RallyChain.between(FirstStages.HALF_COURT, drawn(1), drawn(2));
    double sum = 0;
    for (Stage stage : Stage.values()) {
      sum += rally.endsIn(stage, Winner.SERVER) + rally.endsIn(stage, Winner.RECEIVER);
    }
    assertThat(sum).isCloseTo(1, within(1e-12));
    assertThat(rally.reaches(Stage.SERVE)).isCloseTo(1, within(1e-12));
  }

  /** A lead in every skill by x logits moves the logit of the rally by about x. */
  @Test
  void lead_inEverySkill_countsAsInASkillContest() {
    double even = logit(FirstStages.DOUBLES, 0);
    double lead = logit(FirstStages.DOUBLES, 0.5) - even;
    assertThat(lead).isBetween(0.4, 0.6);
  }

  private static double logit(PointStages stages, double lead) {
    double chance =
        RallyChain.between(stages, SkillProfile.flat(lead), SkillProfile.flat(0)).serverWins();
    return Math.log(chance / (1 - chance));
  }

  @ParameterizedTest
  @EnumSource(Stage.class)
  void slope_ofARally_isTheDifferenceQuotient(Stage stage) {
    RallyChain rally = RallyChain.between(FirstStages.DOUBLES, drawn(3), drawn(4));
    Map<Stage, Double> up = new EnumMap<>(rally.edges());
    up.merge(stage, STEP, Double::sum);
    Map<Stage, Double> down = new EnumMap<>(rally.edges());
    down.merge(stage, -STEP, Double::sum);
    double higher = RallyChain.of(FirstStages.DOUBLES, up).serverWins();
    double lower = RallyChain.of(FirstStages.DOUBLES, down).serverWins();
    assertThat(rally.slope(stage)).isPositive();
    assertThat(rally.slope(stage)).isCloseTo((higher - lower) / (2 * STEP), within(DIFFERENCE));
  }

  @ParameterizedTest
  @EnumSource(Skill.class)
  void slope_ofADoublesGame_isTheDifferenceQuotient(Skill skill) {
    Team.Pair a = pair(5, Team.CourtSides.BY_SCORE);
    Team.Pair b = pair(7, Team.CourtSides.LEFT_AT_EVEN_KEEPS_LEFT);
    PointGame game = PointGame.doubles(FirstStages.DOUBLES, a, b);
    double up = PointGame.doubles(FirstStages.DOUBLES, moved(a, skill, STEP), b).winA();
    double down = PointGame.doubles(FirstStages.DOUBLES, moved(a, skill, -STEP), b).winA();
    assertThat(game.slopes().of(Side.A, Partner.LEFT_AT_EVEN, skill))
        .isCloseTo((up - down) / (2 * STEP), within(DIFFERENCE));
    double upB = PointGame.doubles(FirstStages.DOUBLES, a, moved(b, skill, STEP)).winA();
    double downB = PointGame.doubles(FirstStages.DOUBLES, a, moved(b, skill, -STEP)).winA();
    assertThat(game.slopes().of(Side.B, Partner.LEFT_AT_EVEN, skill))
        .isCloseTo((upB - downB) / (2 * STEP), within(DIFFERENCE));
  }

  private static Team.Pair moved(Team.Pair pair, Skill skill, double by) {
    SkillProfile left = pair.leftAtEven();
    return new Team.Pair(pair.rightAtEven(), left.with(skill, left.of(skill) + by), pair.sides());
  }

  @ParameterizedTest
  @EnumSource(Skill.class)
  void slope_ofAHalfCourtGame_isTheDifferenceQuotient(Skill skill) {
    SkillProfile a = drawn(11);
    PointGame game = PointGame.halfCourt(FirstStages.HALF_COURT, a, drawn(12));
    double up = half(a.with(skill, a.of(skill) + STEP));
    double down = half(a.with(skill, a.of(skill) - STEP));
    assertThat(game.slopes().of(Side.A, Partner.RIGHT_AT_EVEN, skill))
        .isCloseTo((up - down) / (2 * STEP), within(DIFFERENCE));
  }

  private static double half(SkillProfile a) {
    return PointGame.halfCourt(FirstStages.HALF_COURT, a, drawn(12)).winA();
  }

  @Test
  void game_ofOnePlayerEachOnServe_isTheOddsOfThatChance() {
    SkillProfile a = drawn(21);
    SkillProfile b = drawn(22);
    PointGame game = PointGame.halfCourt(FirstStages.HALF_COURT, a, b);
    double serveA = RallyChain.between(FirstStages.HALF_COURT, a, b).serverWins();
    double serveB = RallyChain.between(FirstStages.HALF_COURT, b, a).serverWins();
    RallyChances chances = RallyChances.ofServe(Probability.of(serveA), Probability.of(serveB));
    assertThat(game.winA())
        .isEqualTo(GameOdds.of(PointGame.HALF_COURT_TO_11, chances).winChance(Side.A));
  }

  /** Published serving chances by player go through the stages unchanged: P = 0.563838496745. */
  @Test
  void doubles_withNamedServers_keepTheOfficialServeOrder() {
    PointStages onlyServe = onlyServe();
    Team.Pair a = servers(0.50, 0.40);
    Team.Pair b = servers(0.45, 0.42);
    PointGame game = PointGame.doubles(onlyServe, a, b);
    double chance = game.chances().serverWins(Serve.by(Side.A)).value();
    assertThat(chance).isCloseTo(0.50, within(1e-3));
    assertThat(game.winA()).isCloseTo(0.563838496745, within(2e-3));
  }

  /** Stages in which nearly every rally ends with the serve, so that the serve decides. */
  private static PointStages onlyServe() {
    SkillWeights serve = SkillWeights.only(Skill.SERVE);
    SkillWeights lob = SkillWeights.only(Skill.LOB);
    Map<Stage, StageContest> contests = new EnumMap<>(FirstStages.DOUBLES.contests());
    contests.put(Stage.SERVE, StageContest.betweenEquals(0.4999, 0.4999, 0, serve, lob));
    return new PointStages("serve only", contests, 0.5, Source.ASSUMPTION);
  }

  private static Team.Pair servers(double first, double second) {
    return new Team.Pair(server(first), server(second), Team.CourtSides.BY_SCORE);
  }

  private static SkillProfile server(double chance) {
    return SkillProfile.flat(0).with(Skill.SERVE, Math.log(chance / (1 - chance)));
  }

  @Test
  void sidesSwapped_swapTheChance_whenTheOtherServesFirst() {
    Team.Pair a = pair(31, Team.CourtSides.BY_SCORE);
    Team.Pair b = pair(41, Team.CourtSides.BY_SCORE);
    GameFormat other = GameFormat.DOUBLES_TO_11.withFirstServer(Side.B);
    double one = PointGame.doubles(FirstStages.DOUBLES, a, b).winA();
    double two = PointGame.of(FirstStages.DOUBLES, BySide.of(b, a), other).winA();
    assertThat(one).isCloseTo(1 - two, within(1e-12));
  }

  @Test
  void twoServers_ofASinglePlayer_areRefused() {
    Team single = new Team.Single(SkillProfile.flat(0));
    assertThatThrownBy(
            () ->
                PointGame.of(
                    FirstStages.DOUBLES, BySide.of(single, single), GameFormat.DOUBLES_TO_11))
        .hasMessageContaining("must go with two pairs");
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, 21, Double.NEGATIVE_INFINITY})
  void skill_outOfRange_isRefused(double logit) {
    assertThatThrownBy(() -> SkillProfile.flat(0).with(Skill.DINK, logit))
        .hasMessageContaining("The dink (" + logit + ") must be a number from -20 to 20");
  }

  @ParameterizedTest
  @EnumSource(SkillWorths.Play.class)
  void worth_ofAStep_isWhatTheStepBrings_againstTheEvenSide(SkillWorths.Play play) {
    PointStages stages =
        play == SkillWorths.Play.DOUBLES ? FirstStages.DOUBLES : FirstStages.HALF_COURT;
    SkillProfile player = drawn(51);
    SkillWorths worths = SkillWorths.of(stages, player, play);
    double even = chance(stages, play, player, worths, player.mean());
    assertThat(even).isCloseTo(0.5, within(1e-9));
    for (Skill skill : Skill.values()) {
      SkillProfile better = player.with(skill, player.of(skill) + SkillWorths.STEP_LOGITS);
      double gained = 100 * (chance(stages, play, better, worths, player.mean()) - even);
      assertThat(gained).isPositive();
      assertThat(worths.gamesIn100(skill)).isCloseTo(gained, within(0.03 * gained));
    }
  }

  private static double chance(
      PointStages stages,
      SkillWorths.Play play,
      SkillProfile player,
      SkillWorths worths,
      double partner) {
    Team own = play.team(player, partner);
    Team other = play.team(SkillProfile.flat(worths.evenLevel()), worths.evenLevel());
    BySide<Team> teams = BySide.of(own, other);
    GameFormat second = play.format().withFirstServer(Side.B);
    return (PointGame.of(stages, teams, play.format()).winA()
            + PointGame.of(stages, teams, second).winA())
        / 2;
  }

  @Test
  void weakestSkill_isNotAlwaysWorthMost() {
    SkillProfile weakLob = SkillProfile.flat(0).with(Skill.LOB, -1);
    SkillWorths worths = SkillWorths.of(FirstStages.DOUBLES, weakLob, SkillWorths.Play.DOUBLES);
    assertThat(worths.ranked().get(0)).isNotEqualTo(Skill.LOB);
    assertThat(worths.ranked()).hasSize(Skill.values().length);
    assertThat(worths.gamesIn100PerHour(Skill.DROP, 0.0005, 45))
        .isCloseTo(worths.gamesIn100(Skill.DROP) / 0.2 * 0.0005 * 45, within(1e-12));
  }
}
