package rallywright.engine.skill;

import java.util.List;

/**
 * Who and what the model speaks of. Players, skills and effects are known by their number in these
 * lists, from 0.
 *
 * @param skills the skills and their groups
 * @param entrants the players
 * @param effects role advantages, directions and yardstick difficulties
 * @param gains what an effective minute of each drill brings, in logits; see {@link Practice}
 */
public record Club(
    SkillGroups skills,
    List<Entrant> entrants,
    List<SharedEffect> effects,
    List<SharedEffect> gains) {
  /** Copies the lists. */
  public Club {
    entrants = List.copyOf(entrants);
    effects = List.copyOf(effects);
    gains = List.copyOf(gains);
  }

  /**
   * A club of which no practice is recorded.
   *
   * @param skills the skills and their groups
   * @param entrants the players
   * @param effects role advantages, directions and yardstick difficulties
   */
  public Club(SkillGroups skills, List<Entrant> entrants, List<SharedEffect> effects) {
    this(skills, entrants, effects, List.of());
  }
}
