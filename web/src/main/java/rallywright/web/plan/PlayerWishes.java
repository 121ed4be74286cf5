package rallywright.web.plan;

import java.time.DateTimeException;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import rallywright.engine.club.Player;
import rallywright.engine.club.PlayerId;
import rallywright.engine.plan.Stay;
import rallywright.web.page.Form;
import rallywright.web.page.FormReader;

/**
 * Who comes late, leaves early, or counts more or less than the others.
 *
 * @param wishes one for each player for whom something is wished
 * @param start when the session starts
 */
record PlayerWishes(List<PlayerWish> wishes, LocalTime start) {

  static final PlayerWishes NONE = new PlayerWishes(List.of(), LocalTime.MIDNIGHT);

  private static final String WHO = "oneWho";
  private static final String COMES = "oneComes";
  private static final String LEAVES = "oneLeaves";
  private static final String COUNTS = "oneCounts";

  PlayerWishes {
    wishes = List.copyOf(wishes);
    start = wishes.isEmpty() ? LocalTime.MIDNIGHT : start;
  }

  PlayerWishes startingAt(LocalTime other) {
    return new PlayerWishes(wishes, other);
  }

  /** How much a player's practice counts beside that of the others. */
  double weight(PlayerId player) {
    return of(player).map(each -> each.counts().weight()).orElse(1.0);
  }

  /** From when to when a player is there. */
  Stay stay(PlayerId player) {
    return of(player).map(each -> each.stay(start)).orElse(Stay.THROUGHOUT);
  }

  private Optional<PlayerWish> of(PlayerId player) {
    return wishes.stream().filter(each -> each.player().equals(player)).findFirst();
  }

  /** Reads the rows of the form; rows without a name are left out. */
  static PlayerWishes read(FormReader in, List<Player> there, LocalTime start) {
    Map<PlayerId, PlayerWish> wishes = new LinkedHashMap<>();
    List<String> names = in.all(WHO);
    for (int row = 0; row < names.size(); row++) {
      String name = names.get(row).strip();
      if (name.isEmpty()) {
        refuseNameless(in, row);
        continue;
      }
      Optional<Player> player = found(in, name, there);
      Optional<LocalTime> comes = time(in, COMES, row, name);
      Optional<LocalTime> leaves = time(in, LEAVES, row, name);
      PlayerWish.Counts counts = counts(at(in, COUNTS, row));
      if (player.isPresent()) {
        PlayerId id = player.get().id();
        PlayerWish wish = new PlayerWish(id, comes, leaves, counts);
        wish.problem(player.get().name(), start).ifPresent(each -> in.problem(WHO, each));
        if (wishes.containsKey(id)) {
          in.problem(WHO, player.get().name() + " stands in two rows. Maybe empty one of them.");
        } else if (!wish.isNothing()) {
          wishes.put(id, wish);
        }
      }
    }
    return new PlayerWishes(new ArrayList<>(wishes.values()), start);
  }

  private static void refuseNameless(FormReader in, int row) {
    if (!at(in, COMES, row).isBlank() || !at(in, LEAVES, row).isBlank()) {
      in.problem(WHO, "A time stands in a row without a name. Maybe say whose it is.");
    }
  }

  private static String at(FormReader in, String field, int row) {
    List<String> all = in.all(field);
    return row < all.size() ? all.get(row).strip() : "";
  }

  private static Optional<Player> found(FormReader in, String name, List<Player> there) {
    List<Player> found =
        there.stream()
            .filter(each -> each.id().value().equals(name) || same(each.name(), name))
            .toList();
    if (found.isEmpty()) {
      found = there.stream().filter(each -> same(each.firstName(), name)).toList();
    }
    if (found.size() != 1) {
      in.problem(
          WHO,
          found.isEmpty()
              ? "\"%s\" is not among those who will be there. Maybe tick the name above first."
                  .formatted(FormReader.echo(name))
              : "%d players are called \"%s\". Maybe write the whole name."
                  .formatted(found.size(), FormReader.echo(name)));
      return Optional.empty();
    }
    return Optional.of(found.get(0));
  }

  private static boolean same(String one, String other) {
    return one.toLowerCase(Locale.ROOT).equals(other.toLowerCase(Locale.ROOT));
  }

  private static Optional<LocalTime> time(FormReader in, String field, int row, String name) {
    String text = at(in, field, row);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(LocalTime.parse(text));
    } catch (DateTimeException unreadable) {
      in.problem(
          WHO,
          "The time at which %s %s (%s) must be a time of day. Maybe 18:45."
              .formatted(
                  FormReader.echo(name),
                  field.equals(COMES) ? "comes" : "leaves",
                  FormReader.echo(text)));
      return Optional.empty();
    }
  }

  private static PlayerWish.Counts counts(String text) {
    return Arrays.stream(PlayerWish.Counts.values())
        .filter(each -> each.name().equals(text))
        .findFirst()
        .orElse(PlayerWish.Counts.USUAL);
  }

  /** As the form shows it; the page puts names in the place of ids. */
  Form shownIn(Form form) {
    return form.with(WHO, column(each -> each.player().value()))
        .with(COMES, column(each -> each.comes().map(LocalTime::toString).orElse("")))
        .with(LEAVES, column(each -> each.leaves().map(LocalTime::toString).orElse("")))
        .with(COUNTS, column(each -> each.counts().name()));
  }

  private String[] column(Function<PlayerWish, String> cell) {
    return wishes.stream().map(cell).toArray(String[]::new);
  }

  /** As it is kept with the session. */
  String text() {
    return wishes.stream().map(PlayerWish::text).collect(Collectors.joining(","));
  }

  static PlayerWishes of(List<String> texts) {
    return new PlayerWishes(
        texts.stream().flatMap(each -> PlayerWish.of(each).stream()).toList(), LocalTime.MIDNIGHT);
  }
}
