package rallywright.web.plan;

/**
 * One week of a season as the page shows it.
 *
 * @param number which one
 * @param phase how it is played
 * @param front the skills in front
 * @param test whether a test is due, in words
 * @param link where its session is planned
 */
public record SeasonLine(int number, String phase, String front, String test, String link) {}
