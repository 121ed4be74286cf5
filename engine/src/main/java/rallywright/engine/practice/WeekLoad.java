package rallywright.engine.practice;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.List;

/**
 * The load of one player's week, Monday to Sunday.
 *
 * <p><b>Card.</b> The sum of the {@link SessionLoad}s of the week. Nothing else is made of it: no
 * ratio of this week to earlier weeks, no monotony, no risk. The ratio of acute to chronic load is
 * tied to its own denominator (L. Lolli et al., British Journal of Sports Medicine 53:921) and says
 * no more of injuries than a division by a constant or by chance (F. Impellizzeri et al. 2020,
 * Sports Medicine, doi 10.1007/s40279-020-01378-6). Only what was played and rated here is known.
 *
 * @param monday the first day
 * @param sessions how many sessions were played
 * @param unrated how many of them have no rating and are not in the sum
 * @param minutes of all sessions
 * @param load the sum over the rated sessions
 */
public record WeekLoad(LocalDate monday, int sessions, int unrated, double minutes, double load) {

  /**
   * The newest weeks of a player.
   *
   * @param all the player's sessions in any order
   * @param today a day in the last week that is wanted
   * @param count how many weeks, 1 or more
   * @return one for each week, the oldest first, also for weeks without a session
   */
  public static List<WeekLoad> weeks(List<SessionLoad> all, LocalDate today, int count) {
    LocalDate last = mondayOf(today);
    List<WeekLoad> weeks = new ArrayList<>();
    for (int ago = count - 1; ago >= 0; ago--) {
      LocalDate monday = last.minusWeeks(ago);
      weeks.add(
          sum(monday, all.stream().filter(each -> mondayOf(each.date()).equals(monday)).toList()));
    }
    return weeks;
  }

  private static WeekLoad sum(LocalDate monday, List<SessionLoad> sessions) {
    return new WeekLoad(
        monday,
        sessions.size(),
        (int) sessions.stream().filter(each -> each.effort().isEmpty()).count(),
        sessions.stream().mapToDouble(SessionLoad::minutes).sum(),
        sessions.stream().mapToDouble(each -> each.load().orElse(0)).sum());
  }

  private static LocalDate mondayOf(LocalDate day) {
    return day.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
  }

  /**
   * Whether any session of the week was rated, so that the sum says something.
   *
   * @return false for a week of rest or without ratings
   */
  public boolean isRated() {
    return sessions > unrated;
  }
}
