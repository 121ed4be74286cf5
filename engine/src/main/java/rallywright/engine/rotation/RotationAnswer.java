package rallywright.engine.rotation;

import java.util.List;

/** A rotation, or why there is none. */
public sealed interface RotationAnswer {

  /**
   * A rotation.
   *
   * @param schedule the rounds
   */
  record Found(RotationSchedule schedule) implements RotationAnswer {}

  /**
   * What was wished is impossible.
   *
   * @param sentences for each problem what was seen, what is allowed and what to try
   */
  record Refused(List<String> sentences) implements RotationAnswer {

    /** Keeps the sentences as they are. */
    public Refused {
      sentences = List.copyOf(sentences);
    }
  }
}
