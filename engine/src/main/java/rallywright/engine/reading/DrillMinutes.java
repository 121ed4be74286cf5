package rallywright.engine.reading;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rallywright.engine.club.PlayerId;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.Skill;
import rallywright.engine.drill.SkillWeights;
import rallywright.engine.plan.Seat;
import rallywright.engine.session.SessionId;
import rallywright.engine.skill.Practice;
import rallywright.engine.skill.SkillGroups;
import rallywright.engine.skill.Weights;

/**
 * The minutes of each player in each drill of each session, and on which skills they went: the
 * rallies of the games times the drill's usual seconds, shared out by the weights of the roles.
 */
final class DrillMinutes {

  private record Key(SessionId session, int week, PlayerId player, Drill drill) {}

  private final Map<Key, double[]> minutes = new LinkedHashMap<>();

  /** Adds a game in a week. */
  void add(PlayedGame played, int week) {
    add(played, played.game().game().a(), week);
    add(played, played.game().game().b(), week);
  }

  private void add(PlayedGame played, Seat seat, int week) {
    SkillWeights weights = played.weightsOf(seat);
    for (PlayerId player : seat.players()) {
      double[] bySkill =
          minutes.computeIfAbsent(
              new Key(played.session(), week, player, played.drill()),
              key -> new double[Skill.values().length]);
      for (Skill skill : weights.skills()) {
        bySkill[SkillGroups.numberOf(skill)] += played.minutes() * weights.of(skill);
      }
    }
  }

  /** As the model reads them; drills without a gain are left out. */
  List<Practice> practice(Map<PlayerId, Integer> numbers, ClubEffects effects) {
    List<Practice> all = new ArrayList<>();
    minutes.forEach(
        (key, bySkill) -> {
          Optional<Integer> gain = effects.gain(key.drill().key());
          Integer player = numbers.get(key.player());
          if (gain.isPresent() && player != null) {
            all.add(practice(key.week(), player, gain.get(), bySkill));
          }
        });
    return all;
  }

  private static Practice practice(int week, int player, int gain, double[] bySkill) {
    double sum = 0;
    for (double each : bySkill) {
      sum += each;
    }
    double[] load = new double[bySkill.length];
    for (int skill = 0; skill < load.length; skill++) {
      load[skill] = sum > 0 ? Math.min(1, bySkill[skill] / sum) : 0;
    }
    return new Practice(week, player, gain, Weights.of(load), sum);
  }
}
