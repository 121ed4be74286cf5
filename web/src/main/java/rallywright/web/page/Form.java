package rallywright.web.page;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A form as a page shows it: what stands in its fields and what is wrong with it. After a mistake
 * the page shows the same form again with everything that was entered.
 */
public final class Form {

  private final Map<String, List<String>> values;
  private final FormProblems problems;

  private Form(Map<String, List<String>> values, FormProblems problems) {
    this.values = values;
    this.problems = problems;
  }

  /** A form with nothing in it. */
  public static Form empty() {
    return new Form(Map.of(), FormProblems.none());
  }

  /** A form with these values and problems. */
  public static Form of(Map<String, List<String>> values, FormProblems problems) {
    return new Form(Map.copyOf(values), problems);
  }

  /** This form with other text in one field. */
  public Form with(String field, String... texts) {
    Map<String, List<String>> changed = new LinkedHashMap<>(values);
    changed.put(field, List.of(texts));
    return new Form(changed, problems);
  }

  /** This form with one problem more. */
  public Form withProblem(String field, String sentence) {
    return new Form(values, problems.with(field, sentence));
  }

  /** What stands in a field, empty where nothing does. */
  public String value(String field) {
    List<String> texts = values.getOrDefault(field, List.of());
    return texts.isEmpty() ? "" : texts.get(0);
  }

  /** Everything that stands in a field that can stand more than once. */
  public List<String> values(String field) {
    return values.getOrDefault(field, List.of());
  }

  /** Whether one of several choices is taken. */
  public boolean has(String field, String choice) {
    return values.getOrDefault(field, List.of()).contains(choice);
  }

  /** The sentence for a field, empty where the field is right. */
  public String problem(String field) {
    return problems.at(field);
  }

  /** What is wrong. */
  public FormProblems problems() {
    return problems;
  }

  /** The ids of the sentences that describe a field, or null where there is none. */
  public @Nullable String describedBy(String field, String hint) {
    String ids =
        (hint.isEmpty() ? "" : field + "-hint")
            + (problem(field).isEmpty() ? "" : " " + field + "-error");
    return ids.isBlank() ? null : ids.strip();
  }

  /** "true" where a field is wrong, else null, for the attribute that says so. */
  public @Nullable String invalid(String field) {
    return problem(field).isEmpty() ? null : "true";
  }
}
