package rallywright.web.players;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rallywright.engine.club.Level;
import rallywright.engine.club.Limit;
import rallywright.engine.club.Player;
import rallywright.engine.club.Venue;
import rallywright.store.ErasedGames;

/** What the forms of this part offer, and how a player's facts are written. */
public final class PlayerChoices {

  private PlayerChoices() {}

  /** The paddle hands. */
  public static Map<String, String> hands() {
    return PlayerForm.hands();
  }

  /** The limits. */
  public static Map<String, String> limits() {
    return PlayerForm.limits();
  }

  /** What happens to the games of somebody who is erased. */
  public static Map<String, String> games() {
    Map<String, String> offered = new LinkedHashMap<>();
    offered.put(ErasedGames.KEEP.name(), "stay, with a nameless player");
    offered.put(ErasedGames.REMOVE.name(), "go too, for everybody in them");
    return offered;
  }

  /** Indoors or outdoors. */
  public static Map<String, String> settings() {
    Map<String, String> offered = new LinkedHashMap<>();
    offered.put(Venue.Setting.OUTDOOR.name(), "outdoors");
    offered.put(Venue.Setting.INDOOR.name(), "indoors");
    return offered;
  }

  /** The level, or a dash where there is none. */
  public static String level(Player player) {
    Level level = player.level();
    return level == null ? "–" : String.valueOf(level.value());
  }

  /** Limits and notes in one line. */
  public static String remarks(Player player) {
    List<String> remarks = new ArrayList<>();
    player.limits().stream().sorted().map(Limit::words).forEach(remarks::add);
    if (!player.notes().isEmpty()) {
      remarks.add(player.notes());
    }
    return String.join("; ", remarks);
  }
}
