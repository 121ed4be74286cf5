/**
 * What the scores say about the players: evidence in, an estimate with its spread for every player,
 * skill and week out.
 *
 * <p>Start with {@link rallywright.engine.skill.SkillModel}, which turns a {@link
 * rallywright.engine.skill.Club} and its evidence into a {@link
 * rallywright.engine.skill.Posterior}. Nothing here reads a file or a clock, draws at random, or
 * words an estimate for a coach.
 */
@NullMarked
package rallywright.engine.skill;

import org.jspecify.annotations.NullMarked;
