package rallywright.web.page;

import jakarta.servlet.http.HttpServletRequest;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Reads a posted form field by field and collects what is wrong with it. Nothing is thrown for a
 * mistake of the person who filled it in; act on the values only when {@link #failed} is false, and
 * otherwise show {@link #form} again.
 */
public final class FormReader {

  private static final Pattern NUMBER = Pattern.compile("[+-]?\\d{1,9}(\\.\\d{1,9})?");
  private static final Pattern WHOLE = Pattern.compile("[+-]?\\d{1,9}");
  private static final int LONGEST_ECHO = 40;

  private final Map<String, List<String>> values;
  private FormProblems problems = FormProblems.none();

  private FormReader(Map<String, List<String>> values) {
    this.values = values;
  }

  /** Reads the fields of a request. */
  public static FormReader of(HttpServletRequest request) {
    Map<String, List<String>> values = new LinkedHashMap<>();
    request.getParameterMap().forEach((name, texts) -> values.put(name, List.of(texts)));
    return new FormReader(values);
  }

  /** A line of text that must be there. */
  public String text(String field, String what, int longest) {
    String text = line(field, what, longest);
    if (text.isEmpty() && problems.at(field).isEmpty()) {
      problem(field, what + " is empty; it needs 1 to " + longest + " characters.");
    }
    return text;
  }

  /** A line of text that may be empty. */
  public String line(String field, String what, int longest) {
    String text = raw(field).strip();
    checkLength(field, what, text, longest);
    text.chars()
        .filter(Character::isISOControl)
        .findFirst()
        .ifPresent(
            code ->
                problem(
                    field,
                    "%s holds a character that cannot be shown (code %d). Maybe type it anew."
                        .formatted(what, code)));
    return text;
  }

  /** Text of several lines, which may be empty. Line ends become single newlines. */
  public String lines(String field, String what, int longest) {
    String text = raw(field).replace("\r\n", "\n").replace('\r', '\n').strip();
    checkLength(field, what, text, longest);
    if (text.chars().anyMatch(code -> Character.isISOControl(code) && code != 10 && code != 9)) {
      problem(field, what + " holds a character that cannot be shown. Maybe type it anew.");
    }
    return text;
  }

  /** A number that may be missing; a comma is taken as the decimal sign. */
  public OptionalDouble number(String field, AllowedNumber allowed) {
    String text = raw(field).strip().replace('−', '-').replace(',', '.');
    if (text.isEmpty()) {
      return OptionalDouble.empty();
    }
    if (NUMBER.matcher(text).matches() && allowed.allows(Double.parseDouble(text))) {
      return OptionalDouble.of(Double.parseDouble(text));
    }
    problem(field, allowed.refuses(echo(raw(field).strip())));
    return OptionalDouble.empty();
  }

  /** A whole number that may be missing. */
  public OptionalInt whole(String field, AllowedNumber allowed) {
    String text = raw(field).strip().replace('−', '-');
    if (text.isEmpty()) {
      return OptionalInt.empty();
    }
    if (WHOLE.matcher(text).matches() && allowed.allows(Double.parseDouble(text))) {
      return OptionalInt.of(Integer.parseInt(text));
    }
    problem(field, allowed.refusesWhole(echo(raw(field).strip())));
    return OptionalInt.empty();
  }

  /** A whole number that must be there; the least allowed one stands in after a mistake. */
  public int neededWhole(String field, AllowedNumber allowed) {
    if (raw(field).isBlank()) {
      problem(field, allowed.refusesWhole("empty"));
    }
    return whole(field, allowed).orElse((int) allowed.least());
  }

  /** A day that must be there; null after a mistake. */
  public @Nullable LocalDate day(String field) {
    String text = raw(field).strip();
    try {
      return LocalDate.parse(text);
    } catch (DateTimeException unreadable) {
      problem(
          field,
          "The day (%s) must be written as year-month-day. Maybe 2026-03-31."
              .formatted(text.isEmpty() ? "empty" : echo(text)));
      return null;
    }
  }

  /** One of the constants of an enum by its name; a missing field takes the fallback. */
  public <E extends Enum<E>> E choice(String field, String what, E fallback) {
    String text = raw(field).strip();
    if (text.isEmpty()) {
      return fallback;
    }
    return named(text, fallback.getDeclaringClass())
        .orElseGet(
            () -> {
              problem(field, notOffered(what, text));
              return fallback;
            });
  }

  /** Several constants of an enum by their names. */
  public <E extends Enum<E>> List<E> choices(String field, String what, Class<E> kind) {
    List<E> taken = new ArrayList<>();
    for (String text : all(field)) {
      named(text, kind).ifPresentOrElse(taken::add, () -> problem(field, notOffered(what, text)));
    }
    return taken;
  }

  /** A value whose own check may refuse what was entered; its sentence becomes the problem. */
  public <T> @Nullable T built(String field, Supplier<T> maker) {
    try {
      return maker.get();
    } catch (IllegalArgumentException refused) {
      String message = refused.getMessage();
      problem(field, message == null ? "This is not allowed here." : message);
      return null;
    }
  }

  /** Every text that was sent for a field. */
  public List<String> all(String field) {
    return values.getOrDefault(field, List.of());
  }

  /** What was entered in a field, untouched. */
  public String raw(String field) {
    List<String> texts = all(field);
    return texts.isEmpty() ? "" : texts.get(0);
  }

  /** Whether a tick is set. */
  public boolean ticked(String field) {
    return !all(field).isEmpty();
  }

  /** Notes a problem. */
  public void problem(String field, String sentence) {
    problems = problems.with(field, sentence);
  }

  /** Whether anything is wrong, so that nothing may be stored. */
  public boolean failed() {
    return !problems.isEmpty();
  }

  /** The form as it was filled in, with its problems. */
  public Form form() {
    return Form.of(values, problems);
  }

  /** What was entered, cut to a length that fits into a sentence. */
  public static String echo(String entered) {
    return entered.length() <= LONGEST_ECHO ? entered : entered.substring(0, LONGEST_ECHO) + "…";
  }

  private void checkLength(String field, String what, String text, int longest) {
    if (text.length() > longest) {
      problem(
          field,
          "%s: %d characters are too many; at most %d are allowed. Maybe shorten it."
              .formatted(what, text.length(), longest));
    }
  }

  private static String notOffered(String what, String seen) {
    return what + " (" + echo(seen) + ") is not one of those offered. Maybe load the page again.";
  }

  private static <E extends Enum<E>> Optional<E> named(String text, Class<E> kind) {
    return Arrays.stream(kind.getEnumConstants())
        .filter(constant -> constant.name().equals(text))
        .findFirst();
  }
}
