package rallywright.web.notes;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rallywright.engine.plan.PlannedBlock;
import rallywright.engine.session.SessionNotes;
import rallywright.web.oncourt.OpenSession;

/**
 * The notes of a session as the coach's pages show them.
 *
 * @param session the id of the session
 * @param subjects what a note can be about: what a form sends, and what is read
 * @param usual what a new note is about at first
 * @param standing the notes that stand, in the order in which they were written
 * @param takenAway those that were taken away
 */
public record NoteLines(
    String session,
    Map<String, String> subjects,
    String usual,
    List<NoteLine> standing,
    List<NoteLine> takenAway) {

  static final String SESSION = "session";
  static final String BLOCK = "block ";
  static final String PLAYER = "player ";

  private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm");

  /**
   * One note.
   *
   * @param id its id
   * @param about what it is about, as a form sends it
   * @param title what it is about, in words
   * @param time when it was written, for example "18:42"
   * @param text what it says
   * @param before what it said before each correction, the newest first
   */
  public record NoteLine(
      String id, String about, String title, String time, String text, List<String> before) {}

  /** The notes of a session. */
  public static NoteLines of(OpenSession open) {
    SessionNotes notes = open.progress().notes();
    return new NoteLines(
        open.session().id().value(),
        subjects(open),
        open.current().map(block -> BLOCK + block.id()).orElse(SESSION),
        notes.standing().stream().map(note -> line(open, note)).toList(),
        notes.takenAway().stream().map(note -> line(open, note)).toList());
  }

  /** The notes on the drill of a block. */
  public List<NoteLine> onBlock(String block) {
    return standing.stream().filter(note -> note.about().equals(BLOCK + block)).toList();
  }

  /** The notes on players and on the session. */
  public List<NoteLine> onPeople() {
    return standing.stream().filter(note -> !note.about().startsWith(BLOCK)).toList();
  }

  /** What a note can be about: the session, each drill in order, each player. */
  static Map<String, String> subjects(OpenSession open) {
    Map<String, String> subjects = new LinkedHashMap<>();
    subjects.put(SESSION, "The session");
    int number = 0;
    for (PlannedBlock block : open.plan().blocks()) {
      number++;
      subjects.put(BLOCK + block.id(), number + ". " + open.title(block));
    }
    open.players().forEach(each -> subjects.put(PLAYER + each.id(), open.names().of(each.id())));
    return subjects;
  }

  private static NoteLine line(OpenSession open, SessionNotes.Note note) {
    String about =
        note.player()
            .map(id -> PLAYER + id)
            .or(() -> note.block().map(id -> BLOCK + id))
            .orElse(SESSION);
    return new NoteLine(
        note.id().value(),
        about,
        subjects(open).getOrDefault(about, "Something that is not in the plan any more"),
        TIME.format(Instant.ofEpochMilli(note.atMillis()).atZone(ZoneId.systemDefault())),
        note.text(),
        note.before());
  }
}
