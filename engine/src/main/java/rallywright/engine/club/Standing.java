package rallywright.engine.club;

/** Where a player stands in the club's list. */
public enum Standing {
  /** On the list. */
  ACTIVE,
  /** Added on court by name; can be merged into another player later. */
  WALK_IN,
  /** No longer comes; kept with all results. */
  ARCHIVED,
  /** Erased: a nameless opponent, so that the results of others keep their meaning. */
  ERASED
}
