package rallywright.paper;

import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import rallywright.engine.plan.PlannedBlock;
import rallywright.engine.session.Session;

/** From when to when each block lasts if all goes as usual: the mean times, added up. */
final class BlockClock {

  private static final DateTimeFormatter HOUR_AND_MINUTE =
      DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

  private final LocalTime start;
  private final List<Double> boundaries;

  private BlockClock(LocalTime start, List<Double> boundaries) {
    this.start = start;
    this.boundaries = boundaries;
  }

  static BlockClock of(Session session) {
    List<Double> boundaries = new ArrayList<>(List.of(0.0));
    double minutes = 0;
    for (PlannedBlock block : session.plan().blocks()) {
      minutes += block.time().mean();
      boundaries.add(minutes);
    }
    return new BlockClock(session.start(), boundaries);
  }

  /**
   * The times of blocks that follow one another, each rounded to the full minute, so that one block
   * ends when the next starts.
   */
  String fromTo(int first, int last) {
    return at(boundaries.get(first)) + "–" + at(boundaries.get(last + 1));
  }

  /** The booked time. */
  String booked(int minutes) {
    return at(0) + "–" + at(minutes);
  }

  private String at(double minutes) {
    return start.plusMinutes(Math.round(minutes)).format(HOUR_AND_MINUTE);
  }
}
