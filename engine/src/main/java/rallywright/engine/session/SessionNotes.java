package rallywright.engine.session;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rallywright.engine.club.PlayerId;
import rallywright.engine.plan.BlockId;
import rallywright.engine.session.CourtEvent.NoteWritten;

/**
 * The notes of a session, with what was corrected and what was taken away.
 *
 * @param standing the notes that stand, in the order in which they were written
 * @param takenAway the notes that were taken away, in the same order
 */
public record SessionNotes(List<Note> standing, List<Note> takenAway) {

  /**
   * One note.
   *
   * @param id its id; a correction has its own
   * @param atMillis when it was written, in milliseconds since 1970
   * @param player whom it is about, if it is about one player
   * @param block the block whose drill it is about, if it is about a drill
   * @param text what it says
   * @param before what it said before each correction, the newest first
   */
  public record Note(
      EventId id,
      long atMillis,
      Optional<PlayerId> player,
      Optional<BlockId> block,
      String text,
      List<String> before) {

    /** Copies the list. */
    public Note {
      before = List.copyOf(before);
    }
  }

  /** Copies the lists. */
  public SessionNotes {
    standing = List.copyOf(standing);
    takenAway = List.copyOf(takenAway);
  }

  /**
   * Reads the notes.
   *
   * @param events the events of one session in the order in which they reached the server
   * @return its notes
   */
  public static SessionNotes of(List<CourtEvent> events) {
    Map<EventId, NoteWritten> all = new HashMap<>();
    Set<EventId> corrected = new HashSet<>();
    List<NoteWritten> written = new ArrayList<>();
    for (CourtEvent event : events) {
      if (event instanceof NoteWritten note && all.putIfAbsent(note.stamp().id(), note) == null) {
        written.add(note);
        note.instead().ifPresent(corrected::add);
      }
    }
    Set<EventId> counting = new LinkedHashSet<>();
    JoinedLog.of(events).forEach(entry -> counting.add(entry.event().stamp().id()));
    List<Note> standing = new ArrayList<>();
    for (EventId id : counting) {
      NoteWritten note = all.get(id);
      if (note != null) {
        standing.add(note(note, all));
      }
    }
    List<Note> takenAway =
        written.stream()
            .filter(note -> !counting.contains(note.stamp().id()))
            .filter(note -> !corrected.contains(note.stamp().id()))
            .map(note -> note(note, all))
            .toList();
    return new SessionNotes(standing, takenAway);
  }

  private static Note note(NoteWritten note, Map<EventId, NoteWritten> all) {
    List<String> before = new ArrayList<>();
    Set<EventId> seen = new HashSet<>(Set.of(note.stamp().id()));
    Optional<EventId> earlier = note.instead();
    while (earlier.isPresent() && seen.add(earlier.get())) {
      NoteWritten old = all.get(earlier.get());
      if (old != null) {
        before.add(old.text());
      }
      earlier = old == null ? Optional.empty() : old.instead();
    }
    return new Note(
        note.stamp().id(),
        note.stamp().atMillis(),
        note.player(),
        note.block(),
        note.text(),
        before);
  }
}
