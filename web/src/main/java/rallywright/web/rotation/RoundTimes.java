package rallywright.web.rotation;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.DrillForm;
import rallywright.engine.plan.DrillPaces;
import rallywright.engine.rotation.RotationGame;
import rallywright.engine.rotation.RotationTime;

/** How long a round of each game takes, told beside the games that can be chosen. */
final class RoundTimes {

  private static final int SAY_IN_STEPS_OF = 5;

  private final Map<String, String> games = new LinkedHashMap<>();
  private final int courts;
  private double most = 1;

  /**
   * The times on so many courts.
   *
   * @param lanes the games for lanes
   * @param paces how fast each goes
   * @param courts how many courts are in use
   */
  RoundTimes(List<Drill> lanes, DrillPaces paces, int courts) {
    this.courts = courts;
    RotationTime doubles = RotationTime.evenRound(RotationGame.DOUBLES, courts);
    add(RotationForm.DOUBLES, "Doubles", doubles);
    for (Drill drill : lanes) {
      DrillForm.Scored game = drill.scored().orElseThrow();
      RotationTime time =
          RotationTime.evenRound(RotationGame.LANES, courts, game.format(), paces.of(drill, game));
      add(drill.key().value(), "On lanes: " + drill.name(), time);
    }
  }

  private void add(String key, String name, RotationTime time) {
    long minutes = Math.max(1, Math.round(time.minutesMean()));
    games.put(key, "%s, to %d: about %d min".formatted(name, time.target(), minutes));
    most = Math.max(most, time.minutesP90() / time.minutesMean());
  }

  /** What can be played, each with the time of a round. */
  Map<String, String> games() {
    return games;
  }

  /** What the times mean. */
  String hint() {
    long more = SAY_IN_STEPS_OF * (long) Math.ceil(100 * (most - 1) / SAY_IN_STEPS_OF);
    return ("What a round takes until its last game is done, with changing places, stands beside"
            + " each game below, for %s in use. %d in 100 more suffices nine times in ten.")
        .formatted(courts == 1 ? "1 court" : courts + " courts", more);
  }
}
