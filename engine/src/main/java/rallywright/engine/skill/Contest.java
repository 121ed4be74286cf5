package rallywright.engine.skill;

import java.util.List;
import rallywright.engine.score.Side;

/**
 * What is contested in a rally of a drill: logit P(the first role wins) = effects + first·θ −
 * second·θ′.
 *
 * @param first weights of the first role: the back player of a drop game, or the server
 * @param second weights of the other role
 * @param roles who has the first role
 * @param effects numbers of the shared effects that are added; none in an even drill, where A and B
 *     are only names
 */
public record Contest(Weights first, Weights second, Roles roles, List<Integer> effects) {
  /** Who has the first role. */
  public enum Roles {
    /** Side A, in every rally. */
    BY_SIDE,
    /** The side that serves the rally. */
    BY_SERVE
  }

  /** Copies the list and checks that both roles speak of the same skills. */
  public Contest {
    effects = List.copyOf(effects);
    if (first.skills() != second.skills()) {
      throw new IllegalArgumentException(
          "The roles weigh "
              + first.skills()
              + " and "
              + second.skills()
              + " skills; both must weigh all skills. Maybe a weight of 0 was left out.");
    }
  }

  /**
   * A drill in which both do the same.
   *
   * @param weights of both roles
   * @return the contest, without any effect
   */
  public static Contest even(Weights weights) {
    return new Contest(weights, weights, Roles.BY_SIDE, List.of());
  }

  /**
   * The logit of the chance that the side that serves wins the rally; in a drill with roles by side
   * that is the first role when A serves, and its opposite when B does.
   *
   * @param sides who plays
   * @param week in which week
   * @param server who serves
   * @return the logit as a sum over skills and effects
   */
  public SkillSum serverEdge(Sides sides, int week, Side server) {
    boolean firstIsA = roles == Roles.BY_SIDE || server == Side.A;
    List<Integer> firsts = firstIsA ? sides.a() : sides.b();
    List<Integer> seconds = firstIsA ? sides.b() : sides.a();
    SkillSum.Builder sum = SkillSum.builder();
    effects.forEach(effect -> sum.plusEffect(1, effect));
    addSide(sum, first, firsts, week, 1);
    addSide(sum, second, seconds, week, -1);
    return roles == Roles.BY_SIDE && server == Side.B ? sum.build().negated() : sum.build();
  }

  private static void addSide(
      SkillSum.Builder sum, Weights weights, List<Integer> players, int week, double sign) {
    for (int player : players) {
      for (int skill = 0; skill < weights.skills(); skill++) {
        double weight = sign * weights.of(skill) / players.size();
        if (weight != 0) {
          sum.plusSkill(weight, new SkillSum.Key(player, skill, week));
        }
      }
    }
  }
}
