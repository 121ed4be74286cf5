package rallywright.store.json;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import tools.jackson.core.JacksonException;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** The fields of one JSON object, taken one by one; a field that nobody takes is refused. */
public final class JsonFields {

  private static final JsonMapper MAPPER =
      JsonMapper.builder()
          .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .build();

  private final JsonNode object;
  private final String path;
  private final Set<String> taken = new HashSet<>();

  private JsonFields(JsonNode object, String path) {
    this.object = object;
    this.path = path;
  }

  /**
   * The fields of a text.
   *
   * @param text one JSON object
   * @return its fields
   * @throws WrongJson if the text is no JSON object; the field then names the column
   */
  public static JsonFields of(String text) {
    try {
      return object(MAPPER.readTree(text), "");
    } catch (JacksonException problem) {
      long column = problem.getLocation() == null ? 1 : problem.getLocation().getColumnNr();
      throw new WrongJson("character " + column, "This is not JSON: " + firstLine(problem) + ".");
    }
  }

  /** An empty object to be written. */
  static ObjectNode fresh() {
    return MAPPER.createObjectNode();
  }

  /**
   * Reads one value from all the fields of a text and refuses what is left over.
   *
   * @param text one JSON object
   * @param reading takes the fields
   * @param <T> what is read
   * @return the value
   * @throws WrongJson if the text does not say what it should
   */
  public static <T> T read(String text, Function<JsonFields, T> reading) {
    return of(text).all(reading);
  }

  /** Reads one value and refuses fields that were not taken; ranges become errors of this path. */
  <T> T all(Function<JsonFields, T> reading) {
    T value = checked("", () -> reading.apply(this));
    for (String name : object.propertyNames()) {
      if (!taken.contains(name)) {
        throw new WrongJson(
            at(name),
            "The field \"" + at(name) + "\" is not known here. Maybe a newer program wrote it.");
      }
    }
    return value;
  }

  /**
   * A text.
   *
   * @param name the field
   * @return its text
   */
  public String text(String name) {
    JsonNode value = there(name);
    if (!value.isString()) {
      throw wrong(name, value, "a text");
    }
    return value.stringValue();
  }

  /**
   * A text that may be missing or null.
   *
   * @param name the field
   * @return its text, if it is there
   */
  public Optional<String> maybeText(String name) {
    return isThere(name) ? Optional.of(text(name)) : Optional.empty();
  }

  /**
   * A text made into a value.
   *
   * @param name the field
   * @param making from text to value; what it refuses becomes an error of this field
   * @param <T> the type of the value
   * @return the value
   */
  public <T> T made(String name, Function<String, T> making) {
    String text = text(name);
    return checked(name, () -> making.apply(text));
  }

  /**
   * A text that may be missing, made into a value.
   *
   * @param name the field
   * @param making from text to value
   * @param <T> the type of the value
   * @return the value, if the field is there
   */
  public <T> Optional<T> maybeMade(String name, Function<String, T> making) {
    return isThere(name) ? Optional.of(made(name, making)) : Optional.empty();
  }

  /**
   * A list of texts made into values.
   *
   * @param name the field
   * @param making from text to value
   * @param <T> the type of the values
   * @return the values in order
   */
  public <T> List<T> madeList(String name, Function<String, T> making) {
    return texts(there(name), name, making);
  }

  /** A list of lists of texts made into values. */
  /** A list that may be missing: then it is empty. */
  <T> List<T> maybeMadeList(String name, Function<String, T> making) {
    return isThere(name) ? madeList(name, making) : List.of();
  }

  <T> List<List<T>> madeLists(String name, Function<String, T> making) {
    JsonNode outer = list(name);
    List<List<T>> lists = new ArrayList<>();
    for (JsonNode inner : outer.values()) {
      lists.add(texts(inner, name + "[" + lists.size() + "]", making));
    }
    return lists;
  }

  /**
   * A whole number.
   *
   * @param name the field
   * @return the number
   */
  public int whole(String name) {
    JsonNode value = there(name);
    if (!value.isIntegralNumber() || !value.canConvertToInt()) {
      throw wrong(name, value, "a whole number");
    }
    return value.intValue();
  }

  /**
   * A long whole number.
   *
   * @param name the field
   * @return the number
   */
  public long wholeLong(String name) {
    JsonNode value = there(name);
    if (!value.isIntegralNumber() || !value.canConvertToLong()) {
      throw wrong(name, value, "a whole number");
    }
    return value.longValue();
  }

  /** A whole number that may be missing. */
  OptionalInt maybeWhole(String name) {
    return isThere(name) ? OptionalInt.of(whole(name)) : OptionalInt.empty();
  }

  /**
   * A long whole number that may be missing.
   *
   * @param name the field
   * @return the number, if it is there
   */
  OptionalLong maybeWholeLong(String name) {
    return isThere(name) ? OptionalLong.of(wholeLong(name)) : OptionalLong.empty();
  }

  /**
   * A number.
   *
   * @param name the field
   * @return the number
   */
  public double number(String name) {
    JsonNode value = there(name);
    if (!value.isNumber()) {
      throw wrong(name, value, "a number");
    }
    return value.doubleValue();
  }

  /**
   * A number that may be missing or null.
   *
   * @param name the field
   * @return the number, if it is there
   */
  public OptionalDouble maybeNumber(String name) {
    return isThere(name) ? OptionalDouble.of(number(name)) : OptionalDouble.empty();
  }

  /**
   * One of the names of an enum.
   *
   * @param name the field
   * @param kind the enum
   * @param <E> the enum's type
   * @return the constant
   */
  public <E extends Enum<E>> E oneOf(String name, Class<E> kind) {
    return oneOf(name, text(name), kind);
  }

  /**
   * One of the names of an enum, if the field is there.
   *
   * @param name the field
   * @param kind the enum
   * @param <E> the enum's type
   * @return the constant, if the field is there
   */
  public <E extends Enum<E>> Optional<E> maybeOneOf(String name, Class<E> kind) {
    return maybeText(name).map(text -> oneOf(name, text, kind));
  }

  /**
   * A list of names of an enum.
   *
   * @param name the field
   * @param kind the enum
   * @param <E> the enum's type
   * @return the constants in order
   */
  public <E extends Enum<E>> List<E> listOf(String name, Class<E> kind) {
    return madeList(name, text -> oneOf(name, text, kind));
  }

  /**
   * An object inside this one.
   *
   * @param name the field
   * @param reading takes its fields
   * @param <T> what is read
   * @return the value
   */
  public <T> T inner(String name, Function<JsonFields, T> reading) {
    return object(there(name), at(name)).all(reading);
  }

  /** A value whose range is checked in making it; what it refuses becomes an error of the field. */
  <T> T ranged(String name, Supplier<T> making) {
    return checked(name, making);
  }

  /** An object inside this one that may be missing or null. */
  <T> Optional<T> maybeInner(String name, Function<JsonFields, T> reading) {
    return isThere(name) ? Optional.of(inner(name, reading)) : Optional.empty();
  }

  /** A list of objects. */
  <T> List<T> inners(String name, Function<JsonFields, T> reading) {
    List<T> values = new ArrayList<>();
    for (JsonNode each : list(name).values()) {
      values.add(object(each, at(name) + "[" + values.size() + "]").all(reading));
    }
    return values;
  }

  /** Checks the version of the mapping. */
  void version(int known) {
    int seen = whole("v");
    if (seen < 1 || seen > known) {
      throw new WrongJson(
          at("v"),
          "The version ("
              + seen
              + ") must be from 1 to "
              + known
              + ". Maybe a newer Rallywright wrote it; update this one.");
    }
  }

  private <E extends Enum<E>> E oneOf(String name, String text, Class<E> kind) {
    for (E each : kind.getEnumConstants()) {
      if (each.name().equals(text)) {
        return each;
      }
    }
    String allowed =
        String.join(", ", Arrays.stream(kind.getEnumConstants()).map(Enum::name).toList());
    throw new WrongJson(
        at(name), "The field \"" + at(name) + "\" is \"" + text + "\"; allowed: " + allowed + ".");
  }

  private <T> List<T> texts(JsonNode list, String name, Function<String, T> making) {
    if (!list.isArray()) {
      throw wrong(name, list, "a list");
    }
    List<T> values = new ArrayList<>();
    for (JsonNode each : list.values()) {
      if (!each.isString()) {
        throw wrong(name + "[" + values.size() + "]", each, "a text");
      }
      values.add(checked(name, () -> making.apply(each.stringValue())));
    }
    return values;
  }

  private JsonNode list(String name) {
    JsonNode value = there(name);
    if (!value.isArray()) {
      throw wrong(name, value, "a list");
    }
    return value;
  }

  private boolean isThere(String name) {
    taken.add(name);
    JsonNode value = object.get(name);
    return value != null && !value.isNull();
  }

  private JsonNode there(String name) {
    taken.add(name);
    JsonNode value = object.get(name);
    if (value == null || value.isNull()) {
      throw new WrongJson(at(name), "The field \"" + at(name) + "\" is missing.");
    }
    return value;
  }

  private <T> T checked(String name, Supplier<T> making) {
    try {
      return making.get();
    } catch (WrongJson problem) {
      throw problem;
    } catch (IllegalArgumentException | java.time.DateTimeException problem) {
      throw new WrongJson(at(name), String.valueOf(problem.getMessage()));
    }
  }

  private WrongJson wrong(String name, JsonNode seen, String allowed) {
    return new WrongJson(
        at(name), "The field \"" + at(name) + "\" is " + seen + "; allowed: " + allowed + ".");
  }

  private String at(String name) {
    if (path.isEmpty()) {
      return name;
    }
    return name.isEmpty() ? path : path + "." + name;
  }

  private static JsonFields object(JsonNode node, String path) {
    if (!node.isObject()) {
      throw new WrongJson(
          path,
          (path.isEmpty() ? "The text" : "The field \"" + path + "\"") + " must be an object.");
    }
    return new JsonFields(node, path);
  }

  private static String firstLine(JacksonException problem) {
    return problem.getOriginalMessage().lines().findFirst().orElse("no reason given");
  }
}
