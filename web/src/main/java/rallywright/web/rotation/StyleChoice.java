package rallywright.web.rotation;

import java.util.LinkedHashMap;
import java.util.Map;
import rallywright.engine.rotation.DayStyle;

/** The styles of a day in a coach's words. */
final class StyleChoice {

  private StyleChoice() {}

  static Map<String, String> all() {
    Map<String, String> words = new LinkedHashMap<>();
    for (DayStyle style : DayStyle.values()) {
      words.put(style.name(), words(style));
    }
    return words;
  }

  static String words(DayStyle style) {
    return switch (style) {
      case NEW_PARTNERS -> "New partners and opponents every round";
      case LADDER -> "A ladder: winners go up a court, losers down";
      case FIXED_PAIRS -> "Fixed pairs, each plays each, with a table";
      case MIXED -> "Couples: everybody plays with and against the others";
    };
  }
}
