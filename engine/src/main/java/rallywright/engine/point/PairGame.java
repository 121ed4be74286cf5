package rallywright.engine.point;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import rallywright.engine.drill.Skill;
import rallywright.engine.point.Team.CourtSides;
import rallywright.engine.point.Team.Pair;
import rallywright.engine.score.BySide;
import rallywright.engine.score.GameFormat;
import rallywright.engine.score.Partner;
import rallywright.engine.score.Side;

/**
 * Doubles games between pairs when it is not said who serves first: both orders, half and half.
 *
 * <p>What a pair gains as a pair: the logit of its chance against a given pair, less the mean of
 * the logits that two of the one and two of the other would have. What all skills together make of
 * two players cancels; what stays is how their profiles fill each other's gaps through the stages.
 * Limits: a pair is no more than its skills here: nothing of talk, of who poaches, of a left hand,
 * or of opponents who play on the weaker partner.
 */
public final class PairGame {

  private final List<PointGame> games;

  private PairGame(List<PointGame> games) {
    this.games = games;
  }

  /**
   * A doubles game to 11, win by 2.
   *
   * @param stages what is contested in a point
   * @param a side A
   * @param b side B
   * @return the game
   */
  public static PairGame of(PointStages stages, Pair a, Pair b) {
    BySide<Team> teams = BySide.of(a, b);
    GameFormat format = GameFormat.DOUBLES_TO_11;
    return new PairGame(
        List.of(
            PointGame.of(stages, teams, format),
            PointGame.of(stages, teams, format.withFirstServer(Side.B))));
  }

  /**
   * The chance that side A wins.
   *
   * @return from 0 to 1
   */
  public double winA() {
    return games.stream().mapToDouble(PointGame::winA).average().orElse(0);
  }

  /**
   * How the chance changes with the skills of one player: exact derivatives.
   *
   * @param side whose
   * @param who which partner
   * @return per logit, for each skill
   */
  public Map<Skill, Double> slopes(Side side, Partner who) {
    Map<Skill, Double> all = new EnumMap<>(Skill.class);
    for (PointGame game : games) {
      PointGame.Slopes slopes = game.slopes();
      for (Skill skill : Skill.values()) {
        all.merge(skill, slopes.of(side, who, skill) / games.size(), Double::sum);
      }
    }
    return all;
  }

  /**
   * How two players fit.
   *
   * @param chance the chance to win when they change places with the score
   * @param ofTheirMean the chance that the mean of their strengths would have
   * @param bestSides where they had better stand
   * @param chanceOnBestSides the chance to win then
   */
  public record Fit(
      double chance, double ofTheirMean, CourtSides bestSides, double chanceOnBestSides) {

    /**
     * What the pair gains beyond the mean of its strengths.
     *
     * @return games won in 100, below 0 where the two lose by it
     */
    public double gain() {
      return 100 * (chance - ofTheirMean);
    }
  }

  /**
   * How two players fit against a given pair.
   *
   * @param stages what is contested in a point
   * @param one who starts on the right
   * @param other the partner
   * @param against the pair on the other side
   * @return the fit
   */
  public static Fit fit(PointStages stages, SkillProfile one, SkillProfile other, Pair against) {
    CourtSides best = CourtSides.BY_SCORE;
    double chance = chance(stages, one, other, best, against);
    double most = chance;
    for (CourtSides sides :
        List.of(CourtSides.RIGHT_AT_EVEN_KEEPS_LEFT, CourtSides.LEFT_AT_EVEN_KEEPS_LEFT)) {
      double with = chance(stages, one, other, sides, against);
      if (with > most) {
        best = sides;
        most = with;
      }
    }
    double twins =
        (logit(chance(stages, one, one, CourtSides.BY_SCORE, against))
                + logit(chance(stages, other, other, CourtSides.BY_SCORE, against)))
            / 2;
    return new Fit(chance, 1 / (1 + Math.exp(-twins)), best, most);
  }

  private static double chance(
      PointStages stages, SkillProfile one, SkillProfile other, CourtSides sides, Pair against) {
    return of(stages, new Pair(one, other, sides), against).winA();
  }

  private static double logit(double chance) {
    return Math.log(chance / (1 - chance));
  }
}
