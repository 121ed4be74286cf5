package rallywright.engine.plan;

/** Whether a session begins with its warm-ups. */
public enum WarmUps {
  /** General, paddle and volley warm-up come first. */
  FIRST,
  /** Left out by an explicit choice, for example because everybody comes warm from a match. */
  LEFT_OUT_BY_CHOICE
}
