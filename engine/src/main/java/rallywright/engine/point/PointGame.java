package rallywright.engine.point;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rallywright.engine.drill.Skill;
import rallywright.engine.drill.SkillWeights;
import rallywright.engine.odds.GameOdds;
import rallywright.engine.odds.RallyChances;
import rallywright.engine.odds.RallyChances.PairChances;
import rallywright.engine.point.RallyChain.Winner;
import rallywright.engine.quantity.Probability;
import rallywright.engine.score.BySide;
import rallywright.engine.score.Ending.Stage;
import rallywright.engine.score.GameFormat;
import rallywright.engine.score.Partner;
import rallywright.engine.score.Places;
import rallywright.engine.score.Scoring;
import rallywright.engine.score.Serve;
import rallywright.engine.score.ServerNumber;
import rallywright.engine.score.Side;

/**
 * A game of full points: from skills through the stages of a rally to the chance to win the game,
 * with exact derivatives by every skill.
 *
 * <p><b>Card.</b> In: stages, two teams, a format. Out: the chance of each server, the chance to
 * win the game, and how that changes with each player's skill, per logit. Method: {@link
 * RallyChain} for each server and returner, then {@link GameOdds} in the official serve order; the
 * derivative is the product of both. Limits: who returns is taken half and half for each server, as
 * it changes with both scores; partners' shares of later balls are {@link Team}'s.
 */
public final class PointGame {

  /** A half-court game to 11, win by 2, one server a side. */
  public static final GameFormat HALF_COURT_TO_11 =
      GameFormat.SINGLES_TO_11.withPlaces(Places.HALF_COURT_BY_SCORE);

  private record Rally(
      Side side, Partner server, Partner returner, double weight, RallyChain chain) {}

  private final PointStages stages;
  private final BySide<Team> teams;
  private final List<Rally> rallies = new ArrayList<>();
  private final RallyChances chances;
  private final GameOdds odds;

  private PointGame(PointStages stages, BySide<Team> teams, GameFormat format) {
    this.stages = stages;
    this.teams = teams;
    boolean pairs = teams.a() instanceof Team.Pair && teams.b() instanceof Team.Pair;
    if (format.scoring().hasTwoServers() && !pairs) {
      throw new IllegalArgumentException(
          "Two servers a side (%s) must go with two pairs. Maybe one server a side was meant."
              .formatted(format.scoring().label()));
    }
    for (Side side : Side.values()) {
      addRallies(side, format.scoring());
    }
    chances = format.scoring().hasTwoServers() ? byServer() : bySide();
    odds = GameOdds.of(format, chances);
  }

  /**
   * A game.
   *
   * @param stages what is contested in a point
   * @param teams who plays
   * @param format how the game is counted
   * @return the game
   * @throws IllegalArgumentException if two servers a side are asked of a single player
   */
  public static PointGame of(PointStages stages, BySide<Team> teams, GameFormat format) {
    return new PointGame(stages, teams, format);
  }

  /**
   * A doubles game to 11, win by 2, two servers.
   *
   * @param stages what is contested in a point
   * @param a side A
   * @param b side B
   * @return the game
   */
  public static PointGame doubles(PointStages stages, Team.Pair a, Team.Pair b) {
    return new PointGame(stages, BySide.of(a, b), GameFormat.DOUBLES_TO_11);
  }

  /**
   * A half-court game to 11, win by 2, one server a side.
   *
   * @param stages what is contested in a point
   * @param a side A
   * @param b side B
   * @return the game
   */
  public static PointGame halfCourt(PointStages stages, SkillProfile a, SkillProfile b) {
    BySide<Team> teams = BySide.of(new Team.Single(a), new Team.Single(b));
    return new PointGame(stages, teams, HALF_COURT_TO_11);
  }

  private void addRallies(Side side, Scoring scoring) {
    Team serving = teams.of(side);
    Team receiving = teams.of(side.opponent());
    double servers = scoring.hasTwoServers() ? 1 : serving.partners().size();
    double weight = 1 / (servers * receiving.partners().size());
    for (Partner server : serving.partners()) {
      for (Partner returner : receiving.partners()) {
        Map<Stage, Double> edges = new EnumMap<>(Stage.class);
        for (Stage stage : Stage.values()) {
          StageContest contest = stages.of(stage);
          edges.put(
              stage,
              strength(serving, stage, server, contest.server())
                  - strength(receiving, stage, returner, contest.receiver()));
        }
        rallies.add(new Rally(side, server, returner, weight, RallyChain.of(stages, edges)));
      }
    }
  }

  private static double strength(Team team, Stage stage, Partner striker, SkillWeights weights) {
    double sum = 0;
    for (Partner who : team.partners()) {
      sum += team.share(stage, striker, who) * team.profile(who).weighted(weights);
    }
    return sum;
  }

  private RallyChances byServer() {
    return RallyChances.ofServers(pair(Side.A), pair(Side.B));
  }

  private PairChances pair(Side side) {
    return new PairChances(
        Probability.of(chance(side, Partner.RIGHT_AT_EVEN)),
        Probability.of(chance(side, Partner.LEFT_AT_EVEN)));
  }

  private double chance(Side side, Partner server) {
    return rallies.stream()
        .filter(rally -> rally.side() == side && rally.server() == server)
        .mapToDouble(rally -> rally.weight() * rally.chain().serverWins())
        .sum();
  }

  private RallyChances bySide() {
    return RallyChances.ofServe(
        Probability.of(Math.min(1, chanceOf(Side.A))),
        Probability.of(Math.min(1, chanceOf(Side.B))));
  }

  private double chanceOf(Side side) {
    return rallies.stream()
        .filter(rally -> rally.side() == side)
        .mapToDouble(rally -> rally.weight() * rally.chain().serverWins())
        .sum();
  }

  /**
   * The chances of a rally by server.
   *
   * @return the chances that {@link GameOdds} gets
   */
  public RallyChances chances() {
    return chances;
  }

  /**
   * The odds of the game.
   *
   * @return from its first serve
   */
  public GameOdds odds() {
    return odds;
  }

  /**
   * The chance that side A wins the game.
   *
   * @return from 0 to 1
   */
  public double winA() {
    return odds.winChance(Side.A);
  }

  /**
   * The chance that a rally ends in a stage for a side, whoever of the side serves.
   *
   * @param serving the side that serves
   * @param stage the stage
   * @param winner for whom
   * @return from 0 to 1
   */
  public double endsIn(Side serving, Stage stage, Winner winner) {
    return rallies.stream()
        .filter(rally -> rally.side() == serving)
        .mapToDouble(rally -> rally.chain().endsIn(stage, winner))
        .average()
        .orElse(0);
  }

  /**
   * The chance that a rally comes to a stage, whoever of the side serves.
   *
   * @param serving the side that serves
   * @param stage the stage
   * @return from 0 to 1
   */
  public double reaches(Side serving, Stage stage) {
    return rallies.stream()
        .filter(rally -> rally.side() == serving)
        .mapToDouble(rally -> rally.chain().reaches(stage))
        .average()
        .orElse(0);
  }

  /**
   * How side A's chance to win the game changes with the skills: exact derivatives.
   *
   * @return the slopes
   */
  public Slopes slopes() {
    return new Slopes(odds.winSlopes());
  }

  /** Exact derivatives of side A's chance to win the game. */
  public final class Slopes {
    private final Map<Rally, Map<Stage, Double>> byEdge = new LinkedHashMap<>();

    private Slopes(List<Double> byChance) {
      for (Rally rally : rallies) {
        Serve serve = new Serve(rally.side(), ServerNumber.FIRST, rally.server());
        double ofChance = byChance.get(chances.indexOf(serve)) * rally.weight();
        Map<Stage, Double> slopes = new EnumMap<>(Stage.class);
        for (Stage stage : Stage.values()) {
          slopes.put(stage, ofChance * rally.chain().slope(stage));
        }
        byEdge.put(rally, slopes);
      }
    }

    /**
     * By one skill of one player.
     *
     * @param side whose skill
     * @param who which player; a single player is the one who is right at even
     * @param skill the skill
     * @return per logit; 0 or more for A's players, 0 or less for B's
     */
    public double of(Side side, Partner who, Skill skill) {
      double sum = 0;
      for (Map.Entry<Rally, Map<Stage, Double>> rally : byEdge.entrySet()) {
        for (Map.Entry<Stage, Double> stage : rally.getValue().entrySet()) {
          sum += stage.getValue() * part(rally.getKey(), stage.getKey(), side, who, skill);
        }
      }
      return sum;
    }
  }

  /** How much a skill of a player counts in the edge of a stage of a rally. */
  private double part(Rally rally, Stage stage, Side side, Partner who, Skill skill) {
    boolean serves = rally.side() == side;
    StageContest contest = stages.of(stage);
    double weight = (serves ? contest.server() : contest.receiver()).of(skill);
    Partner striker = serves ? rally.server() : rally.returner();
    return (serves ? weight : -weight) * teams.of(side).share(stage, striker, who);
  }
}
