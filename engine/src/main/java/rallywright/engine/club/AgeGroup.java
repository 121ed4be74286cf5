package rallywright.engine.club;

/** Whether a player is a junior. No birth date is kept. */
public enum AgeGroup {
  /** A grown-up. */
  ADULT,
  /** A junior: pages are shared only after a guardian's consent is noted. */
  JUNIOR
}
