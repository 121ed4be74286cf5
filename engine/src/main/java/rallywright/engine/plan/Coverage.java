package rallywright.engine.plan;

/** What the session must touch. */
public enum Coverage {
  /** Every skill group at least once: soft game, hands and power. */
  FULL,
  /** Only what those present need most. */
  NEEDS
}
