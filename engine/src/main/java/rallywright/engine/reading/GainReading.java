package rallywright.engine.reading;

import rallywright.engine.drill.Drill;
import rallywright.engine.skill.Estimate;

/**
 * How much faster the skills of those rose who played more of a drill. An observation of the club's
 * scores: weaker players may have been given more of it, and it does not show the cause.
 *
 * @param drill the drill
 * @param perMinute logits that an effective minute of it brings to a skill that has all of its
 *     load, mean and SD
 * @param before what was believed before any score
 * @param effectiveMinutes effective minutes of all players in it together
 * @param players how many players played it
 */
public record GainReading(
    Drill drill, Estimate perMinute, Estimate before, double effectiveMinutes, int players) {}
