package rallywright.benchmarks.lme4;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import rallywright.engine.skill.Club;
import rallywright.engine.skill.ClubTuning;
import rallywright.engine.skill.Contest;
import rallywright.engine.skill.Entrant;
import rallywright.engine.skill.Game;
import rallywright.engine.skill.HyperParameters;
import rallywright.engine.skill.Posterior;
import rallywright.engine.skill.RalliesWon;
import rallywright.engine.skill.Sides;
import rallywright.engine.skill.SkillGroups;
import rallywright.engine.skill.SkillPrior;
import rallywright.engine.skill.SkillSum;
import rallywright.engine.skill.Weights;

/**
 * A static club of one skill: who won each of many single rallies, the spread of the players
 * estimated.
 *
 * @param players how many
 * @param games the rallies
 */
record BradleyTerry(int players, List<Game> games) {
  private static final Contest CONTEST = Contest.even(Weights.single(0, 1));
  private static final double TRUE_SD = 0.8;
  private static final double START_SD = 1;

  BradleyTerry {
    games = List.copyOf(games);
  }

  /** Draws an invented club: a line of two players and whether the first won, for each rally. */
  static List<String> drawn(int players, int rallies, SplittableRandom random) {
    double[] skills = new double[players];
    for (int player = 0; player < players; player++) {
      skills[player] = TRUE_SD * random.nextGaussian();
    }
    List<String> rows = new ArrayList<>();
    for (int rally = 0; rally < rallies; rally++) {
      int a = random.nextInt(players);
      int b = (a + 1 + random.nextInt(players - 1)) % players;
      boolean won = random.nextDouble() < 1 / (1 + Math.exp(skills[b] - skills[a]));
      rows.add(a + "," + b + "," + (won ? 1 : 0));
    }
    return rows;
  }

  static Game game(int a, int b, int won) {
    return new Game(0, CONTEST, Sides.of(a, b), new RalliesWon(won, 1 - won));
  }

  /** Finds the spread with the largest evidence, and the modes there. */
  Answer fit() {
    Club club =
        new Club(
            new SkillGroups(List.of(0)),
            Collections.nCopies(players, Entrant.atLevel(SkillPrior.MIDDLE_LEVEL)),
            List.of());
    SkillPrior start = new SkillPrior(0, 0, START_SD, 1, 0, 0);
    ClubTuning.Fitted fitted =
        ClubTuning.fitOfSkillSpread(club, games, new HyperParameters(start, 1, 1));
    Posterior posterior = fitted.posterior();
    List<Double> modes =
        IntStream.range(0, players)
            .mapToObj(player -> SkillSum.skill(new SkillSum.Key(player, 0, 0)))
            .map(posterior::mostLikely)
            .toList();
    double sd = fitted.values().prior().skillSd();
    return new Answer(sd, posterior.logEvidence(), List.of(), modes);
  }
}
