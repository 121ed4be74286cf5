package rallywright.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tools.jackson.databind.JsonNode;

/** A place in a JSON file: its path for people, and what stands there. */
final class JsonField {

  /** Longer values are cut in messages, so that an answer stays one line. */
  private static final int LONGEST_SEEN = 40;

  private final String path;
  private final JsonNode node;

  private JsonField(String path, JsonNode node) {
    this.path = path;
    this.node = node;
  }

  static JsonField root(JsonNode node) {
    return new JsonField("", node);
  }

  /** The field of an object that must be there. */
  JsonField field(String name) {
    return optional(name)
        .orElseThrow(
            () ->
                new WrongInput(
                    "%s is missing. Maybe it is spelled differently: the fields here are %s."
                        .formatted(pathOf(name), node.propertyNames())));
  }

  /** The field of an object, empty if it is absent or null. */
  Optional<JsonField> optional(String name) {
    if (!node.isObject()) {
      throw wrong("an object { … }", "a bracket is missing before it");
    }
    JsonNode found = node.get(name);
    return found == null || found.isNull()
        ? Optional.empty()
        : Optional.of(new JsonField(pathOf(name), found));
  }

  private String pathOf(String name) {
    return path.isEmpty() ? name : path + "." + name;
  }

  /** The fields of an object by name; any name but these is refused. */
  Map<String, JsonField> fields(List<String> allowed) {
    if (!node.isObject()) {
      throw wrong("an object { … }", "a bracket is missing before it");
    }
    Map<String, JsonField> fields = new LinkedHashMap<>();
    node.forEachEntry((name, value) -> fields.put(name, new JsonField(pathOf(name), value)));
    for (String name : fields.keySet()) {
      if (!allowed.contains(name)) {
        throw new WrongInput(
            "%s is not known; the fields here are %s. Maybe it is spelled differently."
                .formatted(pathOf(name), allowed));
      }
    }
    return fields;
  }

  /** The elements of a list that may be absent. */
  List<JsonField> list(String name) {
    return optional(name).map(JsonField::elements).orElse(List.of());
  }

  List<JsonField> elements() {
    if (!node.isArray()) {
      throw wrong("a list [ … ]", "square brackets around it are missing");
    }
    List<JsonField> elements = new ArrayList<>();
    for (JsonNode element : node) {
      elements.add(new JsonField(path + "[" + elements.size() + "]", element));
    }
    return elements;
  }

  /** The elements of a list of a given length. */
  List<JsonField> elements(int count) {
    List<JsonField> elements = elements();
    if (elements.size() != count) {
      throw new WrongInput(
          "%s has %d entries; %d are needed. Maybe a 0 was left out."
              .formatted(path, elements.size(), count));
    }
    return elements;
  }

  boolean isNull() {
    return node.isNull();
  }

  boolean isObject() {
    return node.isObject();
  }

  boolean isList() {
    return node.isArray();
  }

  int integer(int from, int to) {
    return integer(from, to, "numbers count from 0");
  }

  /** A whole number, with what to try where it is wrong. */
  int integer(int from, int to, String maybe) {
    if (!node.isIntegralNumber()
        || !node.canConvertToInt()
        || node.asInt() < from
        || node.asInt() > to) {
      throw wrong("a whole number from %d to %d".formatted(from, to), maybe);
    }
    return node.asInt();
  }

  double number(double from, double to) {
    double value = node.isNumber() ? node.asDouble() : Double.NaN;
    if (!(value >= from && value <= to)) {
      throw wrong("a number from %s to %s".formatted(from, to), "quotes or a sign slipped in");
    }
    return value;
  }

  boolean flag() {
    if (!node.isBoolean()) {
      throw wrong("true or false", "quotes slipped in");
    }
    return node.asBoolean();
  }

  String text() {
    if (!node.isString()) {
      throw wrong("a text in quotes", "the quotes are missing");
    }
    return node.asString();
  }

  /** A text that must be one of a few. */
  String oneOf(List<String> allowed) {
    if (!node.isString() || !allowed.contains(node.asString())) {
      throw wrong("one of " + allowed, allowed.get(0));
    }
    return node.asString();
  }

  /** What is wrong here: what was seen, what is allowed, what to try. */
  WrongInput wrong(String allowed, String maybe) {
    String seen = node.toString();
    String cut = seen.length() > LONGEST_SEEN ? seen.substring(0, LONGEST_SEEN) + "…" : seen;
    return new WrongInput(
        "%s is %s; it must be %s. Maybe %s."
            .formatted(path.isEmpty() ? "The file" : path, cut, allowed, maybe));
  }

  /** A refusal of the engine, with the place that caused it. */
  WrongInput refused(IllegalArgumentException refusal) {
    return new WrongInput(path + ": " + refusal.getMessage());
  }
}
