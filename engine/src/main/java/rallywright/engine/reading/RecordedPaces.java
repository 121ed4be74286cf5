package rallywright.engine.reading;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.DrillForm;
import rallywright.engine.drill.DrillKey;
import rallywright.engine.pace.RallyPace;
import rallywright.engine.plan.DrillPaces;

/**
 * The pace of each drill after the times between taps. A gap below {@value #SHORTEST_SECONDS} s is
 * a double tap or a correction, one above {@value #LONGEST_SECONDS} s a break; both are left out
 * (assumptions of this project).
 */
public final class RecordedPaces implements DrillPaces {

  private static final double SHORTEST_SECONDS = 3;
  private static final double LONGEST_SECONDS = 120;

  private final Map<DrillKey, List<Double>> seconds;

  private RecordedPaces(Map<DrillKey, List<Double>> seconds) {
    this.seconds = seconds;
  }

  static RecordedPaces of(List<PlayedGame> games) {
    Map<DrillKey, List<Double>> seconds = new HashMap<>();
    for (PlayedGame played : games) {
      List<Double> gaps = gaps(played.game().rallyTimes());
      seconds.computeIfAbsent(played.drill().key(), key -> new ArrayList<>()).addAll(gaps);
    }
    return new RecordedPaces(seconds);
  }

  private static List<Double> gaps(List<Long> times) {
    List<Double> gaps = new ArrayList<>();
    for (int i = 1; i < times.size(); i++) {
      double gap = (times.get(i) - times.get(i - 1)) / 1000.0;
      if (gap >= SHORTEST_SECONDS && gap <= LONGEST_SECONDS) {
        gaps.add(gap);
      }
    }
    return gaps;
  }

  @Override
  public RallyPace of(Drill drill, DrillForm.Scored game) {
    return DrillPaces.FIRST_IDEAS
        .of(drill, game)
        .afterRallies(seconds.getOrDefault(drill.key(), List.of()));
  }
}
