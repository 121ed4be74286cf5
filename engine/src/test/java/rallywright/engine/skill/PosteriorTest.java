package rallywright.engine.skill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rallywright.engine.drill.Skill;
import rallywright.engine.score.Side;

class PosteriorTest {
  private static final SkillPrior PRIOR = SkillPrior.DEFAULT;
  private static final Weights DINK = Weights.of(1, 0);
  private static final Weights DROP = Weights.of(0, 1);

  private static Club club(Entrant... entrants) {
    return new Club(
        new SkillGroups(List.of(0, 1)),
        List.of(entrants),
        List.of(new SharedEffect("back v up", -0.85, 0.4), new SharedEffect("known", 0.3, 0)));
  }

  private static Game dinks(int week, int wonByA, int wonByB) {
    return new Game(week, Contest.even(DINK), Sides.of(0, 1), new RalliesWon(wonByA, wonByB));
  }

  private static Posterior fit(List<Evidence> evidence, Integer... weeks) {
    return SkillModel.of(club(Entrant.atLevel(3.5), Entrant.atLevel(4)), PRIOR)
        .fit(evidence, Set.of(weeks));
  }

  @Test
  void posterior_withoutEvidence_isThePrior() {
    Posterior posterior = fit(List.of(), 0, 3);
    double first = 0.5 * 0.5 + 0.25 * 0.25 + 0.3 * 0.3;
    assertThat(posterior.skill(new SkillSum.Key(1, 0, 0)).mean()).isCloseTo(0.45, within(1e-12));
    assertThat(posterior.skill(new SkillSum.Key(1, 0, 0)).sd())
        .isCloseTo(Math.sqrt(first), within(1e-12));
    assertThat(posterior.skill(new SkillSum.Key(0, 1, 3)).sd())
        .isCloseTo(Math.sqrt(first + 3 * 0.12 * 0.12), within(1e-12));
    assertThat(posterior.effect(0)).isEqualTo(new Estimate(-0.85, 0.4));
    assertThat(posterior.effect(1)).isEqualTo(new Estimate(0.3, 0));
    assertThat(posterior.logEvidence()).isCloseTo(0, within(1e-12));
  }

  @Test
  void skills_ofTheTrade_areElevenInThreeGroups() {
    SkillGroups groups = SkillGroups.ofTheTrade();
    assertThat(groups.skills()).isEqualTo(11);
    assertThat(groups.together(SkillGroups.numberOf(Skill.DROP), SkillGroups.numberOf(Skill.DINK)))
        .isTrue();
    assertThat(groups.together(SkillGroups.numberOf(Skill.SERVE), SkillGroups.numberOf(Skill.LOB)))
        .isTrue();
    assertThat(
            groups.together(SkillGroups.numberOf(Skill.SERVE), SkillGroups.numberOf(Skill.ATTACK)))
        .isFalse();
  }

  @Test
  void level_thatIsNotKnown_widensThePrior() {
    Posterior posterior = SkillModel.of(club(Entrant.unknown()), PRIOR).fit(List.of(), Set.of(0));
    double common = 0.5 * 0.5 + 0.45 * 0.45;
    SkillSum both =
        SkillSum.builder()
            .plusSkill(1, new SkillSum.Key(0, 0, 0))
            .plusSkill(1, new SkillSum.Key(0, 1, 0))
            .build();
    assertThat(posterior.covariance(both, both))
        .isCloseTo(4 * common + 2 * (0.25 * 0.25 + 0.3 * 0.3), within(1e-12));
  }

  @Test
  void weeks_afterTheLast_keepTheMeanAndWiden() {
    List<Evidence> evidence = List.of(dinks(0, 9, 3), dinks(2, 4, 8));
    Posterior early = fit(evidence, 0);
    Posterior asked = fit(evidence, 0, 1, 2, 5, 7);
    for (int week : new int[] {5, 7}) {
      SkillSum.Key key = new SkillSum.Key(0, 0, week);
      assertThat(early.skill(key).mean()).isCloseTo(asked.skill(key).mean(), within(1e-9));
      assertThat(early.skill(key).sd()).isCloseTo(asked.skill(key).sd(), within(1e-9));
      assertThat(early.chanceOfRise(key, 0)).isCloseTo(asked.chanceOfRise(key, 0), within(1e-9));
    }
    SkillSum five = SkillSum.skill(new SkillSum.Key(0, 0, 5));
    SkillSum seven = SkillSum.skill(new SkillSum.Key(0, 0, 7));
    assertThat(early.covariance(five, seven))
        .isCloseTo(asked.covariance(five, seven), within(1e-9));
  }

  @Test
  void laterGames_sharpenEarlierWeeks() {
    double before = fit(List.of(dinks(0, 6, 6)), 0).skill(new SkillSum.Key(0, 0, 0)).sd();
    double after =
        fit(List.of(dinks(0, 6, 6), dinks(1, 6, 6)), 0).skill(new SkillSum.Key(0, 0, 0)).sd();
    assertThat(after).isLessThan(before);
  }

  @Test
  void games_alone_tellDifferencesAndNotTheLevelOfAll() {
    List<Evidence> many = new ArrayList<>();
    for (int i = 0; i < 50; i++) {
      many.add(dinks(0, 6, 4));
    }
    Posterior posterior = fit(many, 0);
    SkillSum difference =
        SkillSum.builder()
            .plusSkill(1, new SkillSum.Key(0, 0, 0))
            .plusSkill(-1, new SkillSum.Key(1, 0, 0))
            .build();
    SkillSum sum =
        SkillSum.builder()
            .plusSkill(1, new SkillSum.Key(0, 0, 0))
            .plusSkill(1, new SkillSum.Key(1, 0, 0))
            .build();
    SkillSum prior = SkillSum.skill(new SkillSum.Key(0, 0, 0));
    assertThat(posterior.of(difference).sd()).isLessThan(0.1);
    assertThat(posterior.of(sum).sd())
        .isCloseTo(Math.sqrt(2) * fit(List.of(), 0).of(prior).sd(), within(1e-9));
  }

  @Test
  void expectedVarianceDrop_ofAGame_isWhatTheGameThenBrings() {
    List<Evidence> played = new ArrayList<>(List.of(dinks(0, 6, 4)));
    Posterior before = fit(played, 0);
    SkillSum.Key key = new SkillSum.Key(0, 0, 0);
    SkillSum edge = Contest.even(DINK).serverEdge(Sides.of(0, 1), 0, A);
    double p = Logistic.chance(before.of(edge).mean());
    int rallies = 1000;
    double drop =
        before.expectedVarianceDrop(
            SkillSum.skill(key), List.of(new PlannedRallies(edge, rallies)));
    played.add(dinks(0, (int) Math.round(rallies * p), (int) Math.round(rallies * (1 - p))));
    double brought =
        Math.pow(before.skill(key).sd(), 2) - Math.pow(fit(played, 0).skill(key).sd(), 2);
    assertThat(drop).isCloseTo(brought, within(0.01 * brought));
  }

  @Test
  void expectedVarianceDrop_ofTwoHalves_isThatOfTheWhole() {
    Posterior posterior = fit(List.of(dinks(0, 6, 4)), 0);
    SkillSum target = SkillSum.skill(new SkillSum.Key(0, 1, 0));
    SkillSum dink = Contest.even(DINK).serverEdge(Sides.of(0, 1), 0, A);
    SkillSum drop = Contest.even(DROP).serverEdge(Sides.of(0, 1), 0, A);
    PlannedRallies half = new PlannedRallies(dink, 10);
    PlannedRallies other = new PlannedRallies(drop, 7);
    assertThat(posterior.expectedVarianceDrop(target, List.of(half, other, half)))
        .isCloseTo(
            posterior.expectedVarianceDrop(target, List.of(other, new PlannedRallies(dink, 20))),
            within(1e-12));
    assertThat(posterior.expectedVarianceDrop(target, List.of(other)))
        .isGreaterThan(
            posterior.expectedVarianceDrop(target, List.of(new PlannedRallies(dink, 7))));
  }

  @Test
  void evidence_ofUnknownPlayerOrEarlyWeek_isRefused() {
    Club late = club(Entrant.atLevel(3.5), new Entrant(OptionalDouble.of(4), 2));
    SkillModel model = SkillModel.of(late, PRIOR);
    assertThatThrownBy(() -> model.fit(List.of(dinks(1, 3, 2)), Set.of(0)))
        .hasMessageContaining("Week 1 lies before the first week (2) of player 1")
        .hasMessageContaining("Maybe");
    Game stranger = new Game(0, Contest.even(DINK), Sides.of(0, 5), new RalliesWon(1, 1));
    assertThatThrownBy(() -> model.fit(List.of(stranger), Set.of(0)))
        .hasMessageContaining("The player (5) must lie from 0 to 1");
    assertThatThrownBy(
            () ->
                new Game(
                    0,
                    new Contest(DINK, DROP, Contest.Roles.BY_SERVE, List.of()),
                    Sides.of(0, 1),
                    new RalliesWon(1, 1)))
        .hasMessageContaining("the roles follow the server");
  }

  @Test
  void week_betweenFittedOnes_isRefusedUnlessAskedFor() {
    Posterior posterior = fit(List.of(dinks(0, 6, 4), dinks(4, 6, 4)), 0);
    assertThatThrownBy(() -> posterior.skill(new SkillSum.Key(0, 0, 2)))
        .hasMessageContaining("Week 2 of player 0 was not asked for");
  }

  @Test
  void counts_ofRallies_followTheWeightsOfTheRole() {
    Contest mixed = new Contest(Weights.of(0.8, 0.2), DROP, Contest.Roles.BY_SIDE, List.of(0));
    Game game = new Game(0, mixed, Sides.of(0, 1), new RalliesWon(20, 20));
    RallyCounts counts = RallyCounts.of(club(Entrant.unknown(), Entrant.unknown()), List.of(game));
    assertThat(counts.of(0, 0)).isCloseTo(32, within(1e-12));
    assertThat(counts.isEnough(0, 0)).isTrue();
    assertThat(counts.isEnough(0, 1)).isFalse();
    assertThat(counts.of(1, 1)).isCloseTo(40, within(1e-12));
  }

  private static final Side A = Side.A;
}
