package rallywright.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import rallywright.engine.score.Side;
import rallywright.engine.session.CourtEvent;

class ManyThreadsIT {

  private static final int PHONES = 4;
  private static final int BATCHES = 25;

  @ParameterizedTest
  @EnumSource
  void pagesThatRead_whilePhonesWrite_seeWholeBatchesInOrder(TestDatabase database)
      throws Exception {
    ExecutorService threads = Executors.newFixedThreadPool(PHONES + 3);
    try (ClubStore store = ClubStore.open(database.fresh())) {
      Examples.fill(store);
      int start = store.events().all().size();
      AtomicInteger writing = new AtomicInteger(PHONES);
      List<Future<Integer>> phones = new ArrayList<>();
      for (int phone = 0; phone < PHONES; phone++) {
        phones.add(threads.submit(sendAll(store, "t" + phone + "-", writing)));
      }
      List<Future<Integer>> pages = new ArrayList<>();
      for (int page = 0; page < 3; page++) {
        pages.add(threads.submit(readWhile(store, writing, start)));
      }
      for (Future<Integer> phone : phones) {
        assertThat(phone.get()).isEqualTo(2 * BATCHES);
      }
      for (Future<Integer> page : pages) {
        assertThat(page.get()).isPositive();
      }
      assertThat(store.events().all())
          .hasSize(start + 2 * BATCHES * PHONES)
          .isSortedAccordingTo(java.util.Comparator.comparing(StoredEvent::arrival));
    } finally {
      threads.shutdownNow();
    }
  }

  /** Sends pairs of events, each pair twice. */
  private static Callable<Integer> sendAll(ClubStore store, String prefix, AtomicInteger writing) {
    return () -> {
      int added = 0;
      for (int n = 0; n < BATCHES; n++) {
        List<CourtEvent> pair =
            List.of(
                Examples.rally(prefix + n + "a", Examples.FIRST, Side.A),
                Examples.rally(prefix + n + "b", Examples.FIRST, Side.B));
        added += store.events().append(pair).added();
        added += store.events().append(pair).added();
      }
      writing.decrementAndGet();
      return added;
    };
  }

  /** Follows live; what arrives is never out of order and never half a pair. */
  private static Callable<Integer> readWhile(ClubStore store, AtomicInteger writing, int start) {
    return () -> {
      int reads = 0;
      long last = 0;
      List<Long> seen = new ArrayList<>();
      boolean more = true;
      while (more) {
        more = writing.get() > 0;
        for (StoredEvent stored : store.events().after(Examples.MONDAY, last)) {
          last = stored.arrival();
          seen.add(last);
        }
        assertThat((seen.size() - start) % 2).isZero();
        reads++;
      }
      assertThat(seen).hasSize(start + 2 * BATCHES * PHONES).isSorted();
      return reads;
    };
  }
}
