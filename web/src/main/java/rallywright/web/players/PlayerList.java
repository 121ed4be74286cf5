package rallywright.web.players;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import rallywright.engine.club.AgeGroup;
import rallywright.engine.club.Hand;
import rallywright.engine.club.Level;
import rallywright.engine.club.Limit;
import rallywright.engine.club.Player;
import rallywright.engine.club.PlayerId;
import rallywright.engine.club.Standing;
import rallywright.web.page.FormReader;

/** The players that a sheet names, and everything that is wrong with it by line and column. */
final class PlayerList {

  private static final Pattern LIMIT_SIGNS = Pattern.compile("[,;/]");
  private static final List<String> YES = List.of("yes", "y", "junior", "x", "true");
  private static final List<String> NO = List.of("", "no", "n", "adult", "false");

  private final Supplier<String> freshId;
  private final Set<String> taken = new HashSet<>();
  private final List<Player> players = new ArrayList<>();
  private final List<PlayerSheet.Problem> problems = new ArrayList<>();

  private PlayerList(Supplier<String> freshId) {
    this.freshId = freshId;
  }

  /** Reads a sheet; names that the club has already are refused. */
  static PlayerList read(String text, List<Player> club, Supplier<String> freshId) {
    PlayerList list = new PlayerList(freshId);
    club.stream()
        .filter(each -> each.standing() != Standing.ERASED)
        .forEach(each -> list.taken.add(key(each.name())));
    PlayerSheet.Cut cut = PlayerSheet.cut(text);
    list.problems.addAll(cut.problems());
    cut.rows().forEach(list::read);
    if (cut.rows().isEmpty() && cut.problems().isEmpty()) {
      list.problems.add(
          new PlayerSheet.Problem(
              1, "", "There is no player in it. Write a line for each, the name first."));
    }
    return list;
  }

  List<Player> players() {
    return List.copyOf(players);
  }

  List<PlayerSheet.Problem> problems() {
    return List.copyOf(problems);
  }

  private void read(PlayerSheet.Row row) {
    int before = problems.size();
    String name = name(row);
    Level level = level(row);
    Hand hand = hand(row);
    Set<Limit> limits = limits(row);
    String notes = row.cell("notes");
    if (notes.length() > PlayerForm.LONGEST_NOTES) {
      problem(
          row,
          "notes",
          "The notes have %d characters; at most %d are taken. Maybe shorten them."
              .formatted(notes.length(), PlayerForm.LONGEST_NOTES));
    }
    AgeGroup age = age(row);
    if (problems.size() == before) {
      players.add(
          new Player(
              new PlayerId(freshId.get()), name, level, hand, limits, notes, age, Standing.ACTIVE));
    }
  }

  private String name(PlayerSheet.Row row) {
    String name = row.cell("name");
    if (name.isEmpty() || name.length() > Player.LONGEST_NAME) {
      problem(
          row,
          "name",
          "The name has %d characters; it needs 1 to %d."
              .formatted(name.length(), Player.LONGEST_NAME));
    } else if (name.chars().anyMatch(Character::isISOControl)) {
      problem(row, "name", "The name holds a line break or another sign that cannot be shown.");
    } else if (!taken.add(key(name))) {
      problem(
          row,
          "name",
          "\"%s\" is there already, in the club or in a line above. Maybe add a letter."
              .formatted(FormReader.echo(name)));
    }
    return name;
  }

  private @Nullable Level level(PlayerSheet.Row row) {
    String cell = row.cell("level");
    if (cell.isEmpty()) {
      return null;
    }
    try {
      return new Level(Double.parseDouble(cell.replace(',', '.')));
    } catch (IllegalArgumentException wrong) {
      problem(
          row,
          "level",
          "The level (%s) must be a number from 1 to 7. Maybe 3.5; leave it empty where unknown."
              .formatted(FormReader.echo(cell)));
      return null;
    }
  }

  private Hand hand(PlayerSheet.Row row) {
    String cell = row.cell("hand").toLowerCase(Locale.ROOT);
    if (cell.isEmpty()) {
      return Hand.RIGHT;
    }
    return Arrays.stream(Hand.values())
        .filter(hand -> hand.words().equals(cell) || hand.words().substring(0, 1).equals(cell))
        .findFirst()
        .orElseGet(
            () -> {
              problem(
                  row,
                  "hand",
                  "The hand (%s) must be right, left or both. Leave it empty for right."
                      .formatted(FormReader.echo(cell)));
              return Hand.RIGHT;
            });
  }

  private Set<Limit> limits(PlayerSheet.Row row) {
    Set<Limit> limits = EnumSet.noneOf(Limit.class);
    for (String part : LIMIT_SIGNS.splitAsStream(row.cell("limits")).toList()) {
      String words = part.strip().toLowerCase(Locale.ROOT);
      if (!words.isEmpty()) {
        Arrays.stream(Limit.values())
            .filter(limit -> limit.words().equals(words))
            .findFirst()
            .ifPresentOrElse(
                limits::add,
                () ->
                    problem(
                        row,
                        "limits",
                        ("The limit \"%s\" is not known; allowed are: %s, parted by a slash."
                                + " Other things go into the notes.")
                            .formatted(
                                FormReader.echo(words),
                                String.join(", ", PlayerForm.limits().values()))));
      }
    }
    return limits;
  }

  private AgeGroup age(PlayerSheet.Row row) {
    String cell = row.cell("junior").toLowerCase(Locale.ROOT);
    if (!YES.contains(cell) && !NO.contains(cell)) {
      problem(row, "junior", "Junior (%s) must be yes or no.".formatted(FormReader.echo(cell)));
    }
    return YES.contains(cell) ? AgeGroup.JUNIOR : AgeGroup.ADULT;
  }

  private void problem(PlayerSheet.Row row, String column, String sentence) {
    problems.add(new PlayerSheet.Problem(row.line(), column, sentence));
  }

  private static String key(String name) {
    return name.strip().toLowerCase(Locale.ROOT);
  }
}
