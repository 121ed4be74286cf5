package rallywright.web.plan;

import java.util.List;
import java.util.Map;

/**
 * The plan with its clock, as the page shows it.
 *
 * @param id the session's id
 * @param blocks the blocks in order
 * @param clock the time in words
 * @param fits whether it fits the booked time nine times in ten
 * @param coverage minutes by skill group in words
 * @param broken what the plan does not keep to
 * @param notes who comes late or leaves early, and what else the coach wants to know
 * @param gap how much better a plan could be at most
 * @param problem why the last change was not made, and at which block
 * @param drills what can be put in: key → name
 * @param people who is there: id → first name
 * @param beside what is new beside the last session, empty before the first
 */
public record PlanBoard(
    String id,
    List<PlanBlock> blocks,
    String clock,
    boolean fits,
    String coverage,
    List<String> broken,
    List<String> notes,
    String gap,
    Problem problem,
    Map<String, String> drills,
    Map<String, String> people,
    String beside) {

  /**
   * Why a change was not made.
   *
   * @param sentence why, empty where nothing is wrong
   * @param block the id of the block that was to be changed, or empty
   */
  public record Problem(String sentence, String block) {}

  /** What is wrong with a block, or an empty text. */
  public String problemAt(PlanBlock block) {
    return problem.block().equals(block.id()) ? problem.sentence() : "";
  }

  /** What is wrong elsewhere than with a block that is shown, or an empty text. */
  public String problemElsewhere() {
    return blocks.stream().anyMatch(block -> block.id().equals(problem.block()))
        ? ""
        : problem.sentence();
  }
}
