package rallywright.web.plan;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.IntStream;
import rallywright.engine.club.PlayerId;
import rallywright.engine.drill.DrillKey;
import rallywright.engine.plan.BlockId;
import rallywright.engine.plan.Line;
import rallywright.engine.plan.PlanEdit;
import rallywright.engine.plan.PlanEditor;
import rallywright.engine.plan.PlannedBlock;
import rallywright.engine.plan.SeatSwap;
import rallywright.engine.plan.SessionPlan;
import rallywright.web.oncourt.OpenSession;
import rallywright.web.page.AllowedNumber;
import rallywright.web.page.FormReader;

/** One change of a plan as a form asks for it. */
final class PlanChange {

  private final FormReader in;
  private final OpenSession open;
  private final SessionPlan plan;
  private final Set<BlockId> touched;

  /** What can be done. */
  enum Kind {
    ADD,
    REMOVE,
    UP,
    DOWN,
    MORE,
    FEWER,
    REPLACE,
    SWAP
  }

  private PlanChange(FormReader in, OpenSession open, Set<BlockId> touched) {
    this.in = in;
    this.open = open;
    this.plan = open.plan();
    this.touched = touched;
  }

  static PlanChange of(FormReader in, OpenSession open, Set<BlockId> touched) {
    return new PlanChange(in, open, touched);
  }

  /** The changed plan, or why not. */
  PlanEdit apply(PlanEditor editor) {
    Kind kind = in.choice("change", "The change", Kind.ADD);
    Line line = in.choice("line", "The direction", Line.STRAIGHT);
    if (in.failed() || (kind == Kind.ADD && in.raw("change").isEmpty())) {
      return new PlanEdit.Refused("This change is not known here. Maybe load the page again.");
    }
    if (kind == Kind.ADD) {
      return withDrill(drill -> editor.add(plan, drill, line, placeForNew()));
    }
    int place = place();
    if (place < 0) {
      return new PlanEdit.Refused(
          "This block is not in the plan any more. Maybe it was removed on another page.");
    }
    BlockId block = plan.blocks().get(place).id();
    if (kind == Kind.SWAP) {
      return swap(editor, plan.blocks().get(place));
    }
    if (touched.contains(block)) {
      return new PlanEdit.Refused(
          "This block was begun already and stays as it is. Maybe change one that is to come.");
    }
    return switch (kind) {
      case ADD, SWAP -> throw new IllegalStateException("This was answered before.");
      case REMOVE -> editor.remove(plan, block, removal());
      case UP -> moved(editor, place, -1);
      case DOWN -> moved(editor, place, 1);
      case MORE -> editor.moreGames(plan, block);
      case FEWER -> editor.fewerGames(plan, block);
      case REPLACE -> withDrill(drill -> editor.replace(plan, block, drill, line));
    };
  }

  private PlanEdit moved(PlanEditor editor, int place, int by) {
    int to = place + by;
    return to < 0 || to >= plan.blocks().size()
        ? new PlanEdit.Refused("This block is the %s already.".formatted(to < 0 ? "first" : "last"))
        : editor.move(plan, plan.blocks().get(place).id(), to);
  }

  /** In one turn, or with no turn chosen in every turn that is to come. */
  private PlanEdit swap(PlanEditor editor, PlannedBlock block) {
    Optional<PlayerId> one = present("one");
    Optional<PlayerId> other = present("other");
    OptionalInt turn =
        in.whole(
            "turn",
            new AllowedNumber("The turn", 1, Math.max(1, block.sitting().size()), "Maybe 1."));
    if (one.isEmpty() || other.isEmpty() || in.failed()) {
      return new PlanEdit.Refused(
          "Two people of this session and a turn of the block must be chosen. Maybe load the page"
              + " again.");
    }
    SeatChange seats = new SeatChange(editor, open);
    return turn.isPresent()
        ? seats.inTurn(new SeatSwap(block.id(), turn.getAsInt(), one.get(), other.get()))
        : seats.inAllTurnsToCome(block, one.get(), other.get(), game -> false);
  }

  private Optional<PlayerId> present(String field) {
    return plan.present().stream().filter(id -> id.value().equals(in.raw(field))).findFirst();
  }

  private PlanEdit withDrill(Function<DrillKey, PlanEdit> change) {
    try {
      return change.apply(new DrillKey(in.raw("drill")));
    } catch (IllegalArgumentException unreadable) {
      return new PlanEdit.Refused(String.valueOf(unreadable.getMessage()));
    }
  }

  private PlanEditor.WarmUpRemoval removal() {
    return in.ticked("sure")
        ? PlanEditor.WarmUpRemoval.CONFIRMED
        : PlanEditor.WarmUpRemoval.NOT_CONFIRMED;
  }

  private int place() {
    List<PlannedBlock> blocks = plan.blocks();
    return IntStream.range(0, blocks.size())
        .filter(i -> blocks.get(i).id().value().equals(in.raw("block")))
        .findFirst()
        .orElse(-1);
  }

  /** A new drill comes before the full games at the end, where the session is put together. */
  private int placeForNew() {
    List<PlannedBlock> blocks = plan.blocks();
    int place = blocks.size();
    while (place > 0
        && blocks.get(place - 1).kind() == PlannedBlock.Kind.FULL_GAME
        && !touched.contains(blocks.get(place - 1).id())) {
      place--;
    }
    return place;
  }
}
