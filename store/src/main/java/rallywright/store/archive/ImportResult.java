package rallywright.store.archive;

import java.util.List;

/** What became of an import. */
public sealed interface ImportResult {

  /**
   * Everything was taken in.
   *
   * @param players how many players the export holds
   * @param sessions how many sessions
   * @param events how many events of the court
   */
  record Done(int players, int sessions, int events) implements ImportResult {}

  /**
   * Nothing was stored.
   *
   * @param problems every line that is wrong, at least one
   */
  record Refused(List<ImportProblem> problems) implements ImportResult {

    /** Copies the list. */
    public Refused {
      problems = List.copyOf(problems);
    }
  }
}
