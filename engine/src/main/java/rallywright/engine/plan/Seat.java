package rallywright.engine.plan;

import java.util.List;
import rallywright.engine.club.PlayerId;
import rallywright.engine.drill.Role;

/**
 * One side of a game: who plays it and in which role.
 *
 * @param role the role
 * @param players one player on a lane, two partners in doubles
 */
public record Seat(Role role, List<PlayerId> players) {

  /** Checks that one or two different players are named. */
  public Seat {
    players = List.copyOf(players);
    if (players.isEmpty()
        || players.size() > 2
        || players.stream().distinct().count() != players.size()) {
      throw new IllegalArgumentException(
          "A side has one player or two different partners, but " + players + " was named.");
    }
  }
}
