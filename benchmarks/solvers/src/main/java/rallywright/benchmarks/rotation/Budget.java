package rallywright.benchmarks.rotation;

import java.lang.management.ManagementFactory;

/** Processor time of this process, in seconds: what is spent, and when it is used up. */
final class Budget {

  private static final double NANOS = 1e9;
  private static final long POLL_MS = 10;

  private final double start = processorSeconds();
  private final double seconds;

  Budget(double seconds) {
    this.seconds = seconds;
  }

  double spent() {
    return processorSeconds() - start;
  }

  boolean isUsedUp() {
    return spent() >= seconds;
  }

  /** Calls once when the budget is used up, from a thread of its own. */
  void whenUsedUp(Runnable stop) {
    Thread watch =
        new Thread(
            () -> {
              while (!isUsedUp()) {
                try {
                  Thread.sleep(POLL_MS);
                } catch (InterruptedException ended) {
                  return;
                }
              }
              stop.run();
            });
    watch.setDaemon(true);
    watch.start();
  }

  private static double processorSeconds() {
    var system =
        (com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
    return system.getProcessCpuTime() / NANOS;
  }
}
