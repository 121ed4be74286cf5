package rallywright.engine.reading;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import rallywright.engine.club.Player;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.DrillKey;
import rallywright.engine.drill.Yardstick;
import rallywright.engine.session.SessionProgress;

/**
 * All that a club knows of its players on a day.
 *
 * @param players every player who ever played, also archived and erased ones, in a fixed order
 * @param drills the drills that were or can be played
 * @param yardsticks the yardsticks
 * @param sessions the sessions with what happened in them, in any order
 * @param today the day for which is asked
 */
public record ClubHistory(
    List<Player> players,
    List<Drill> drills,
    List<Yardstick> yardsticks,
    List<SessionProgress> sessions,
    LocalDate today) {

  /** Copies the lists and refuses two drills or players of one name. */
  public ClubHistory {
    players = List.copyOf(players);
    drills = List.copyOf(drills);
    yardsticks = List.copyOf(yardsticks);
    sessions = List.copyOf(sessions);
    refuseTwins("players", players, Player::id);
    refuseTwins("drills", drills, Drill::key);
    refuseTwins("yardsticks", yardsticks, Yardstick::key);
  }

  private static <T> void refuseTwins(String what, List<T> all, Function<T, Object> name) {
    if (all.stream().map(name).collect(Collectors.toSet()).size() < all.size()) {
      throw new IllegalArgumentException("Two of the " + what + " carry the same name or id.");
    }
  }

  /** The drill of a key, if it is known. */
  Optional<Drill> drill(DrillKey key) {
    return drills.stream().filter(each -> each.key().equals(key)).findFirst();
  }
}
