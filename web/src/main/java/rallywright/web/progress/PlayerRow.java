package rallywright.web.progress;

import java.util.List;

/**
 * A player in the table of a group.
 *
 * @param id the player's id
 * @param name the name
 * @param cells for each skill the rallies in ten, from–to, or empty where it is too early to tell
 */
public record PlayerRow(String id, String name, List<String> cells) {}
