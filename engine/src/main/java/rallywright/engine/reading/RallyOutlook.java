package rallywright.engine.reading;

import rallywright.engine.skill.Estimate;

/**
 * The chance to win a rally against an average player of the club.
 *
 * @param serving when the player's side serves, mean and SD of the chance
 * @param receiving when it receives, mean and SD of the chance
 */
public record RallyOutlook(Estimate serving, Estimate receiving) {}
