/**
 * A whole point in its stages: where rallies end, who wins them, and what each skill is worth.
 *
 * <p>Start with {@link rallywright.engine.point.PointGame}, given {@link
 * rallywright.engine.point.PointStages} and the players' {@link
 * rallywright.engine.point.SkillProfile}s; {@link rallywright.engine.point.Breakdown} compares
 * noted endings with what was to be expected. Nothing here estimates a skill, chooses a drill, or
 * draws at random.
 */
@NullMarked
package rallywright.engine.point;

import org.jspecify.annotations.NullMarked;
