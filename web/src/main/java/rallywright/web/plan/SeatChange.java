package rallywright.web.plan;

import java.util.List;
import rallywright.engine.club.PlayerId;
import rallywright.engine.plan.PlanEdit;
import rallywright.engine.plan.PlanEditor;
import rallywright.engine.plan.PlannedBlock;
import rallywright.engine.plan.PlannedGame;
import rallywright.engine.plan.SeatSwap;
import rallywright.engine.plan.SessionPlan;
import rallywright.engine.session.GameProgress;
import rallywright.web.oncourt.OpenSession;

/** Two people change places in games that have not begun. */
final class SeatChange {

  private final PlanEditor editor;
  private final OpenSession open;

  SeatChange(PlanEditor editor, OpenSession open) {
    this.editor = editor;
    this.open = open;
  }

  /** Changes one turn. */
  PlanEdit inTurn(SeatSwap swap) {
    return open.plan().block(swap.block()).filter(block -> isBegun(block, swap)).isPresent()
        ? new PlanEdit.Refused(
            "A game of turn %d has begun with one of the two. Maybe choose a later turn."
                .formatted(swap.turn()))
        : editor.swapSeats(open.plan(), swap);
  }

  /** Changes every turn of a block in which one of the two plays and nothing was played yet. */
  PlanEdit inAllTurnsToCome(PlannedBlock block, PlayerId one, PlayerId other) {
    SessionPlan plan = open.plan();
    PlanEdit last =
        new PlanEdit.Refused("No game of the two is still to come here. Maybe look further down.");
    for (int turn = 1; turn <= block.sitting().size(); turn++) {
      SeatSwap swap = new SeatSwap(block.id(), turn, one, other);
      if (!plays(block, swap) || isBegun(block, swap)) {
        continue;
      }
      last = editor.swapSeats(plan, swap);
      if (!(last instanceof PlanEdit.Changed changed)) {
        return last;
      }
      plan = changed.plan();
    }
    return last;
  }

  private static boolean plays(PlannedBlock block, SeatSwap swap) {
    return !games(block, swap).isEmpty();
  }

  private boolean isBegun(PlannedBlock block, SeatSwap swap) {
    return games(block, swap).stream()
        .flatMap(game -> open.progress().game(game.id()).stream())
        .anyMatch(game -> game.status() != GameProgress.Status.NOT_BEGUN);
  }

  private static List<PlannedGame> games(PlannedBlock block, SeatSwap swap) {
    return block.games().stream()
        .filter(game -> game.turn() == swap.turn())
        .filter(game -> has(game, swap.one()) || has(game, swap.other()))
        .toList();
  }

  private static boolean has(PlannedGame game, PlayerId player) {
    return game.a().players().contains(player) || game.b().players().contains(player);
  }
}
