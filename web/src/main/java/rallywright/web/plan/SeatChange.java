package rallywright.web.plan;

import java.util.List;
import java.util.function.Predicate;
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

  /** The answer where the two play no game that is still to come. */
  static final PlanEdit NOTHING_TO_COME =
      new PlanEdit.Refused("No game of the two is still to come here. Maybe look further down.");

  private final PlanEditor editor;
  private final OpenSession open;
  private SessionPlan plan;

  SeatChange(PlanEditor editor, OpenSession open) {
    this.editor = editor;
    this.open = open;
    this.plan = open.plan();
  }

  /** Changes one turn. */
  PlanEdit inTurn(SeatSwap swap) {
    return open.plan().block(swap.block()).filter(block -> isBegun(block, swap)).isPresent()
        ? new PlanEdit.Refused(
            "A game of turn %d has begun with one of the two. Maybe choose a later turn."
                .formatted(swap.turn()))
        : editor.swapSeats(open.plan(), swap);
  }

  /**
   * Changes every turn of a block in which one of the two plays and nothing was played yet, on top
   * of what this object has changed before; a block is changed as a whole or not at all.
   *
   * @param stays which games keep their players although nothing was scored in them
   */
  PlanEdit inAllTurnsToCome(
      PlannedBlock block, PlayerId one, PlayerId other, Predicate<PlannedGame> stays) {
    SessionPlan before = plan;
    PlanEdit last = NOTHING_TO_COME;
    for (int turn = 1; turn <= block.sitting().size(); turn++) {
      SeatSwap swap = new SeatSwap(block.id(), turn, one, other);
      if (!plays(block, swap) || games(block, swap).stream().anyMatch(stays.or(this::isBegun))) {
        continue;
      }
      last = editor.swapSeats(plan, swap);
      if (!(last instanceof PlanEdit.Changed changed)) {
        plan = before;
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
    return games(block, swap).stream().anyMatch(this::isBegun);
  }

  private boolean isBegun(PlannedGame game) {
    return open.progress().game(game.id()).stream()
        .anyMatch(each -> each.status() != GameProgress.Status.NOT_BEGUN);
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
