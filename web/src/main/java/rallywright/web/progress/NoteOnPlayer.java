package rallywright.web.progress;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import rallywright.engine.club.PlayerId;
import rallywright.engine.session.SessionNotes;
import rallywright.engine.session.SessionProgress;
import rallywright.web.page.DayWords;

/**
 * What was noted on a player in a session.
 *
 * @param session the id of the session
 * @param when its day and name
 * @param text the note
 */
public record NoteOnPlayer(String session, String when, String text) {

  /** The notes on a player, the newest first. */
  static List<NoteOnPlayer> of(List<SessionProgress> sessions, PlayerId player) {
    List<NoteOnPlayer> lines = new ArrayList<>();
    sessions.stream()
        .sorted(
            Comparator.comparing((SessionProgress each) -> each.session().date())
                .thenComparing(each -> each.session().start())
                .reversed())
        .forEach(
            each ->
                each.notes().standing().stream()
                    .filter(note -> note.player().filter(player::equals).isPresent())
                    .sorted(Comparator.comparingLong(SessionNotes.Note::atMillis).reversed())
                    .forEach(note -> lines.add(line(each, note))));
    return lines;
  }

  private static NoteOnPlayer line(SessionProgress session, SessionNotes.Note note) {
    return new NoteOnPlayer(
        session.session().id().value(),
        DayWords.of(session.session().date()) + ", " + session.session().name(),
        note.text());
  }
}
