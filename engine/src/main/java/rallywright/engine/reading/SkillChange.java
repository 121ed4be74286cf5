package rallywright.engine.reading;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.List;
import java.util.Optional;
import rallywright.engine.club.PlayerId;
import rallywright.engine.drill.Skill;
import rallywright.engine.reading.SkillReading.WeekPoint;
import rallywright.engine.skill.Estimate;
import rallywright.engine.skill.JointEstimate;

/**
 * How a skill changed between two weeks, with what the two weeks have in common taken into account:
 * two wide bands that overlap may still hide a sure rise.
 *
 * @param skill the skill
 * @param from the earlier week
 * @param to the later week
 * @param rise later less earlier, in logits
 */
public record SkillChange(Skill skill, WeekPoint from, WeekPoint to, Estimate rise) {

  /**
   * How a skill of a player changed between two days.
   *
   * @param reading what the club's scores say
   * @param player a player of its history
   * @param skill the skill
   * @param from the earlier day; before the player's first week that week counts
   * @param to the later day; after this week this one counts
   * @return the change; empty where both days lie in the same week
   */
  public static Optional<SkillChange> between(
      ClubReading reading, PlayerId player, Skill skill, LocalDate from, LocalDate to) {
    List<WeekPoint> course = reading.skill(player, skill).course();
    LocalDate first = later(course.get(0).monday(), mondayOf(from));
    LocalDate last = earlier(course.get(course.size() - 1).monday(), mondayOf(to));
    if (!first.isBefore(last)) {
      return Optional.empty();
    }
    JointEstimate both = reading.joint(player, skill, first, last);
    return Optional.of(
        new SkillChange(
            skill,
            new WeekPoint(first, both.first()),
            new WeekPoint(last, both.second()),
            both.difference()));
  }

  private static LocalDate mondayOf(LocalDate day) {
    return day.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
  }

  private static LocalDate later(LocalDate one, LocalDate other) {
    return one.isAfter(other) ? one : other;
  }

  private static LocalDate earlier(LocalDate one, LocalDate other) {
    return one.isBefore(other) ? one : other;
  }

  /**
   * The chance that the skill is higher in the later week.
   *
   * @return 0 to 1
   */
  public double chanceOfRise() {
    return rise.chanceAbove(0);
  }

  /**
   * What a rise means in rallies that turn on this skill, against a player who stands between the
   * two weeks: half of the rise is put on each side of an even rally. So the answer does not hang
   * on how good the club's average player is.
   *
   * @param logits a rise, negative for a fall
   * @return how much larger the share of rallies won is, -1 to 1
   */
  public static double share(double logits) {
    return Math.tanh(logits / 4);
  }
}
