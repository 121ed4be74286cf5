package rallywright.paper;

import java.util.ArrayList;
import java.util.List;
import rallywright.engine.plan.PlannedBlock;

/**
 * Blocks that follow one another and stand as one part on the sheet: the warm-ups, or one drill in
 * several directions.
 *
 * @param first the place of the first block in the plan, from 0
 * @param blocks the blocks, at least one
 */
record BlockGroup(int first, List<PlannedBlock> blocks) {

  BlockGroup {
    blocks = List.copyOf(blocks);
  }

  /** The blocks of a plan, in groups as large as can be. */
  static List<BlockGroup> of(List<PlannedBlock> blocks) {
    List<BlockGroup> groups = new ArrayList<>();
    for (int place = 0; place < blocks.size(); place++) {
      PlannedBlock block = blocks.get(place);
      int last = groups.size() - 1;
      if (last >= 0 && groups.get(last).takes(block)) {
        groups.set(last, groups.get(last).with(block));
      } else {
        groups.add(new BlockGroup(place, List.of(block)));
      }
    }
    return groups;
  }

  PlannedBlock head() {
    return blocks.get(0);
  }

  int last() {
    return first + blocks.size() - 1;
  }

  private boolean takes(PlannedBlock next) {
    if (next.kind() != head().kind()) {
      return false;
    }
    return switch (next.kind()) {
      case WARM_UP -> next.games().isEmpty();
      case DRILL, FULL_GAME ->
          next.drill().equals(head().drill())
              && !next.games().isEmpty()
              && !head().games().isEmpty();
      case TOGETHER, YARDSTICK, BREAK -> false;
    };
  }

  private BlockGroup with(PlannedBlock next) {
    List<PlannedBlock> more = new ArrayList<>(blocks);
    more.add(next);
    return new BlockGroup(first, more);
  }
}
