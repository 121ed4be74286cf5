package rallywright.engine.skill;

import java.util.List;

/**
 * Who and what the model speaks of. Players, skills and effects are known by their number in these
 * lists, from 0.
 *
 * @param skills the skills and their groups
 * @param entrants the players
 * @param effects role advantages, directions and yardstick difficulties
 */
public record Club(SkillGroups skills, List<Entrant> entrants, List<SharedEffect> effects) {
  /** Copies the lists. */
  public Club {
    entrants = List.copyOf(entrants);
    effects = List.copyOf(effects);
  }
}
