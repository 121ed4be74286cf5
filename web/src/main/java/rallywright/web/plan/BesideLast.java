package rallywright.web.plan;

import java.time.format.DateTimeFormatter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import rallywright.engine.drill.DrillKey;
import rallywright.engine.plan.PlannedBlock;
import rallywright.web.oncourt.OpenSession;

/** What a plan has that the last session had not, and what it leaves out, in a sentence or two. */
final class BesideLast {

  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("d MMMM", Locale.ENGLISH);

  private BesideLast() {}

  static String words(OpenSession now, OpenSession before) {
    Map<DrillKey, String> here = drills(now);
    Map<DrillKey, String> there = drills(before);
    List<String> fresh = without(here, there);
    List<String> gone = without(there, here);
    String last = "Beside the session of " + DAY.format(before.session().date()) + ", ";
    if (fresh.isEmpty() && gone.isEmpty()) {
      return last + "the drills are the same; the games were weighed anew by its scores.";
    }
    String news = fresh.isEmpty() ? "nothing is new" : "new: " + String.join(", ", fresh);
    String left = gone.isEmpty() ? "" : "; left out: " + String.join(", ", gone);
    return last + news + left + ". Each block says whose need it serves.";
  }

  private static Map<DrillKey, String> drills(OpenSession open) {
    return open.plan().blocks().stream()
        .filter(block -> !block.games().isEmpty())
        .collect(
            Collectors.toMap(
                PlannedBlock::drill, open::title, (first, again) -> first, LinkedHashMap::new));
  }

  private static List<String> without(Map<DrillKey, String> all, Map<DrillKey, String> known) {
    return all.entrySet().stream()
        .filter(each -> !known.containsKey(each.getKey()))
        .map(Map.Entry::getValue)
        .toList();
  }
}
