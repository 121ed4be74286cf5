package rallywright.web.progress;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import rallywright.engine.practice.SessionLoad;
import rallywright.engine.practice.WeekLoad;

/**
 * The load of a player's weeks, for the page.
 *
 * @param weeks the newest weeks, the oldest first
 */
public record LoadView(List<Week> weeks) {

  private static final int WEEKS = 8;
  private static final double FULL_WIDTH = 100;

  /**
   * One week.
   *
   * @param monday its first day in words
   * @param load the sum, "–" where nothing was rated
   * @param width of its bar, 0 to 100
   * @param words sessions and minutes in words
   */
  public record Week(String monday, String load, String width, String words) {}

  static LoadView of(List<SessionLoad> sessions, LocalDate today) {
    List<WeekLoad> weeks = WeekLoad.weeks(sessions, today, WEEKS);
    double most = weeks.stream().mapToDouble(WeekLoad::load).max().orElse(0);
    return new LoadView(weeks.stream().map(week -> week(week, most)).toList());
  }

  private static Week week(WeekLoad week, double most) {
    double width = most > 0 ? FULL_WIDTH * week.load() / most : 0;
    return new Week(
        SkillWords.DAY.format(week.monday()),
        number(week),
        String.format(Locale.ROOT, "%.1f", width),
        words(week));
  }

  /** The sum of a week as tables show it. */
  static String number(WeekLoad week) {
    return week.isRated() ? String.valueOf(Math.round(week.load())) : "–";
  }

  private static String words(WeekLoad week) {
    if (week.sessions() == 0) {
      return "no session";
    }
    String words =
        (week.sessions() == 1 ? "1 session" : week.sessions() + " sessions")
            + ", "
            + Math.round(week.minutes())
            + " min";
    return week.unrated() == 0
        ? words
        : words + ", " + (week.unrated() == 1 ? "1 not rated" : week.unrated() + " not rated");
  }

  /** Whether any week has a rating. */
  public boolean isRated() {
    return weeks.stream().anyMatch(week -> !week.load().equals("–"));
  }
}
