package rallywright.engine.skill;

import java.util.List;

/**
 * How many rallies, and balls of yardsticks, speak of each skill of each player: a rally counts in
 * a skill with the weight of that skill in the player's role. Of a score without its rallies the
 * points count, as the rallies are not known; where roles follow the serve, half of the rallies
 * count in each role.
 */
public final class RallyCounts {
  /** With fewer rallies in a skill it is too early to tell (assumption of this project). */
  public static final double ENOUGH = 30;

  private final double[][] counts;

  private RallyCounts(double[][] counts) {
    this.counts = counts;
  }

  /**
   * Counts the evidence.
   *
   * @param club the players and skills
   * @param evidence games and yardsticks
   * @return the counts
   */
  public static RallyCounts of(Club club, List<? extends Evidence> evidence) {
    EvidenceCheck.check(club, evidence);
    RallyCounts counts =
        new RallyCounts(new double[club.entrants().size()][club.skills().skills()]);
    for (Evidence piece : evidence) {
      if (piece instanceof YardstickResult result) {
        counts.counts[result.test().player()][result.test().skill()] += result.balls();
      } else if (piece instanceof Game game) {
        counts.add(game);
      }
    }
    return counts;
  }

  private void add(Game game) {
    Contest contest = game.contest();
    boolean mixed = contest.roles() == Contest.Roles.BY_SERVE;
    double own = rallies(game.result()) * (mixed ? 0.5 : 1);
    double other = rallies(game.result()) - own;
    for (int skill = 0; skill < contest.first().skills(); skill++) {
      double first = contest.first().of(skill);
      double second = contest.second().of(skill);
      for (int player : game.sides().a()) {
        counts[player][skill] += own * first + other * second;
      }
      for (int player : game.sides().b()) {
        counts[player][skill] += own * second + other * first;
      }
    }
  }

  /** How many rallies a result tells of, at least. */
  static double rallies(Result result) {
    if (result instanceof RalliesWon won) {
      return won.a() + won.b();
    }
    if (result instanceof RalliesByServer log) {
      return log.aServed() + log.bServed();
    }
    ScorePath path = (ScorePath) result;
    return path.pointsA() + path.pointsB();
  }

  /**
   * The rallies that speak of a skill.
   *
   * @param player number of the player
   * @param skill number of the skill
   * @return 0 or more, weighted
   */
  public double of(int player, int skill) {
    return counts[player][skill];
  }

  /**
   * Whether there are enough to say more than "too early to tell".
   *
   * @param player number of the player
   * @param skill number of the skill
   * @return true from {@value #ENOUGH} weighted rallies on
   */
  public boolean isEnough(int player, int skill) {
    return of(player, skill) >= ENOUGH;
  }
}
