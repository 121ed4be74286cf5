package rallywright.web.oncourt;

import java.util.List;
import rallywright.engine.session.CourtEvent;

/**
 * What follows from something that the coach did at the desk.
 *
 * @param events what is added to the log; none where it was refused
 * @param said the sentence that the next page opens with
 */
public record CoachAct(List<CourtEvent> events, String said) {

  /** Copies the list. */
  public CoachAct {
    events = List.copyOf(events);
  }

  /** Nothing happens, and why. */
  public static CoachAct refused(String sentence) {
    return new CoachAct(List.of(), sentence);
  }
}
