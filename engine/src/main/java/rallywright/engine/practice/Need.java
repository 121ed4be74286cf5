package rallywright.engine.practice;

import java.util.function.Supplier;
import rallywright.engine.drill.Skill;

/**
 * How much a player needs to practise a skill, and why.
 *
 * @param skill the skill
 * @param value how much an effective minute on it is worth, 0 or more; only ratios matter
 * @param cause the main reason
 * @param words finds the reason for the coach, one sentence, when it is asked for
 */
public record Need(Skill skill, double value, Cause cause, Supplier<String> words) {

  /** The main reason for a need. */
  public enum Cause {
    /** It stands behind what the level and the other skills lead one to expect. */
    BEHIND,
    /** There are too few rallies to judge it. */
    TOO_EARLY_TO_TELL,
    /** It was not practised for some weeks. */
    NOT_PRACTISED,
    /** It simply matters in doubles. */
    MATTERS
  }

  /** Checks the range; the check is written so that NaN fails it. */
  public Need {
    if (!(value >= 0 && value < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("A need (%s) must be 0 or more.".formatted(value));
    }
  }

  /**
   * The reason for the coach.
   *
   * @return one sentence
   */
  public String sentence() {
    return words.get();
  }
}
