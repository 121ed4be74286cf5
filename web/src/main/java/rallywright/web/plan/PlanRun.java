package rallywright.web.plan;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.jspecify.annotations.Nullable;
import rallywright.engine.plan.SearchWatch;
import rallywright.web.page.Form;

/** One search for a plan: how far it is, what was found so far, and what the coach says of it. */
final class PlanRun implements SearchWatch {

  private final String id;
  private final Origin origin;
  private final CompletableFuture<WishPlanner.Outcome> outcome = new CompletableFuture<>();
  private volatile Order order = Order.GO_ON;
  private volatile @Nullable Progress heard;

  /**
   * Where a search was asked for, and where its mistakes are shown.
   *
   * @param page the address of the page with the wishes
   * @param form what stood in its fields
   * @param done what the plan's page says when the plan is there
   */
  record Origin(String page, Form form, String done) {}

  private enum Order {
    GO_ON,
    TAKE_BEST,
    STOP
  }

  PlanRun(String id, Origin origin) {
    this.id = id;
    this.origin = origin;
  }

  String id() {
    return id;
  }

  Origin origin() {
    return origin;
  }

  @Override
  public Verdict hear(Progress progress) {
    heard = progress;
    return order == Order.GO_ON ? Verdict.GO_ON : Verdict.STOP;
  }

  /** The last that was heard; empty before the first round of the search is done. */
  Optional<Progress> heard() {
    return Optional.ofNullable(heard);
  }

  /** Ends the search; the best plan so far is taken. */
  void takeBest() {
    order = order == Order.STOP ? order : Order.TAKE_BEST;
  }

  /** Ends the search; nothing is stored. */
  void stop() {
    order = Order.STOP;
  }

  boolean isStopped() {
    return order == Order.STOP;
  }

  void end(WishPlanner.Outcome ended) {
    outcome.complete(ended);
  }

  void fail(Throwable problem) {
    outcome.completeExceptionally(problem);
  }

  /**
   * What became of the search.
   *
   * @param patienceMillis how long to wait for its end
   * @return empty while it goes on
   * @throws IllegalStateException if the search failed
   */
  Optional<WishPlanner.Outcome> outcome(long patienceMillis) {
    try {
      return Optional.of(outcome.get(patienceMillis, TimeUnit.MILLISECONDS));
    } catch (TimeoutException stillRunning) {
      return Optional.empty();
    } catch (InterruptedException ended) {
      Thread.currentThread().interrupt();
      return Optional.empty();
    } catch (ExecutionException failed) {
      throw new IllegalStateException("The search for a plan failed", failed.getCause());
    }
  }

  /** Why no plan was made, as far as that is known now. */
  List<String> refused() {
    return outcome(0).map(WishPlanner.Outcome::refused).orElse(List.of());
  }
}
