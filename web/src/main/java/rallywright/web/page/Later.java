package rallywright.web.page;

import jakarta.annotation.PreDestroy;
import java.time.Duration;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.springframework.stereotype.Component;

/**
 * Work of a fresh program that nobody has asked for yet: done beside the pages, so that the first
 * coach who asks does not wait for it. What goes wrong here is told to whoever asks. What has not
 * begun when the program ends is left out.
 */
@Component
public final class Later {

  /** The system property that leaves this work out where it says {@code none}. */
  static final String WORK_AHEAD = "rallywright.work-ahead";

  private static final System.Logger LOG = System.getLogger(Later.class.getName());

  private final Set<Thread> threads = ConcurrentHashMap.newKeySet();

  /**
   * Does something once, in a thread that ends with the program.
   *
   * @param name what it is, for whoever looks at the threads
   * @param pause how long the first pages have the processor for themselves
   * @param work what to do
   */
  public void run(String name, Duration pause, Runnable work) {
    if (System.getProperty(WORK_AHEAD, "").equals("none")) {
      return;
    }
    Thread thread = new Thread(() -> afterwards(pause, work), name);
    thread.setDaemon(true);
    threads.add(thread);
    thread.start();
  }

  private void afterwards(Duration pause, Runnable work) {
    try {
      Thread.sleep(pause.toMillis());
      work.run();
    } catch (InterruptedException end) {
      Thread.currentThread().interrupt();
    } catch (RuntimeException problem) {
      LOG.log(System.Logger.Level.DEBUG, "Not done ahead", problem);
    } finally {
      threads.remove(Thread.currentThread());
    }
  }

  /** Leaves out what has not begun. */
  @PreDestroy
  void end() {
    threads.forEach(Thread::interrupt);
  }
}
