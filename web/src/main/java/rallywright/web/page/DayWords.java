package rallywright.web.page;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import rallywright.engine.session.Session;

/** Days as a person writes them. */
public final class DayWords {

  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("EEEE d MMMM uuuu", Locale.ENGLISH);

  private DayWords() {}

  /** A day, for example "Tuesday 14 May 2030". */
  public static String of(LocalDate day) {
    return DAY.format(day);
  }

  /** When a session begins, for example "Tuesday 14 May 2030, 18:30". */
  public static String of(Session session) {
    return of(session.date()) + ", " + session.start();
  }
}
