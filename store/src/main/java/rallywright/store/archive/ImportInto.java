package rallywright.store.archive;

/** What an import may meet. */
public enum ImportInto {
  /** Only a club in which nothing was entered yet. */
  EMPTY_CLUB,
  /** Any club: what has the same id is replaced, everything else is added. */
  MERGED_BY_ID
}
