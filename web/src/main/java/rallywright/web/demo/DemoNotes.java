package rallywright.web.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rallywright.engine.club.PlayerId;
import rallywright.engine.plan.BlockId;
import rallywright.engine.plan.PlannedBlock;
import rallywright.engine.session.CourtEvent;
import rallywright.engine.session.EventId;
import rallywright.engine.session.Session;
import rallywright.engine.simulation.SeededIds;

/** Notes of the day for a demo session; made up like everything else there, and they say so. */
final class DemoNotes {

  private static final List<String> ON_PLAYERS =
      List.of(
          "Invented. Late to the split step; calm once it was shown from the line.",
          "Invented. Wants to try the drop from further back next week.");

  private static final String ON_DRILL =
      "Invented. Went well with cones in the kitchen; keep them.";

  private DemoNotes() {}

  /** A few notes at the end of a session that was played. */
  static List<CourtEvent> of(DemoHistory.Played played, SeededIds ids) {
    Session session = played.session();
    long at = played.events().get(played.events().size() - 1).stamp().atMillis();
    List<CourtEvent> notes = new ArrayList<>();
    for (int i = 0; i < ON_PLAYERS.size(); i++) {
      Optional<PlayerId> player = Optional.of(session.plan().present().get(i));
      notes.add(note(stamp(session, at, ids), player, Optional.empty(), ON_PLAYERS.get(i)));
    }
    session.plan().blocks().stream()
        .filter(block -> block.kind() == PlannedBlock.Kind.DRILL)
        .map(PlannedBlock::id)
        .findFirst()
        .ifPresent(
            block ->
                notes.add(
                    note(stamp(session, at, ids), Optional.empty(), Optional.of(block), ON_DRILL)));
    return notes;
  }

  private static CourtEvent note(
      CourtEvent.Stamp stamp, Optional<PlayerId> player, Optional<BlockId> block, String text) {
    return new CourtEvent.NoteWritten(stamp, player, block, text, Optional.empty());
  }

  private static CourtEvent.Stamp stamp(Session session, long at, SeededIds ids) {
    return new CourtEvent.Stamp(new EventId(ids.next()), session.id(), at, "");
  }
}
