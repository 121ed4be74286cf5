package rallywright.web.plan;

import jakarta.annotation.PreDestroy;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import rallywright.store.ClubStore;
import rallywright.store.StoreProblem;

/**
 * Searches for plans beside the pages, one after the other, so that a page can show how far one is
 * and end it. The last few are remembered until the program ends; a plan itself is in the store.
 */
@Component
final class PlanRuns {

  private static final int REMEMBERED = 32;
  private static final int WAITING = 8;
  private static final long SOON_MILLIS = 300;
  private static final long END_SECONDS = 10;

  private final ClubStore store;
  private final Map<String, PlanRun> runs = new LinkedHashMap<>();
  private final ThreadPoolExecutor threads =
      new ThreadPoolExecutor(
          1,
          1,
          0,
          TimeUnit.SECONDS,
          new ArrayBlockingQueue<>(WAITING),
          work -> new Thread(work, "plan search"));

  PlanRuns(ClubStore store) {
    this.store = store;
  }

  /**
   * Begins a search.
   *
   * @param origin where it was asked for
   * @param work searches, tells the watch how far it is, and stores what was found unless stopped
   * @return the search, going on
   */
  PlanRun start(PlanRun.Origin origin, Function<PlanRun, WishPlanner.Outcome> work) {
    PlanRun run = new PlanRun(store.freshId(), origin);
    remember(run);
    try {
      threads.execute(() -> go(run, work));
    } catch (RejectedExecutionException full) {
      run.end(
          WishPlanner.Outcome.refused(
              List.of(
                  "%d plans are being made already. Maybe try again in a minute."
                      .formatted(WAITING + 1))));
    }
    return run;
  }

  /** Why a search found nothing, if that shows before anybody would want to see its progress. */
  List<String> soonRefused(PlanRun run) {
    return run.outcome(SOON_MILLIS).map(WishPlanner.Outcome::refused).orElse(List.of());
  }

  private static void go(PlanRun run, Function<PlanRun, WishPlanner.Outcome> work) {
    try {
      run.end(run.isStopped() ? WishPlanner.Outcome.STOPPED : work.apply(run));
    } catch (StoreProblem refused) {
      run.end(WishPlanner.Outcome.refused(List.of(String.valueOf(refused.getMessage()))));
    } catch (RuntimeException problem) {
      run.fail(problem);
    }
  }

  private synchronized void remember(PlanRun run) {
    runs.put(run.id(), run);
    Iterator<PlanRun> oldest = runs.values().iterator();
    while (runs.size() > REMEMBERED && oldest.hasNext()) {
      oldest.next();
      oldest.remove();
    }
  }

  /** A search that is remembered. */
  synchronized Optional<PlanRun> find(@Nullable String id) {
    return Optional.ofNullable(id == null ? null : runs.get(id));
  }

  /** Ends what goes on, before the store is closed. */
  @PreDestroy
  void end() throws InterruptedException {
    synchronized (this) {
      runs.values().forEach(PlanRun::stop);
    }
    threads.shutdown();
    if (!threads.awaitTermination(END_SECONDS, TimeUnit.SECONDS)) {
      threads.shutdownNow();
    }
  }
}
