package rallywright.web.sessions;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.annotation.AnnotationConfigApplicationContext;
import rallywright.web.page.Later;

/** The first court sheet of a run is set beside the pages, once the program is ready. */
class FirstSheetTest {

  private static final long PATIENCE_SECONDS = 20;

  @Test
  void readyProgram_setsOneSheet_andNotBefore() throws Exception {
    CountDownLatch set = new CountDownLatch(1);
    try (AnnotationConfigApplicationContext context = new AnnotationConfigApplicationContext()) {
      context.registerBean(
          FirstSheet.class, () -> new FirstSheet(new Later(), Duration.ZERO, set::countDown));
      context.refresh();
      assertThat(set.getCount()).isEqualTo(1);
      context.publishEvent(ready(context));
      assertThat(set.await(PATIENCE_SECONDS, TimeUnit.SECONDS)).isTrue();
    }
  }

  @Test
  void usualPause_leavesTheFirstPagesTheProcessor() throws Exception {
    new FirstSheet(new Later()).setLater();
    Thread waiting =
        Thread.getAllStackTraces().keySet().stream()
            .filter(thread -> thread.getName().equals("first sheet") && thread.isAlive())
            .findFirst()
            .orElseThrow();
    waiting.join(100);
    assertThat(waiting.isAlive()).isTrue();
    assertThat(waiting.getStackTrace())
        .extracting(StackTraceElement::getMethodName)
        .contains("sleep");
    waiting.interrupt();
    waiting.join(TimeUnit.SECONDS.toMillis(PATIENCE_SECONDS));
    assertThat(waiting.isAlive()).isFalse();
  }

  private static ApplicationReadyEvent ready(AnnotationConfigApplicationContext context) {
    return new ApplicationReadyEvent(
        new SpringApplication(), new String[0], context, Duration.ZERO);
  }
}
