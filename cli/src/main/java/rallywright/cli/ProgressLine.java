package rallywright.cli;

import java.io.PrintWriter;
import rallywright.engine.rotation.SearchWatch;

/** A line on standard error that says how far a search has come; only where a person sees it. */
final class ProgressLine {

  private static final int STEPS = 20;

  private ProgressLine() {}

  /** The watch that draws the line; it never stops the search. */
  static SearchWatch on(PrintWriter err) {
    if (System.console() == null) {
      return SearchWatch.PATIENT;
    }
    int[] drawn = {0};
    return progress -> {
      int done = (int) (progress.share() * STEPS);
      if (done > drawn[0]) {
        drawn[0] = done;
        err.print("\r" + "=".repeat(done) + "-".repeat(STEPS - done));
        err.print(done == STEPS - 1 ? "\r" + " ".repeat(STEPS) + "\r" : "");
        err.flush();
      }
      return SearchWatch.Verdict.GO_ON;
    };
  }
}
