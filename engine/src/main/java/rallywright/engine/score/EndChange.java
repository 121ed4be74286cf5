package rallywright.engine.score;

/** Whether the sides change ends during the game. */
public enum EndChange {
  /** Ends stay as they are: the default of drill games. */
  NONE,
  /**
   * Once, when a side first reaches half of the target, rounded up: 4 of 7, 6 of 11, 8 of 15, 11 of
   * 21. Source: a game to 7 changes at 4 by rule 12.B.1 (2025); 6, 8 and 11 from memory.
   */
  AT_HALF
}
