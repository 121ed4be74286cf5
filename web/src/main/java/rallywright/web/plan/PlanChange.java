package rallywright.web.plan;

import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.IntStream;
import rallywright.engine.drill.DrillKey;
import rallywright.engine.plan.BlockId;
import rallywright.engine.plan.Line;
import rallywright.engine.plan.PlanEdit;
import rallywright.engine.plan.PlanEditor;
import rallywright.engine.plan.PlanProblem;
import rallywright.engine.plan.PlannedBlock;
import rallywright.engine.plan.SessionPlan;
import rallywright.engine.session.Session;
import rallywright.web.page.FormReader;

/** One change of a plan as a form asks for it. */
final class PlanChange {

  private final FormReader in;
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
    REPLACE
  }

  private PlanChange(FormReader in, SessionPlan plan, Set<BlockId> touched) {
    this.in = in;
    this.plan = plan;
    this.touched = touched;
  }

  static PlanChange of(FormReader in, Session session, Set<BlockId> touched) {
    return new PlanChange(in, session.plan(), touched);
  }

  /** The changed plan, or why not. */
  PlanEdit apply(PlanProblem problem) {
    Kind kind = in.choice("change", "The change", Kind.ADD);
    Line line = in.choice("line", "The direction", Line.STRAIGHT);
    if (in.failed() || (kind == Kind.ADD && in.raw("change").isEmpty())) {
      return new PlanEdit.Refused("This change is not known here. Maybe load the page again.");
    }
    PlanEditor editor;
    try {
      editor = PlanEditor.of(problem);
    } catch (IllegalArgumentException unmet) {
      return new PlanEdit.Refused(String.valueOf(unmet.getMessage()));
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
    if (touched.contains(block)) {
      return new PlanEdit.Refused(
          "This block was begun already and stays as it is. Maybe change one that is to come.");
    }
    return switch (kind) {
      case ADD -> throw new IllegalStateException("Adding was answered before.");
      case REMOVE -> editor.remove(plan, block, removal());
      case UP -> editor.move(plan, block, Math.max(0, place - 1));
      case DOWN -> editor.move(plan, block, Math.min(plan.blocks().size() - 1, place + 1));
      case MORE -> editor.moreGames(plan, block);
      case FEWER -> editor.fewerGames(plan, block);
      case REPLACE -> withDrill(drill -> editor.replace(plan, block, drill, line));
    };
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
