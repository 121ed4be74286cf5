package rallywright.engine.skill;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;

/**
 * What practice adds to the skills of each player: for each gain γ a vector over the skills, the
 * effective minutes times the load, by week.
 */
final class Drift {
  private final int skills;
  private final List<TreeMap<Integer, TreeMap<Integer, double[]>>> byPlayer = new ArrayList<>();

  private Drift(int players, int skills) {
    this.skills = skills;
    for (int player = 0; player < players; player++) {
      byPlayer.add(new TreeMap<>());
    }
  }

  static Drift of(Club club, List<? extends Evidence> evidence) {
    Drift drift = new Drift(club.entrants().size(), club.skills().skills());
    for (Evidence piece : evidence) {
      if (piece instanceof Practice practice && practice.minutes() > 0) {
        drift.add(practice);
      }
    }
    return drift;
  }

  private void add(Practice practice) {
    double[] sum =
        byPlayer
            .get(practice.player())
            .computeIfAbsent(practice.week(), week -> new TreeMap<>())
            .computeIfAbsent(practice.gain(), gain -> new double[skills]);
    for (int skill = 0; skill < skills; skill++) {
      sum[skill] += practice.effectiveMinutes() * practice.load().of(skill);
    }
  }

  /** By gain, what a player practised from one week until before another: minutes by skill. */
  NavigableMap<Integer, double[]> between(int player, int from, int until) {
    TreeMap<Integer, double[]> sums = new TreeMap<>();
    if (from < until) {
      byPlayer
          .get(player)
          .subMap(from, until)
          .values()
          .forEach(week -> week.forEach((gain, minutes) -> add(sums, gain, minutes)));
    }
    return sums;
  }

  private void add(Map<Integer, double[]> sums, int gain, double[] minutes) {
    double[] sum = sums.computeIfAbsent(gain, each -> new double[skills]);
    for (int skill = 0; skill < skills; skill++) {
      sum[skill] += minutes[skill];
    }
  }
}
