package rallywright.web.progress;

import java.util.function.Function;
import rallywright.engine.club.PlayerId;
import rallywright.engine.reading.Measure;

/**
 * What to play or count to learn most about a skill.
 *
 * @param skill the skill in words
 * @param key the drill's or yardstick's key
 * @param name its name
 * @param how how long and against whom
 * @param effect what it does to the doubt
 */
public record MeasureLine(String skill, String key, String name, String how, String effect) {

  static MeasureLine of(Measure measure, Function<PlayerId, String> names) {
    String minutes = minutes(measure.minutes());
    return new MeasureLine(
        SkillWords.capital(measure.skill().words()),
        measure.isYardstick() ? "" : measure.key().value(),
        measure.name(),
        measure
            .opponent()
            .map(opponent -> minutes + " of it against " + names.apply(opponent))
            .orElse("counted once, " + minutes),
        "takes about " + Math.max(1, Math.round(100 * measure.narrowing())) + " % off the doubt");
  }

  private static String minutes(double minutes) {
    long whole = Math.max(1, Math.round(minutes));
    return whole == 1 ? "1 minute" : whole + " minutes";
  }
}
