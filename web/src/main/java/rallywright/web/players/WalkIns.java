package rallywright.web.players;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import rallywright.engine.club.AgeGroup;
import rallywright.engine.club.Hand;
import rallywright.engine.club.Player;
import rallywright.engine.club.PlayerId;
import rallywright.engine.club.Standing;
import rallywright.store.ClubStore;
import rallywright.web.page.FormReader;

/** People who turn up and are not on the list: a name is enough. */
public final class WalkIns {

  private static final int LONGEST_LIST = 400;

  private WalkIns() {}

  /**
   * Reads names with commas between them; nobody is stored yet.
   *
   * @param in the form
   * @param field the field with the names
   * @param store the club, whose names are taken
   * @return a new walk-in for each name that is free
   */
  public static List<Player> read(FormReader in, String field, ClubStore store) {
    List<Player> walkIns = new ArrayList<>();
    Set<String> taken = new HashSet<>();
    store.players().all().forEach(player -> taken.add(folded(player.name())));
    for (String part : in.line(field, "The walk-ins", LONGEST_LIST).split(",", -1)) {
      String name = part.strip();
      if (!name.isEmpty() && !taken.add(folded(name))) {
        in.problem(
            field,
            "There is already a player named \"%s\". Maybe tick the name in the list."
                .formatted(FormReader.echo(name)));
      } else if (!name.isEmpty()) {
        Player fresh = in.built(field, () -> named(name, store));
        if (fresh != null) {
          walkIns.add(fresh);
        }
      }
    }
    return walkIns;
  }

  /**
   * A new walk-in, not stored yet.
   *
   * @param name what they are called
   * @param store the club, which gives the id
   * @return the walk-in
   * @throws IllegalArgumentException if the name cannot be a name
   */
  public static Player named(String name, ClubStore store) {
    return new Player(
        new PlayerId(store.freshId()),
        name,
        null,
        Hand.RIGHT,
        Set.of(),
        "",
        AgeGroup.ADULT,
        Standing.WALK_IN);
  }

  private static String folded(String name) {
    return name.strip().toLowerCase(Locale.ROOT);
  }
}
