package rallywright.web.page;

import java.time.Duration;

/**
 * Work of a fresh program that nobody has asked for yet: done beside the pages, so that the first
 * coach who asks does not wait for it. What goes wrong here is told to whoever asks.
 */
public final class Later {

  private static final System.Logger LOG = System.getLogger(Later.class.getName());

  private Later() {}

  /**
   * Does something once, in a thread that ends with the program.
   *
   * @param name what it is, for whoever looks at the threads
   * @param pause how long the first pages have the processor for themselves
   * @param work what to do
   */
  public static void run(String name, Duration pause, Runnable work) {
    Thread thread = new Thread(() -> afterwards(pause, work), name);
    thread.setDaemon(true);
    thread.start();
  }

  private static void afterwards(Duration pause, Runnable work) {
    try {
      Thread.sleep(pause.toMillis());
      work.run();
    } catch (InterruptedException end) {
      Thread.currentThread().interrupt();
    } catch (RuntimeException problem) {
      LOG.log(System.Logger.Level.DEBUG, "Not done ahead", problem);
    }
  }
}
