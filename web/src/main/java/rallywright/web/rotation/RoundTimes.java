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

  private final Map<String, String> games = new LinkedHashMap<>();
  private final int courts;

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
    games.put(
        key,
        "%s, to %d: about %d min, seldom more than %d"
            .formatted(
                name,
                time.target(),
                Math.max(1, Math.round(time.minutesMean())),
                (long) Math.ceil(time.minutesP90())));
  }

  /** What can be played, each with the time of a round. */
  Map<String, String> games() {
    return games;
  }

  /** What the times mean. */
  String hint() {
    return ("With each: how long a round takes on %s until its last game is done and places are"
            + " changed; nine rounds in ten are done by the longer time.")
        .formatted(courts == 1 ? "1 court" : courts + " courts");
  }
}
