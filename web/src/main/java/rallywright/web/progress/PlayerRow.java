package rallywright.web.progress;

import java.util.List;

/**
 * A player in the table of a group.
 *
 * @param id the player's id
 * @param name the name
 * @param cells for each skill the rallies in ten, from–to, or empty where it is too early to tell
 * @param load what this week's sessions asked of the player, "–" where nothing was rated
 */
public record PlayerRow(String id, String name, List<String> cells, String load) {}
