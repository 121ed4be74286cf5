package rallywright.engine.rotation;

/** How the partners of a day of games are found. */
public enum DayStyle {
  /** New partners and opponents each round, found by search for all rounds at once. */
  NEW_PARTNERS,
  /** Winners go up a court, losers down; each round follows from the results of the last. */
  LADDER,
  /** Pairs that stay together: each plays each, with standings. */
  FIXED_PAIRS,
  /** Couples: each plays with and against others, never with or against the own partner. */
  MIXED;

  /** Whether all rounds are known before the first is played. */
  public boolean isKnownAhead() {
    return this != LADDER;
  }

  /** Whether somebody can join after the first round has begun. */
  public boolean takesLateComers() {
    return this == NEW_PARTNERS || this == LADDER;
  }
}
