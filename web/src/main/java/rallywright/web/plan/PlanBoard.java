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
 * @param gap how much better a plan could be at most
 * @param problem why the last change was not made, may be empty
 * @param drills what can be put in: key → name
 * @param beside what is new beside the last session, empty before the first
 */
public record PlanBoard(
    String id,
    List<PlanBlock> blocks,
    String clock,
    boolean fits,
    String coverage,
    List<String> broken,
    String gap,
    String problem,
    Map<String, String> drills,
    String beside) {}
