package rallywright.engine.rotation;

import java.util.List;

/** A day of games, or why it cannot be so. */
public sealed interface DayAnswer {

  /**
   * A day.
   *
   * @param day as it now is
   */
  record Ready(PlayDay day) implements DayAnswer {}

  /**
   * What was asked is impossible; the day stays as it was.
   *
   * @param sentences for each problem what was seen, what is allowed and what to try
   */
  record Refused(List<String> sentences) implements DayAnswer {

    /** Keeps the sentences as they are. */
    public Refused {
      sentences = List.copyOf(sentences);
    }
  }

  /** A refusal in one sentence. */
  static DayAnswer no(String sentence) {
    return new Refused(List.of(sentence));
  }
}
