package rallywright.web.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

/** Work that is done beside the pages of a fresh program. */
class LaterTest {

  private static final long PATIENCE_SECONDS = 20;

  private final Later later = new Later();

  @Test
  void work_isDoneInAThreadOfItsName_thatLetsTheProgramEnd() throws Exception {
    CompletableFuture<Thread> worker = new CompletableFuture<>();
    later.run("a look ahead", Duration.ZERO, () -> worker.complete(Thread.currentThread()));
    Thread thread = worker.get(PATIENCE_SECONDS, TimeUnit.SECONDS);
    assertThat(thread).isNotSameAs(Thread.currentThread());
    assertThat(thread.getName()).isEqualTo("a look ahead");
    assertThat(thread.isDaemon()).isTrue();
  }

  @Test
  void work_beginsAfterThePause_andNotBefore() throws Exception {
    CompletableFuture<Long> began = new CompletableFuture<>();
    long asked = System.nanoTime();
    later.run("later", Duration.ofMillis(60), () -> began.complete(System.nanoTime()));
    long waited = began.get(PATIENCE_SECONDS, TimeUnit.SECONDS) - asked;
    assertThat(Duration.ofNanos(waited)).isGreaterThanOrEqualTo(Duration.ofMillis(60));
  }

  @Test
  void work_thatGoesWrong_endsItsOwnThreadAlone() throws Exception {
    CompletableFuture<Thread> worker = new CompletableFuture<>();
    CompletableFuture<Throwable> uncaught = new CompletableFuture<>();
    later.run(
        "goes wrong",
        Duration.ZERO,
        () -> {
          Thread.currentThread()
              .setUncaughtExceptionHandler((who, what) -> uncaught.complete(what));
          worker.complete(Thread.currentThread());
          throw new IllegalStateException("nobody asked yet");
        });
    worker
        .get(PATIENCE_SECONDS, TimeUnit.SECONDS)
        .join(TimeUnit.SECONDS.toMillis(PATIENCE_SECONDS));
    assertThat(uncaught).isNotDone();
  }

  @Test
  void work_thatHasNotBegunWhenTheProgramEnds_isNotDone() throws Exception {
    CompletableFuture<Boolean> done = new CompletableFuture<>();
    later.run("not begun", Duration.ofHours(1), () -> done.complete(true));
    Thread waiting =
        Thread.getAllStackTraces().keySet().stream()
            .filter(thread -> thread.getName().equals("not begun"))
            .findFirst()
            .orElseThrow();
    later.end();
    waiting.join(TimeUnit.SECONDS.toMillis(PATIENCE_SECONDS));
    assertThat(waiting.isAlive()).isFalse();
    assertThat(done).isNotDone();
  }
}
