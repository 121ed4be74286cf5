package rallywright.web.shots;

import java.util.Locale;
import rallywright.engine.aim.LineTable;
import rallywright.engine.aim.ShotWords;
import rallywright.engine.aim.UsualShot;
import rallywright.web.page.Units;

/**
 * One line of the table.
 *
 * @param shot what is hit
 * @param way straight or cross-court
 * @param distance to the middle of the target
 * @param net its height where the line crosses it
 * @param court behind the net along the line
 * @param pace what the window forgives in pace
 * @param angle what it forgives in elevation
 * @param area of the window
 * @param chance with the best aim
 */
public record LineRow(
    String shot,
    String way,
    String distance,
    String net,
    String court,
    String pace,
    String angle,
    String area,
    String chance) {

  static LineRow of(UsualShot shot, String way, LineTable.Line line, Units units) {
    return new LineRow(
        shot.words().replace(", straight", ""),
        way,
        units.length(line.line().distance()),
        units.small(line.line().netHeight()),
        units.length(line.line().courtBehind()),
        String.format(Locale.ROOT, "± %.1f %%", 100 * line.line().perSpeed()),
        String.format(Locale.ROOT, "± %.1f°", Math.toDegrees(line.line().perElevation())),
        String.format(Locale.ROOT, "%.0f", 10 * line.line().window().area()),
        ShotWords.timesInTen(line.chance()));
  }
}
