package rallywright.catalogue;

import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The words that a drill file may use for one thing, and the one that was probably meant. */
final class Choice {

  /** A word is taken for a slip of another if at most a third of its letters differ, at least 2. */
  private static final int LEAST_SLIPS = 2;

  private Choice() {}

  /** The word for a value in a file: its name in lower case with hyphens. */
  static String word(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  static <E extends Enum<E>> List<String> words(Class<E> type) {
    return Arrays.stream(type.getEnumConstants()).map(Choice::word).toList();
  }

  static <E extends Enum<E>> Optional<E> of(Class<E> type, String word) {
    return Arrays.stream(type.getEnumConstants())
        .filter(value -> word(value).equals(word))
        .findFirst();
  }

  /** A sentence that starts with "Maybe", or the first allowed word as an example. */
  static String maybe(String seen, Collection<String> allowed) {
    String closest = allowed.iterator().next();
    int fewest = Integer.MAX_VALUE;
    for (String word : allowed) {
      int slips = slips(seen.toLowerCase(Locale.ROOT).replace(' ', '-'), word);
      if (slips < fewest) {
        fewest = slips;
        closest = word;
      }
    }
    boolean likely = fewest <= Math.max(LEAST_SLIPS, closest.length() / 3);
    return likely
        ? "Maybe \"%s\" was meant.".formatted(closest)
        : "Maybe \"%s\".".formatted(allowed.iterator().next());
  }

  /** How many letters must be put in, taken out or changed (Levenshtein). */
  private static int slips(String a, String b) {
    int[] row = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      row[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int diagonal = row[0];
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int above = row[j];
        int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        row[j] = Math.min(Math.min(row[j] + 1, row[j - 1] + 1), diagonal + change);
        diagonal = above;
      }
    }
    return row[b.length()];
  }
}
