package rallywright.engine.drill;

import java.util.List;

/**
 * What a coach says and brings.
 *
 * @param equipment what is needed beside court, paddles and balls; may be empty
 * @param cues short reminders while it is played
 * @param mistakes what commonly goes wrong, and what to do about it
 * @param safety what keeps everybody whole; at least one line
 */
public record Advice(
    List<String> equipment, List<String> cues, List<String> mistakes, List<String> safety) {

  /** Checks every line and that something is said about safety. */
  public Advice {
    equipment = Wording.checked("equipment", equipment);
    cues = Wording.checked("cue", cues);
    mistakes = Wording.checked("mistake", mistakes);
    safety = Wording.checked("safety cue", safety);
    if (safety.isEmpty()) {
      throw new IllegalArgumentException(
          "A drill needs at least one safety cue. Maybe: \"Call 'ball' and stop when a second ball"
              + " rolls in.\"");
    }
  }
}
