package rallywright.web.progress;

import java.util.List;
import rallywright.engine.club.Player;
import rallywright.engine.practice.Need;
import rallywright.engine.practice.Needs;
import rallywright.engine.practice.SkillWorth;
import rallywright.engine.reading.ClubReading;

/** What a player needs most, the same on every page and in every table. */
final class PlayerNeeds {

  private PlayerNeeds() {}

  /** One need for each skill, the largest first. */
  static List<Need> of(Player player, ClubReading reading, SkillWorth worth) {
    return Needs.of(reading.standing(player.id()), worth).byUrgency();
  }
}
