package rallywright.paper;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import rallywright.engine.club.Player;
import rallywright.engine.club.PlayerId;
import rallywright.engine.club.Standing;

/**
 * The names that others may see: first names only, told apart by one letter where two are equal.
 *
 * <p>The letter is the initial of the rest of the name if that tells all of them apart ("Ana B.",
 * "Ana K."), else a letter in the order of the list ("Ana (a)", "Ana (b)").
 */
public final class FirstNames {

  private static final String NOBODY = "?";

  private final Map<PlayerId, String> names;

  private FirstNames(Map<PlayerId, String> names) {
    this.names = names;
  }

  /**
   * The first names of these players.
   *
   * @param players who may be named, in the order in which letters are given
   * @return the names
   */
  public static FirstNames of(Collection<Player> players) {
    Map<String, List<Player>> sameName = new LinkedHashMap<>();
    for (Player player : players) {
      String key = shown(player).toLowerCase(Locale.ROOT);
      sameName.computeIfAbsent(key, unused -> new ArrayList<>()).add(player);
    }
    Map<PlayerId, String> names = new HashMap<>();
    sameName.values().forEach(group -> nameAll(group, names));
    return new FirstNames(names);
  }

  /**
   * The name of a player.
   *
   * @param player who is asked for
   * @return the name, or a question mark for somebody who was not in the list
   */
  public String of(PlayerId player) {
    return names.getOrDefault(player, NOBODY);
  }

  /**
   * The names of some players.
   *
   * @param players who is asked for
   * @return for example "Ana, Ben"
   */
  public String listed(List<PlayerId> players) {
    return String.join(", ", players.stream().map(this::of).toList());
  }

  private static void nameAll(List<Player> group, Map<PlayerId, String> names) {
    if (group.size() == 1) {
      Player only = group.get(0);
      names.put(only.id(), PrintableText.of(shown(only)));
      return;
    }
    List<String> initials = group.stream().map(FirstNames::initialOfTheRest).toList();
    boolean initialsTellApart =
        initials.stream().distinct().count() == group.size() && !initials.contains("");
    for (int place = 0; place < group.size(); place++) {
      String letter =
          initialsTellApart ? initials.get(place) + "." : "(" + letterInOrder(place) + ")";
      Player player = group.get(place);
      names.put(player.id(), PrintableText.of(shown(player)) + " " + letter);
    }
  }

  /** The first name; of somebody who was erased, the words that stand in its place. */
  private static String shown(Player player) {
    return player.standing() == Standing.ERASED ? player.name().strip() : player.firstName();
  }

  private static String initialOfTheRest(Player player) {
    String rest = player.name().strip().substring(shown(player).length()).strip();
    return rest.isEmpty()
        ? ""
        : new String(Character.toChars(rest.codePointAt(0))).toUpperCase(Locale.ROOT);
  }

  private static String letterInOrder(int place) {
    int letters = 26;
    String last = String.valueOf((char) ('a' + place % letters));
    return place < letters ? last : letterInOrder(place / letters - 1) + last;
  }
}
