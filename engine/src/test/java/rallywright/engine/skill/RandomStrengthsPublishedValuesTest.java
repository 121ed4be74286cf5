package rallywright.engine.skill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Players of one skill whose spread is estimated (published/random-strengths/README.md). */
class RandomStrengthsPublishedValuesTest {
  private static final int PLAYERS = 12;
  private static final Club CLUB =
      new Club(
          new SkillGroups(List.of(0)),
          Collections.nCopies(PLAYERS, Entrant.atLevel(SkillPrior.MIDDLE_LEVEL)),
          List.of());

  private static HyperParameters spread(double sd) {
    return new HyperParameters(new SkillPrior(0, 0, sd, 1, 0, 0), 1, 1);
  }

  private static List<Evidence> games() throws Exception {
    Contest contest = Contest.even(Weights.single(0, 1));
    List<Evidence> games = new ArrayList<>();
    for (String[] row : PublishedRows.of("random-strengths/games.csv")) {
      int won = Integer.parseInt(row[2]);
      Sides sides = Sides.of(Integer.parseInt(row[0]), Integer.parseInt(row[1]));
      games.add(new Game(0, contest, sides, new RalliesWon(won, 1 - won)));
    }
    return games;
  }

  @Test
  void spreadAndModes_areThoseOfLme4() throws Exception {
    List<Evidence> games = games();
    HyperParameters found = ClubTuning.ofSkillSpread(CLUB, games, spread(0.5));
    Posterior posterior = SkillModel.of(CLUB, found.prior()).fit(games, Set.of());
    int seen = 0;
    for (String[] row : PublishedRows.of("random-strengths/expected.csv")) {
      double value =
          switch (row[0]) {
            case "sd" -> found.prior().skillSd();
            case "logLik" -> posterior.logEvidence();
            default -> posterior.skillMode(new SkillSum.Key(Integer.parseInt(row[1]), 0, 0)).mean();
          };
      assertThat(value).as(row[0] + row[1]).isCloseTo(Double.parseDouble(row[2]), within(1e-5));
      seen++;
    }
    assertThat(seen).isEqualTo(PLAYERS + 2);
  }

  @Test
  void spread_fromAnotherStart_isTheSame() throws Exception {
    double low = ClubTuning.ofSkillSpread(CLUB, games(), spread(0.1)).prior().skillSd();
    double high = ClubTuning.ofSkillSpread(CLUB, games(), spread(4)).prior().skillSd();
    assertThat(low).isCloseTo(high, within(1e-5));
  }

  @Test
  void manyPlayersOfOneSkillInOneWeek_areSolvedTogether_andAreCutOverManyWeeks() {
    int players = 100;
    assertThat(Partition.of(players, ring(players, 1)).groups()).isEqualTo(1);
    assertThat(Partition.of(players, ring(players, 20)).groups()).isGreaterThan(1);
  }

  private static List<Evidence> ring(int players, int weeks) {
    List<Evidence> games = new ArrayList<>();
    for (int week = 0; week < weeks; week++) {
      for (int player = 0; player < players; player++) {
        Sides sides = Sides.of(player, (player + 1 + week) % players);
        Contest contest = Contest.even(Weights.single(0, 1));
        games.add(new Game(week, contest, sides, new RalliesWon(1, 0)));
      }
    }
    return games;
  }
}
