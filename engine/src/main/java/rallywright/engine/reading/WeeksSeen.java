package rallywright.engine.reading;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import rallywright.engine.skill.Evidence;
import rallywright.engine.skill.Game;
import rallywright.engine.skill.YardstickResult;

/** The weeks in which each player left a score. */
final class WeeksSeen {

  private final Map<Integer, Set<Integer>> weeks = new HashMap<>();

  private WeeksSeen() {}

  static WeeksSeen in(List<? extends Evidence> all) {
    WeeksSeen seen = new WeeksSeen();
    for (Evidence evidence : all) {
      if (evidence instanceof YardstickResult result) {
        seen.note(result.test().player(), result.week());
      } else if (evidence instanceof Game game) {
        game.sides().a().forEach(player -> seen.note(player, game.week()));
        game.sides().b().forEach(player -> seen.note(player, game.week()));
      }
    }
    return seen;
  }

  private void note(int player, int week) {
    weeks.computeIfAbsent(player, each -> new TreeSet<>()).add(week);
  }

  /** The weeks of a player, the first one first; a copy to work with. */
  Set<Integer> of(int player) {
    return new TreeSet<>(weeks.getOrDefault(player, Set.of()));
  }
}
