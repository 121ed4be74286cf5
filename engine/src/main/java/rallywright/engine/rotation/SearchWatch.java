package rallywright.engine.rotation;

/** Sees how a search comes on, and may stop it: the only place where time can be a guard. */
@FunctionalInterface
public interface SearchWatch {

  /** Lets the search run to its end. */
  SearchWatch PATIENT = progress -> Verdict.GO_ON;

  /** Whether the search goes on. */
  enum Verdict {
    /** It goes on. */
    GO_ON,
    /** It ends with the best rotation so far. */
    STOP
  }

  /**
   * Called every few thousand moves.
   *
   * @param progress how far the search has come
   * @return whether it goes on
   */
  Verdict after(SearchProgress progress);
}
