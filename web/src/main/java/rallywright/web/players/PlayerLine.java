package rallywright.web.players;

import rallywright.engine.club.Player;

/**
 * One line of the list of players.
 *
 * @param player the player
 * @param groups the names of the player's groups, joined
 * @param came in how many sessions
 */
public record PlayerLine(Player player, String groups, int came) {

  /** The level, or a dash where there is none. */
  public String level() {
    return PlayerChoices.level(player);
  }
}
