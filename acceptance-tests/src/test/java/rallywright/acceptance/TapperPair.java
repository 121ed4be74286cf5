package rallywright.acceptance;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;

/** Two real pages in two profiles, tapped in turn by one hand of their own. */
final class TapperPair implements AutoCloseable {

  /** The driver of a browser may be used by one thread only. */
  private final ExecutorService hand = Executors.newSingleThreadExecutor();

  private final List<CourtTapper> tappers = new ArrayList<>();
  private final Browsers browsers;
  private volatile boolean going;
  private Future<?> tapping = java.util.concurrent.CompletableFuture.completedFuture(null);

  TapperPair() throws Exception {
    browsers = byHand(Browsers::new);
    byHand(
        () -> {
          for (int lane = 1; lane <= 2; lane++) {
            tappers.add(new CourtTapper(browsers.phone(), lane));
          }
          return true;
        });
  }

  /** Opens a session on both. */
  void open(String address, String session, String key) throws Exception {
    byHand(
        () -> {
          tappers.forEach(tapper -> tapper.open(address, session, key));
          return true;
        });
  }

  /** Taps from now on. */
  void begin() {
    going = true;
    tapping =
        hand.submit(
            () -> {
              while (going) {
                tappers.forEach(CourtTapper::score);
              }
            });
  }

  /** Taps no more; everything is home when this returns. */
  void end() throws Exception {
    going = false;
    tapping.get();
    byHand(
        () -> {
          tappers.forEach(CourtTapper::waitUntilHome);
          return true;
        });
  }

  /** How many entries each made in this session, by what it calls itself. */
  Map<String, Integer> made() throws Exception {
    return byHand(
        () -> {
          Map<String, Integer> all = new TreeMap<>();
          tappers.forEach(tapper -> all.put(tapper.name(), tapper.made()));
          return all;
        });
  }

  /** The ids that the server said it has. */
  List<String> acknowledged() throws Exception {
    return byHand(
        () -> tappers.stream().flatMap(tapper -> tapper.acknowledged().stream()).toList());
  }

  private <T> T byHand(Callable<T> step) throws InterruptedException {
    try {
      return hand.submit(step).get();
    } catch (ExecutionException failed) {
      throw new IllegalStateException(failed.getCause());
    }
  }

  @Override
  public void close() {
    going = false;
    hand.execute(browsers::close);
    hand.shutdown();
    try {
      if (!hand.awaitTermination(1, TimeUnit.MINUTES)) {
        throw new IllegalStateException("The browser does not end.");
      }
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
    }
  }
}
