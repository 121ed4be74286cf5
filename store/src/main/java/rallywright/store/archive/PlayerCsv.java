package rallywright.store.archive;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.jspecify.annotations.Nullable;
import rallywright.engine.club.AgeGroup;
import rallywright.engine.club.Hand;
import rallywright.engine.club.Level;
import rallywright.engine.club.Limit;
import rallywright.engine.club.Player;
import rallywright.engine.club.PlayerId;
import rallywright.engine.club.Standing;

/**
 * A list of players as it is pasted or saved from a spreadsheet: a line of headings, then a player
 * a line, parted by commas, semicolons or tabs. The headings may stand in any order: {@code name}
 * (needed), {@code level}, {@code hand}, {@code limits}, {@code notes}, {@code age group}. Several
 * limits in one cell are parted by semicolons or commas.
 */
public final class PlayerCsv {

  private static final Map<String, Column> HEADINGS = headings();

  private final List<Problem> problems = new ArrayList<>();
  private final List<Line> lines = new ArrayList<>();
  private Map<Column, Integer> places = Map.of();
  private int width;

  private PlayerCsv() {}

  /** What a column holds. */
  private enum Column {
    NAME("name"),
    LEVEL("level"),
    HAND("hand"),
    LIMITS("limits"),
    NOTES("notes"),
    AGE_GROUP("age group");

    private final String heading;

    Column(String heading) {
      this.heading = heading;
    }
  }

  /** What was read. */
  public sealed interface Result {}

  /**
   * Everything is right.
   *
   * @param lines the players in order
   */
  public record Right(List<Line> lines) implements Result {
    /** Copies the list. */
    public Right {
      lines = List.copyOf(lines);
    }
  }

  /**
   * Something is wrong; nothing should be stored.
   *
   * @param problems every wrong cell
   */
  public record Wrong(List<Problem> problems) implements Result {
    /** Copies the list. */
    public Wrong {
      problems = List.copyOf(problems);
    }
  }

  /**
   * One wrong cell.
   *
   * @param line the line, from 1
   * @param column the heading, or empty for the whole line
   * @param seen what stands there
   * @param allowed what may stand there, and what to try
   */
  public record Problem(int line, String column, String seen, String allowed) {

    /** The problem in a sentence. */
    @Override
    public String toString() {
      return "Line "
          + line
          + (column.isEmpty() ? "" : ", " + column)
          + ": \""
          + seen
          + "\"; allowed: "
          + allowed;
    }
  }

  /**
   * One player of the list, before an id is given.
   *
   * @param number the line, from 1
   * @param name the name
   * @param level the coach's estimate, or null
   * @param hand the paddle hand; right where nothing stands
   * @param limits what the player should not be asked to do
   * @param notes the coach's notes
   * @param ageGroup adult where nothing stands
   */
  public record Line(
      int number,
      String name,
      @Nullable Level level,
      Hand hand,
      Set<Limit> limits,
      String notes,
      AgeGroup ageGroup) {

    /** Copies the limits. */
    public Line {
      limits = Set.copyOf(limits);
    }

    /**
     * The player.
     *
     * @param id the new player's id
     * @return an active player of the club
     */
    public Player withId(PlayerId id) {
      return new Player(id, name, level, hand, limits, notes, ageGroup, Standing.ACTIVE);
    }
  }

  /**
   * Reads a list.
   *
   * @param text the list
   * @return the players, or every cell that is wrong
   */
  public static Result read(String text) {
    PlayerCsv reading = new PlayerCsv();
    reading.all(text.startsWith("\uFEFF") ? text.substring(1) : text);
    return reading.problems.isEmpty() ? new Right(reading.lines) : new Wrong(reading.problems);
  }

  private void all(String text) {
    CSVFormat format =
        CSVFormat.RFC4180
            .builder()
            .setDelimiter(delimiter(text))
            .setIgnoreEmptyLines(false)
            .setIgnoreSurroundingSpaces(true)
            .get();
    int start = 1;
    try (CSVParser parser = CSVParser.parse(new StringReader(text), format)) {
      for (CSVRecord record : parser) {
        take(record, start);
        start = (int) parser.getCurrentLineNumber() + 1;
      }
    } catch (IOException | java.io.UncheckedIOException | IllegalStateException problem) {
      add(
          start,
          "",
          "a quotation mark",
          "two of them around a cell. Maybe the closing one is" + " missing.");
    }
    if (problems.isEmpty() && lines.isEmpty()) {
      add(
          start,
          "",
          "no player",
          "a line of headings (" + allHeadings() + ") and then a player a line.");
    }
  }

  private void take(CSVRecord record, int number) {
    if (record.stream().allMatch(String::isBlank)) {
      return;
    }
    if (width == 0) {
      width = record.size();
      places = places(record, number);
    } else if (!places.containsKey(Column.NAME)) {
      return;
    } else if (record.size() > width
        && record.stream().skip(width).anyMatch(cell -> !cell.isBlank())) {
      add(
          number,
          "",
          record.size() + " cells",
          width
              + ", as many as headings. Maybe a text with"
              + " a comma needs quotation marks around it.");
    } else {
      int before = problems.size();
      Line line = line(record, number);
      if (problems.size() == before) {
        lines.add(line);
      }
    }
  }

  private Map<Column, Integer> places(CSVRecord record, int number) {
    Map<Column, Integer> found = new LinkedHashMap<>();
    for (int at = 0; at < record.size(); at++) {
      String heading = record.get(at).strip();
      Column column = HEADINGS.get(heading.toLowerCase(Locale.ROOT));
      if (column == null) {
        add(number, "heading " + (at + 1), heading, allHeadings() + ".");
      } else if (found.putIfAbsent(column, at) != null) {
        add(number, "heading " + (at + 1), heading, "each heading once.");
      }
    }
    if (!found.containsKey(Column.NAME)) {
      add(number, "", record.get(0), "a first line of headings with \"name\" among them.");
    }
    return found;
  }

  private Line line(CSVRecord record, int number) {
    return new Line(
        number,
        name(number, cell(record, Column.NAME)),
        level(number, cell(record, Column.LEVEL)),
        word(number, Column.HAND, cell(record, Column.HAND), Hand.RIGHT, Hand.values()),
        limits(number, cell(record, Column.LIMITS)),
        cell(record, Column.NOTES),
        word(
            number,
            Column.AGE_GROUP,
            cell(record, Column.AGE_GROUP),
            AgeGroup.ADULT,
            AgeGroup.values()));
  }

  private String name(int number, String cell) {
    if (cell.isBlank() || cell.length() > Player.LONGEST_NAME) {
      add(number, "name", cell, "a name of 1 to " + Player.LONGEST_NAME + " characters.");
    }
    return cell;
  }

  private @Nullable Level level(int number, String cell) {
    if (cell.isEmpty()) {
      return null;
    }
    try {
      if (cell.matches("[0-9]{1,2}([.,][0-9]{1,4})?")) {
        return new Level(Double.parseDouble(cell.replace(',', '.')));
      }
    } catch (IllegalArgumentException problem) {
      // Said below, in the words of the list.
    }
    add(number, "level", cell, "a number from 1.0 to 7.0, or nothing. Maybe 3.5.");
    return null;
  }

  private Set<Limit> limits(int number, String cell) {
    Set<Limit> limits = EnumSet.noneOf(Limit.class);
    for (String part : cell.split("[;,]", -1)) {
      Limit limit = part.isBlank() ? null : named(part.strip(), Limit.values(), Limit::words);
      if (limit != null) {
        limits.add(limit);
      } else if (!part.isBlank()) {
        String allowed =
            Arrays.stream(Limit.values()).map(Limit::words).collect(Collectors.joining(", "));
        add(number, "limits", part.strip(), allowed + ". Anything else can stand in the notes.");
      }
    }
    return limits;
  }

  private <E extends Enum<E>> E word(int number, Column column, String cell, E none, E[] all) {
    if (cell.isEmpty()) {
      return none;
    }
    E found = named(cell, all, PlayerCsv::words);
    if (found == null) {
      String allowed = Arrays.stream(all).map(PlayerCsv::words).collect(Collectors.joining(", "));
      add(number, column.heading, cell, allowed + ", or nothing for " + words(none) + ".");
      return none;
    }
    return found;
  }

  private static <E> @Nullable E named(String cell, E[] all, Function<E, String> words) {
    for (E each : all) {
      if (words.apply(each).equalsIgnoreCase(cell)) {
        return each;
      }
    }
    return null;
  }

  private static String words(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT);
  }

  private String cell(CSVRecord record, Column column) {
    Integer at = places.get(column);
    return at == null || at >= record.size() ? "" : SheetText.unguarded(record.get(at).strip());
  }

  private void add(int line, String column, String seen, String allowed) {
    problems.add(new Problem(line, column, seen, allowed));
  }

  /** The sign that parts the headings: the most frequent of the three in the first line. */
  private static char delimiter(String text) {
    String first = text.lines().filter(line -> !line.isBlank()).findFirst().orElse("");
    char best = ',';
    for (char sign : new char[] {';', '\t'}) {
      if (count(first, sign) > count(first, best)) {
        best = sign;
      }
    }
    return best;
  }

  private static long count(String text, char sign) {
    return text.chars().filter(each -> each == sign).count();
  }

  private static String allHeadings() {
    return Arrays.stream(Column.values())
        .map(column -> column.heading)
        .collect(Collectors.joining(", "));
  }

  private static Map<String, Column> headings() {
    return Arrays.stream(Column.values())
        .collect(Collectors.toMap(column -> column.heading, column -> column));
  }
}
