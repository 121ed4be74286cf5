package rallywright.web.plan;

import jakarta.servlet.http.HttpServletRequest;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RestController;
import rallywright.engine.club.PlayerId;
import rallywright.engine.plan.PlanEdit;
import rallywright.engine.plan.PlannedBlock;
import rallywright.engine.plan.PlannedGame;
import rallywright.engine.plan.SeatSwap;
import rallywright.engine.session.SessionId;
import rallywright.web.oncourt.CourtAccess;
import rallywright.web.oncourt.OpenSession;

/** Somebody else plays a game that has not begun, said on a phone beside the court. */
@RestController
final class CourtSeats {

  private final CourtAccess access;
  private final PlanDesk desk;
  private final PlanKeeper keeper;

  CourtSeats(CourtAccess access, PlanDesk desk, PlanKeeper keeper) {
    this.access = access;
    this.desk = desk;
    this.keeper = keeper;
  }

  /** What a phone posts: in which game, who goes, who comes in. */
  record Change(@Nullable String game, @Nullable String out, @Nullable String in) {}

  @PostMapping(
      path = "/court/{session}/seats",
      consumes = MediaType.APPLICATION_JSON_VALUE,
      produces = MediaType.APPLICATION_JSON_VALUE)
  ResponseEntity<Map<String, String>> change(
      @PathVariable String session, @RequestBody Change asked, HttpServletRequest request) {
    SessionId id = access.allowed(session, request);
    PlanEdit edit = keeper.change(id, open -> changed(open, asked));
    return edit instanceof PlanEdit.Refused refused
        ? ResponseEntity.status(HttpStatus.UNPROCESSABLE_CONTENT)
            .body(Map.of("problem", refused.sentence()))
        : ResponseEntity.ok(Map.of());
  }

  private PlanEdit changed(OpenSession open, Change asked) {
    Optional<SeatSwap> swap =
        open.plan().blocks().stream()
            .flatMap(
                block ->
                    block.games().stream()
                        .filter(game -> game.id().value().equals(asked.game()))
                        .flatMap(game -> swap(open, block, game, asked).stream()))
            .findFirst();
    if (swap.isEmpty()) {
      return new PlanEdit.Refused(
          "This game or one of the two is not in the plan any more. Maybe load the page again.");
    }
    return desk.edit(open.session(), editor -> new SeatChange(editor, open).inTurn(swap.get()));
  }

  private static Optional<SeatSwap> swap(
      OpenSession open, PlannedBlock block, PlannedGame game, Change asked) {
    Optional<PlayerId> out = present(open, asked.out());
    Optional<PlayerId> in = present(open, asked.in());
    return out.isEmpty() || in.isEmpty()
        ? Optional.empty()
        : Optional.of(new SeatSwap(block.id(), game.turn(), out.get(), in.get()));
  }

  private static Optional<PlayerId> present(OpenSession open, @Nullable String id) {
    return open.plan().present().stream().filter(each -> each.value().equals(id)).findFirst();
  }
}
