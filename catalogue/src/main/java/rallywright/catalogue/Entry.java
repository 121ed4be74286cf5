package rallywright.catalogue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;
import rallywright.engine.quantity.Length;

/**
 * One entry of a drill file: what stands there, where it stands, and what it is called in messages.
 *
 * @param file the name of the file
 * @param name what the entry is called, for example {@code sides[1].stands}
 * @param node what stands there
 */
record Entry(String file, String name, Node node) {

  /** Feet and inches, or metres; the unit is always named. */
  private static final Pattern LENGTH =
      Pattern.compile(
          "(?:(?<feet>\\d{1,3}(?:\\.\\d+)?) ft)?(?: ?(?<inches>\\d{1,3}(?:\\.\\d+)?) in)?"
              + "|(?<metres>\\d{1,3}(?:\\.\\d+)?) m");

  private static final Pattern NUMBER = Pattern.compile("[-+]?\\d{1,6}(\\.\\d{1,9})?");

  private static final Pattern WHOLE = Pattern.compile("\\d{1,6}");

  DrillFileProblem problem(String sentence) {
    return DrillFileProblem.at(file, node.getStartMark(), sentence);
  }

  /** Makes a value of this entry; what the value refuses is told at this place. */
  <T> T make(Supplier<T> value) {
    try {
      return value.get();
    } catch (IllegalArgumentException refused) {
      String sentence = refused.getMessage();
      throw problem(sentence == null ? "\"" + name + "\" is not allowed here." : sentence);
    }
  }

  String text() {
    if (node instanceof ScalarNode scalar) {
      return scalar.getValue();
    }
    throw problem(
        "\"%s\" must be a text, but %s stands here. Maybe write it on one line."
            .formatted(name, form()));
  }

  double number() {
    String text = text();
    if (!NUMBER.matcher(text).matches()) {
      throw problem(
          "\"%s\" must be a number such as 0.4, but is \"%s\". Maybe a unit or a comma slipped in."
              .formatted(name, text));
    }
    return Double.parseDouble(text);
  }

  int whole() {
    String text = text();
    if (!WHOLE.matcher(text).matches()) {
      throw problem(
          "\"%s\" must be a whole number such as 5, but is \"%s\". Maybe leave out the decimals."
              .formatted(name, text));
    }
    return Integer.parseInt(text);
  }

  Length length() {
    String text = text();
    Matcher match = LENGTH.matcher(text);
    if (text.isBlank() || !match.matches()) {
      throw problem(
          "\"%s\" must be a length with its unit, but is \"%s\". Maybe 7 ft 6 in, 7.5 ft or 2.3 m."
              .formatted(name, text));
    }
    OptionalDouble metres = part(match, "metres");
    if (metres.isPresent()) {
      return Length.metres(metres.getAsDouble());
    }
    return Length.feet(part(match, "feet").orElse(0))
        .plus(Length.inches(part(match, "inches").orElse(0)));
  }

  private static OptionalDouble part(Matcher match, String group) {
    String digits = match.group(group);
    return digits == null ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(digits));
  }

  <E extends Enum<E>> E choice(Class<E> type) {
    String text = text();
    List<String> allowed = Choice.words(type);
    return Choice.of(type, text)
        .orElseThrow(
            () ->
                problem(
                    "\"%s\" is \"%s\", but must be one of: %s. %s"
                        .formatted(
                            name, text, String.join(", ", allowed), Choice.maybe(text, allowed))));
  }

  List<Entry> entries() {
    if (!(node instanceof SequenceNode sequence)) {
      throw problem(
          "\"%s\" must be a list, but %s stands here. Maybe put it in square brackets: [one, two]."
              .formatted(name, form()));
    }
    List<Entry> entries = new ArrayList<>();
    for (Node each : sequence.getValue()) {
      entries.add(new Entry(file, "%s[%d]".formatted(name, entries.size() + 1), each));
    }
    return entries;
  }

  List<String> texts() {
    return entries().stream().map(Entry::text).toList();
  }

  boolean isList() {
    return node instanceof SequenceNode;
  }

  String form() {
    if (node instanceof MappingNode) {
      return "a block of entries";
    }
    return node instanceof SequenceNode ? "a list" : "a single value";
  }
}
