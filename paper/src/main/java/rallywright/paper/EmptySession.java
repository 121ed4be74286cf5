package rallywright.paper;

import java.net.URI;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import rallywright.engine.drill.DrillKey;
import rallywright.engine.plan.BlockId;
import rallywright.engine.plan.BlockTime;
import rallywright.engine.plan.PlannedBlock;
import rallywright.engine.plan.SessionPlan;
import rallywright.engine.session.Session;
import rallywright.engine.session.SessionId;

/** A session without people, printed once to make ready what the first real sheet needs. */
final class EmptySession {

  private EmptySession() {}

  static SheetRequest request() {
    PlannedBlock rest =
        new PlannedBlock(
            new BlockId("rest"),
            PlannedBlock.Kind.BREAK,
            new DrillKey("rest"),
            PlannedBlock.End.BY_CLOCK,
            new BlockTime(10, 0),
            List.of(),
            List.of(),
            "");
    Session session =
        new Session(
            new SessionId("warm-up"),
            "Making ready",
            LocalDate.EPOCH,
            LocalTime.NOON,
            null,
            null,
            new SessionPlan(SessionPlan.SHORTEST_MINUTES, 1, List.of(), List.of(rest)),
            Session.State.PLANNED);
    return new SheetRequest(
        session,
        List.of(),
        new DrillBook(key -> Optional.empty(), key -> Optional.empty()),
        new PhoneAccess.Open(URI.create("http://localhost/#ready")),
        Origin.OWN_CLUB);
  }
}
