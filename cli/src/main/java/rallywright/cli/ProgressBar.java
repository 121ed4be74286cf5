package rallywright.cli;

import java.io.PrintWriter;

/**
 * A line on standard error that fills up while something long is worked out. Shown only where
 * standard error is a terminal, so that files and pipes stay clean.
 */
final class ProgressBar implements AutoCloseable {

  private static final int WIDTH = 30;

  private final PrintWriter err;
  private final String what;
  private final boolean shown;
  private int drawn = -1;

  ProgressBar(PrintWriter err, String what, Screen screen) {
    this.err = err;
    this.what = what;
    this.shown = screen == Screen.TERMINAL;
  }

  /** What standard error goes to. */
  enum Screen {
    TERMINAL,
    ELSEWHERE;

    /** What it is now: a program in front of which somebody sits shows its errors there. */
    static Screen here() {
      return Terminal.console() != null ? TERMINAL : ELSEWHERE;
    }
  }

  /** Draws how far the work has come, from 0 to 1. */
  void at(double share) {
    int filled = (int) (WIDTH * Math.max(0, Math.min(1, share)));
    if (shown && filled != drawn) {
      drawn = filled;
      err.printf("\r%s [%s%s]", what, "=".repeat(filled), " ".repeat(WIDTH - filled));
      err.flush();
    }
  }

  /** Clears the line. */
  @Override
  public void close() {
    if (shown && drawn >= 0) {
      err.printf("\r%s\r", " ".repeat(what.length() + WIDTH + 3));
      err.flush();
    }
  }
}
