package rallywright.web.rotation;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rallywright.engine.club.Player;
import rallywright.engine.club.PlayerId;
import rallywright.web.page.FormReader;

/** Reads pairs of names, one pair a line: "Ada and Bo". */
final class PairLines {

  private static final Pattern BETWEEN = Pattern.compile("\\s*(?:,|\\+|&|\\sand\\s)\\s*");
  private static final int LONGEST = 2000;

  private final List<Player> players;

  /**
   * Reads pairs of these players.
   *
   * @param players who may be named
   */
  PairLines(List<Player> players) {
    this.players = List.copyOf(players);
  }

  /** The pairs of a field; what cannot be read becomes a problem of it. */
  List<List<PlayerId>> read(FormReader in, String field, String what) {
    List<List<PlayerId>> pairs = new ArrayList<>();
    for (String line : in.lines(field, what, LONGEST).split("\n", -1)) {
      if (line.isBlank()) {
        continue;
      }
      String[] names = BETWEEN.split(line.strip(), -1);
      if (names.length != 2) {
        in.problem(
            field,
            "The line \"%s\" must be two names. Maybe \"Ada and Bo\"."
                .formatted(FormReader.echo(line.strip())));
        continue;
      }
      Optional<PlayerId> one = named(in, field, names[0]);
      Optional<PlayerId> other = named(in, field, names[1]);
      if (one.isPresent() && one.equals(other)) {
        in.problem(
            field,
            "The line \"%s\" names one person twice. Maybe one name is a slip."
                .formatted(FormReader.echo(line.strip())));
      } else if (one.isPresent() && other.isPresent()) {
        pairs.add(List.of(one.get(), other.get()));
      }
    }
    return pairs;
  }

  private Optional<PlayerId> named(FormReader in, String field, String name) {
    List<Player> found = matching(name.strip());
    if (found.size() == 1) {
      return Optional.of(found.get(0).id());
    }
    in.problem(
        field,
        found.isEmpty()
            ? "Nobody who is there is called \"%s\". Maybe tick them above, or check the spelling."
                .formatted(FormReader.echo(name.strip()))
            : "%d who are there are called \"%s\". Maybe write the whole name."
                .formatted(found.size(), FormReader.echo(name.strip())));
    return Optional.empty();
  }

  /** By the whole name, else by the first name. */
  private List<Player> matching(String name) {
    List<Player> whole = players.stream().filter(each -> same(each.name(), name)).toList();
    return whole.isEmpty()
        ? players.stream().filter(each -> same(each.firstName(), name)).toList()
        : whole;
  }

  private static boolean same(String one, String other) {
    return one.strip().toLowerCase(Locale.ROOT).equals(other.toLowerCase(Locale.ROOT));
  }

  /** A sentence of the engine, which knows players by their ids, with their names in it. */
  static String named(String sentence, Map<PlayerId, String> names) {
    String named = sentence;
    for (Map.Entry<PlayerId, String> each : names.entrySet()) {
      Pattern id = Pattern.compile("(?<!\\w)" + Pattern.quote(each.getKey().value()) + "(?!\\w)");
      named = id.matcher(named).replaceAll(Matcher.quoteReplacement(each.getValue()));
    }
    return named;
  }
}
