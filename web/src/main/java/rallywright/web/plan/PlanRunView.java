package rallywright.web.plan;

import java.util.List;
import java.util.Optional;
import rallywright.engine.plan.SearchWatch;

/**
 * A search for a plan as its page shows it.
 *
 * @param id the id of the search
 * @param percent how many in 100 of its steps are done
 * @param words the progress in words
 * @param best the drills of the best plan so far
 */
public record PlanRunView(String id, long percent, String words, List<String> best) {

  static PlanRunView of(PlanRun run) {
    Optional<SearchWatch.Progress> heard = run.heard();
    return new PlanRunView(
        run.id(),
        heard.map(each -> Math.round(100 * each.done())).orElse(0L),
        heard
            .map(SearchWatch.Progress::words)
            .orElse("Reading the scores and weighing the drills."),
        heard.map(PlanRunView::best).orElse(List.of()));
  }

  private static List<String> best(SearchWatch.Progress progress) {
    return progress.best().stream()
        .map(
            each ->
                "%s, %s: %d %s"
                    .formatted(
                        each.drill().name(),
                        each.line().words(),
                        each.rounds(),
                        each.rounds() == 1 ? "round" : "rounds"))
        .toList();
  }
}
