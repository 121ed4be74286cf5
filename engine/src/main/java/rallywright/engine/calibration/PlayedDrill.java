package rallywright.engine.calibration;

import java.util.List;
import java.util.random.RandomGenerator;
import rallywright.engine.skill.Contest;
import rallywright.engine.skill.Weights;

/**
 * A scored drill of an invented season.
 *
 * @param first weights of its first role
 * @param second weights of its other role; the same where both do the same
 * @param roles who has the first role
 * @param advantage number of its role advantage among the shared effects; −1 for an even drill
 * @param directions numbers of the effects of its directions; empty where it has none
 */
record PlayedDrill(
    Weights first, Weights second, Contest.Roles roles, int advantage, List<Integer> directions) {
  PlayedDrill {
    directions = List.copyOf(directions);
  }

  static PlayedDrill even(Weights weights) {
    return new PlayedDrill(weights, weights, Contest.Roles.BY_SIDE, -1, List.of());
  }

  boolean isEven() {
    return advantage < 0;
  }

  /** The contest, in a direction chosen by lot where there are several. */
  Contest contest(RandomGenerator random) {
    if (isEven()) {
      return Contest.even(first);
    }
    List<Integer> effects =
        directions.isEmpty()
            ? List.of(advantage)
            : List.of(advantage, directions.get(random.nextInt(directions.size())));
    return new Contest(first, second, roles, effects);
  }

  /** How practice is shared out where a player spends half of it in each role. */
  Weights load() {
    double[] load = new double[first.skills()];
    for (int skill = 0; skill < load.length; skill++) {
      load[skill] = (first.of(skill) + second.of(skill)) / 2;
    }
    return Weights.of(load);
  }
}
