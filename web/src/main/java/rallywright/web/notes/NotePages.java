package rallywright.web.notes;

import jakarta.servlet.http.HttpServletRequest;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import rallywright.engine.club.PlayerId;
import rallywright.engine.plan.BlockId;
import rallywright.engine.session.CourtEvent;
import rallywright.engine.session.EventId;
import rallywright.engine.session.SessionId;
import rallywright.engine.session.SessionNotes;
import rallywright.web.oncourt.CoachAct;
import rallywright.web.oncourt.OpenSession;
import rallywright.web.oncourt.SessionDesk;
import rallywright.web.page.Confirmation;
import rallywright.web.page.FormReader;
import rallywright.web.page.NotHere;

/**
 * Writes, corrects and takes away notes at the desk. Each is an event of the log, as those of the
 * phones are.
 */
@Controller
final class NotePages {

  private static final String CHANGED =
      "That note was changed or taken away since. The page shows what stands now.";

  private final SessionDesk desk;
  private final InstantSource clock = InstantSource.system();

  NotePages(SessionDesk desk) {
    this.desk = desk;
  }

  /** Keeps a new note, or a correction where a note is named. */
  @PostMapping("/sessions/{id}/notes")
  String keep(@PathVariable String id, HttpServletRequest request, RedirectAttributes redirect) {
    FormReader in = FormReader.of(request);
    String text = in.lines("note", "The note", CourtEvent.NoteWritten.LONGEST_TEXT);
    if (text.isEmpty() && !in.failed()) {
      in.problem("note", "The note is empty. Maybe a few words were meant.");
    }
    if (in.failed()) {
      redirect.addFlashAttribute("noteForm", in.form());
      return back(id, in, redirect, in.form().problem("note"));
    }
    String said =
        desk.act(session(id), open -> written(open, in, text)).orElseThrow(NotePages::notHere);
    return back(id, in, redirect, said);
  }

  private CoachAct written(OpenSession open, FormReader in, String text) {
    String about = in.raw("about");
    if (!NoteLines.subjects(open).containsKey(about)) {
      return CoachAct.refused(
          "What the note is about is not part of this session any more. Maybe load the page"
              + " again.");
    }
    Optional<SessionNotes.Note> old = standing(open, in.raw("corrects"));
    if (!in.raw("corrects").isEmpty() && old.isEmpty()) {
      return CoachAct.refused(CHANGED);
    }
    List<CourtEvent> events = new ArrayList<>();
    old.ifPresent(note -> events.add(new CourtEvent.Undone(stamp(open), note.id())));
    try {
      events.add(
          new CourtEvent.NoteWritten(
              stamp(open),
              named(about, NoteLines.PLAYER).map(PlayerId::new),
              named(about, NoteLines.BLOCK).map(BlockId::new),
              text.replace('\t', ' '),
              old.map(SessionNotes.Note::id)));
    } catch (IllegalArgumentException unfit) {
      return CoachAct.refused(String.valueOf(unfit.getMessage()));
    }
    return new CoachAct(events, old.isPresent() ? "The note was corrected." : "Noted.");
  }

  /** Takes a note away; what it said stays to be read on the session's page. */
  @PostMapping("/sessions/{id}/notes/take-away")
  String takeAway(
      @PathVariable String id, HttpServletRequest request, RedirectAttributes redirect) {
    FormReader in = FormReader.of(request);
    String said =
        desk.act(
                session(id),
                open ->
                    standing(open, in.raw("corrects"))
                        .map(
                            note ->
                                new CoachAct(
                                    List.of(new CourtEvent.Undone(stamp(open), note.id())),
                                    "The note was taken away."))
                        .orElseGet(() -> CoachAct.refused(CHANGED)))
            .orElseThrow(NotePages::notHere);
    return back(id, in, redirect, said);
  }

  private static Optional<SessionNotes.Note> standing(OpenSession open, String id) {
    return open.progress().notes().standing().stream()
        .filter(note -> note.id().value().equals(id))
        .findFirst();
  }

  private static Optional<String> named(String about, String kind) {
    return about.startsWith(kind) ? Optional.of(about.substring(kind.length())) : Optional.empty();
  }

  private CourtEvent.Stamp stamp(OpenSession open) {
    EventId id = desk.freshEventId();
    return new CourtEvent.Stamp(id, open.session().id(), clock.millis(), "");
  }

  private static SessionId session(String id) {
    if (id.isBlank() || id.length() > SessionId.LONGEST) {
      throw notHere();
    }
    return new SessionId(id);
  }

  private static NotHere notHere() {
    return new NotHere("There is no such session. Maybe it was removed; look under Sessions.");
  }

  /** Back to the page that the note was written on. */
  private static String back(String id, FormReader in, RedirectAttributes redirect, String said) {
    Confirmation.say(redirect, said);
    return "redirect:/sessions/" + id + (in.raw("from").equals("board") ? "/board" : "#notes");
  }
}
