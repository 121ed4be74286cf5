package rallywright.web.page;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;

/**
 * What is wrong with a filled-in form: for each field one sentence that says what was seen, what is
 * allowed and what to try. Without a problem the form may be acted on.
 */
public final class FormProblems {

  private static final FormProblems NONE = new FormProblems(Map.of());

  private final Map<String, String> sentences;

  private FormProblems(Map<String, String> sentences) {
    this.sentences = sentences;
  }

  /** No problem. */
  public static FormProblems none() {
    return NONE;
  }

  /** One problem. */
  public static FormProblems of(String field, String sentence) {
    return NONE.with(field, sentence);
  }

  /** These problems and one more; the first sentence of a field stays. */
  public FormProblems with(String field, String sentence) {
    Map<String, String> more = new LinkedHashMap<>(sentences);
    more.putIfAbsent(field, sentence);
    return new FormProblems(Collections.unmodifiableMap(more));
  }

  /** Whether nothing is wrong. */
  public boolean isEmpty() {
    return sentences.isEmpty();
  }

  /** The sentence for a field, empty where the field is right. */
  public String at(String field) {
    return sentences.getOrDefault(field, "");
  }

  /** The fields with a problem, in the order in which they were read. */
  public Set<String> fields() {
    return sentences.keySet();
  }
}
