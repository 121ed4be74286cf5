package rallywright.engine.point;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import rallywright.engine.drill.Skill;
import rallywright.engine.score.BySide;
import rallywright.engine.score.GameFormat;
import rallywright.engine.score.Partner;
import rallywright.engine.score.Side;

/**
 * What each skill of a player is worth in games won.
 *
 * <p><b>Card.</b> In: stages and a player's skills. Out: for each skill the derivative of the
 * chance to win a game to 11 against an even side, per logit. An even side is equally good at
 * everything, and as good as makes the game even; a partner is equally good at everything at the
 * player's own mean. Who serves first is taken half and half. Method: the exact derivative of
 * {@link PointGame}. Valid: for small changes; for +0.2 logits the straight line is off by less
 * than 2 in 100 of the worth (measured in the tests). Limits: as good as the stages' weights, which
 * are assumptions. The weakest skill is not always the one that is worth most.
 */
public final class SkillWorths {

  /** The step for which worth is told, in logits. */
  public static final double STEP_LOGITS = 0.2;

  private static final int MOST_STEPS = 60;
  private static final double EVEN_ENOUGH = 1e-11;
  private static final double LONGEST_STEP = 2;

  private final Map<Skill, Double> perLogit;
  private final double evenLevel;

  private SkillWorths(Map<Skill, Double> perLogit, double evenLevel) {
    this.perLogit = perLogit;
    this.evenLevel = evenLevel;
  }

  /** Which game is meant. */
  public enum Play {
    /** Two players on half a court, one server a side. */
    HALF_COURT,
    /** Two pairs, two servers a side. */
    DOUBLES;

    Team team(SkillProfile player, double partner) {
      return this == HALF_COURT
          ? new Team.Single(player)
          : new Team.Pair(player, SkillProfile.flat(partner), Team.CourtSides.BY_SCORE);
    }

    GameFormat format() {
      return this == HALF_COURT ? PointGame.HALF_COURT_TO_11 : GameFormat.DOUBLES_TO_11;
    }
  }

  /**
   * The worths of a player's skills.
   *
   * @param stages what is contested in a point
   * @param player the player's skills
   * @param play which game
   * @return the worths
   */
  public static SkillWorths of(PointStages stages, SkillProfile player, Play play) {
    double partner = player.mean();
    Team own = play.team(player, partner);
    double level = partner;
    List<PointGame> games = games(stages, own, play, level);
    for (int step = 0; step < MOST_STEPS && Math.abs(lead(games)) > EVEN_ENOUGH; step++) {
      double move = -lead(games) / levelSlope(games, own);
      level += Math.max(-LONGEST_STEP, Math.min(LONGEST_STEP, move));
      games = games(stages, own, play, level);
    }
    Map<Skill, Double> perLogit = new EnumMap<>(Skill.class);
    for (PointGame game : games) {
      PointGame.Slopes slopes = game.slopes();
      for (Skill skill : Skill.values()) {
        double slope = slopes.of(Side.A, Partner.RIGHT_AT_EVEN, skill);
        perLogit.merge(skill, slope / games.size(), Double::sum);
      }
    }
    return new SkillWorths(perLogit, level);
  }

  /** The game with either side serving first. */
  private static List<PointGame> games(PointStages stages, Team own, Play play, double level) {
    Team other = play.team(SkillProfile.flat(level), level);
    BySide<Team> teams = BySide.of(own, other);
    return List.of(
        PointGame.of(stages, teams, play.format()),
        PointGame.of(stages, teams, play.format().withFirstServer(Side.B)));
  }

  private static double lead(List<PointGame> games) {
    return games.stream().mapToDouble(PointGame::winA).average().orElse(0) - 0.5;
  }

  private static double levelSlope(List<PointGame> games, Team other) {
    double sum = 0;
    for (PointGame game : games) {
      PointGame.Slopes slopes = game.slopes();
      for (Partner who : other.partners()) {
        for (Skill skill : Skill.values()) {
          sum += slopes.of(Side.B, who, skill);
        }
      }
    }
    return sum / games.size();
  }

  /**
   * The worth of a skill.
   *
   * @param skill the skill
   * @return games won per game played and logit, 0 or more
   */
  public double perLogit(Skill skill) {
    return Objects.requireNonNull(perLogit.get(skill));
  }

  /**
   * The worth of a small step of a skill.
   *
   * @param skill the skill
   * @return games won in 100 for {@value #STEP_LOGITS} logits more
   */
  public double gamesIn100(Skill skill) {
    return 100 * STEP_LOGITS * perLogit(skill);
  }

  /**
   * The worth of an hour of practice on a skill alone.
   *
   * @param skill the skill
   * @param gainPerMinute what an effective minute brings, in logits
   * @param effectiveMinutes how many effective minutes the hour has
   * @return games won in 100
   */
  public double gamesIn100PerHour(Skill skill, double gainPerMinute, double effectiveMinutes) {
    return 100 * perLogit(skill) * gainPerMinute * effectiveMinutes;
  }

  /**
   * All skills, the one that is worth most first.
   *
   * @return every skill once
   */
  public List<Skill> ranked() {
    Comparator<Skill> byWorth = Comparator.comparingDouble(this::perLogit);
    return perLogit.keySet().stream().sorted(byWorth.reversed()).toList();
  }

  /**
   * How good the even side is.
   *
   * @return the level of all its skills, in logits
   */
  public double evenLevel() {
    return evenLevel;
  }
}
