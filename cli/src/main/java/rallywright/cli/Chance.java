package rallywright.cli;

import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import rallywright.engine.quantity.Probability;

/** Reads a chance as somebody types it. */
final class Chance {

  private static final String NUMBER = "\\+?(\\d+\\.?\\d*|\\.\\d+)([eE][-+]?\\d{1,3})?";

  private Chance() {}

  static Probability one(String name, @Nullable String typed) {
    List<Probability> chances = oneOrTwo(name, typed == null ? "" : typed);
    if (chances.size() != 1) {
      throw wrong(name, typed, "one number from 0 to 1", "0.5, with a point");
    }
    return chances.get(0);
  }

  static List<Probability> oneOrTwo(String name, String typed) {
    String[] parts = typed.split(",", -1);
    if (parts.length > 2) {
      throw wrong(name, typed, "one number from 0 to 1, or two", "0.50,0.40");
    }
    return Arrays.stream(parts).map(part -> number(name, typed, part.strip())).toList();
  }

  private static Probability number(String name, String typed, String part) {
    if (!part.matches(NUMBER)) {
      throw wrong(name, typed, "a number from 0 to 1", "0.45 for 45 %");
    }
    double value = Double.parseDouble(part);
    if (!(value <= 1)) {
      if (typed.matches("0,\\d+")) {
        throw wrong(
            name, typed, "a number from 0 to 1", typed.replace(',', '.') + ", with a point");
      }
      String percent = value <= 100 ? "%s".formatted(value / 100) : "0.5";
      throw wrong(name, typed, "a number from 0 to 1", percent);
    }
    return Probability.of(value);
  }

  private static WrongInput wrong(
      String name, @Nullable String typed, String allowed, String hint) {
    return new WrongInput(
        "The chance %s (%s) must be %s. Maybe %s.".formatted(name, typed, allowed, hint));
  }
}
