package rallywright.engine.skill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
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
  void gamesInParts_orWithTheNamesTurned_sayWhatTheirSumSays() {
    Game turned = new Game(0, Contest.even(DINK), Sides.of(1, 0), new RalliesWon(3, 5));
    List<Evidence> parts = List.of(dinks(0, 4, 1), turned, dinks(0, 1, 4));
    Posterior found = fit(parts, 0);
    Posterior expected = fit(List.of(dinks(0, 10, 8)), 0);
    SkillSum.Key key = new SkillSum.Key(0, 0, 0);
    assertThat(found.skill(key).mean()).isCloseTo(expected.skill(key).mean(), within(1e-12));
    assertThat(found.skill(key).sd()).isCloseTo(expected.skill(key).sd(), within(1e-12));
    assertThat(found.logEvidence()).isCloseTo(expected.logEvidence(), within(1e-9));
    assertThat(Collapsed.of(parts)).hasSize(1);
    assertThat(Collapsed.of(List.of(dinks(0, 4, 1), dinks(1, 4, 1)))).hasSize(2);
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
  void week_betweenOthers_isTheSameAsIfItHadBeenAskedFor() {
    List<Evidence> evidence =
        List.of(dinks(0, 9, 3), practised(1, 30), practised(3, 12), dinks(4, 4, 8), dinks(6, 5, 5));
    Posterior sparse = practising(evidence, Set.of());
    Posterior weekly = practising(evidence, Set.of(0, 1, 2, 3, 4, 5, 6, 7, 8));
    for (int week = 0; week <= 8; week++) {
      for (int skill = 0; skill < 2; skill++) {
        SkillSum.Key key = new SkillSum.Key(0, skill, week);
        assertThat(sparse.skill(key).mean()).isCloseTo(weekly.skill(key).mean(), within(1e-9));
        assertThat(sparse.skill(key).sd()).isCloseTo(weekly.skill(key).sd(), within(1e-9));
        for (int other = 0; other <= 8; other++) {
          SkillSum earlier = SkillSum.skill(new SkillSum.Key(0, skill, other));
          assertThat(sparse.covariance(SkillSum.skill(key), earlier))
              .isCloseTo(weekly.covariance(SkillSum.skill(key), earlier), within(1e-9));
        }
      }
    }
    assertThat(sparse.gain(0).mean()).isCloseTo(weekly.gain(0).mean(), within(1e-12));
    assertThat(sparse.gain(0).sd()).isCloseTo(weekly.gain(0).sd(), within(1e-12));
    assertThat(sparse.logEvidence()).isCloseTo(weekly.logEvidence(), within(1e-9));
  }

  private static Practice practised(int week, double minutes) {
    return new Practice(week, 0, 0, Weights.of(0.6, 0.4), minutes);
  }

  private static Posterior practising(List<Evidence> evidence, Set<Integer> weeks) {
    Club club =
        new Club(
            new SkillGroups(List.of(0, 1)),
            List.of(Entrant.atLevel(3.5), Entrant.atLevel(4)),
            List.of(),
            List.of(new SharedEffect("dinks", 0.01, 0.01)));
    return SkillModel.of(club, PRIOR).fit(evidence, weeks);
  }

  @Test
  void practice_liftsTheNextWeek_byTheSaturatedMinutes() {
    Posterior posterior = practising(List.of(practised(0, 25)), Set.of(0, 1));
    double effective = 25 * (1 - Math.exp(-1));
    Estimate rise = posterior.rise(new SkillSum.Key(0, 0, 1), 0);
    assertThat(rise.mean()).isCloseTo(0.01 * effective * 0.6, within(1e-9));
    double variance = Math.pow(0.01 * effective * 0.6, 2) + 0.12 * 0.12;
    assertThat(rise.sd()).isCloseTo(Math.sqrt(variance), within(1e-9));
    JointEstimate both =
        posterior.joint(
            SkillSum.skill(new SkillSum.Key(0, 0, 0)), SkillSum.skill(new SkillSum.Key(0, 0, 1)));
    assertThat(both.difference().mean()).isCloseTo(rise.mean(), within(1e-12));
    assertThat(both.difference().sd()).isCloseTo(rise.sd(), within(1e-9));
  }

  @Test
  void gain_ofADrillAfterWhichItsPlayerWins_rises() {
    List<Evidence> evidence = new ArrayList<>(List.of(dinks(0, 10, 10)));
    Posterior before = practising(evidence, Set.of());
    evidence.addAll(List.of(practised(0, 40), dinks(1, 40, 20)));
    Posterior after = practising(evidence, Set.of());
    assertThat(before.gain(0).mean()).isCloseTo(0.01, within(1e-12));
    assertThat(before.gain(0).sd()).isCloseTo(0.01, within(1e-12));
    assertThat(after.gain(0).mean()).isGreaterThan(0.0105);
    assertThat(after.gain(0).sd()).isLessThan(0.0099);
  }

  @Test
  void jointEstimate_drawsWhatItSays() {
    JointEstimate both = new JointEstimate(new Estimate(1, 0.5), new Estimate(2, 2), 0.8);
    Random random = new Random(7);
    double sum = 0;
    double product = 0;
    int draws = 20_000;
    for (int i = 0; i < draws; i++) {
      double[] draw = both.draw(random);
      sum += draw[1];
      product += (draw[0] - 1) * (draw[1] - 2);
    }
    assertThat(sum / draws).isCloseTo(2, within(0.05));
    assertThat(product / draws).isCloseTo(0.8, within(0.05));
    assertThatThrownBy(() -> new JointEstimate(new Estimate(0, 1), new Estimate(0, 1), 1.1))
        .hasMessageContaining("1.1");
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
