package rallywright.engine.reading;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rallywright.engine.club.PlayerId;
import rallywright.engine.drill.Skill;
import rallywright.engine.drill.SkillWeights;
import rallywright.engine.plan.Seat;

/**
 * Minutes that each player spent on each skill, by week: the rallies of a game times the drill's
 * usual seconds, shared out by the skills' weights in the role.
 */
final class PracticeLog {

  private record Key(PlayerId player, Skill skill, int weeksAgo) {}

  private final Map<Key, Double> minutes = new HashMap<>();
  private final int longest;

  private PracticeLog(int longest) {
    this.longest = longest;
  }

  static PracticeLog of(List<PlayedGame> games, Weeks weeks, int thisWeek) {
    PracticeLog log = new PracticeLog(thisWeek);
    for (PlayedGame played : games) {
      int weeksAgo = thisWeek - weeks.of(played.date());
      log.add(played, played.game().game().a(), weeksAgo);
      log.add(played, played.game().game().b(), weeksAgo);
    }
    return log;
  }

  private void add(PlayedGame played, Seat seat, int weeksAgo) {
    SkillWeights weights = played.weightsOf(seat);
    for (PlayerId player : seat.players()) {
      for (Skill skill : weights.skills()) {
        minutes.merge(
            new Key(player, skill, weeksAgo), played.minutes() * weights.of(skill), Double::sum);
      }
    }
  }

  /** Minutes by week, this week first. */
  List<Double> minutesByWeek(PlayerId player, Skill skill) {
    List<Double> byWeek = new ArrayList<>();
    for (int weeksAgo = 0; weeksAgo <= longest; weeksAgo++) {
      byWeek.add(minutes.getOrDefault(new Key(player, skill, weeksAgo), 0.0));
    }
    return byWeek;
  }
}
