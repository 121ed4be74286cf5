package rallywright.web.shots;

import java.util.List;
import java.util.Locale;
import java.util.function.DoubleFunction;
import rallywright.engine.aim.LineTable;
import rallywright.engine.aim.RangeWords;
import rallywright.engine.aim.ShotWords;
import rallywright.engine.aim.UsualShot;
import rallywright.engine.flight.Ranged;
import rallywright.web.page.Units;

/**
 * One line of the table.
 *
 * @param shot what is hit
 * @param way straight or cross-court
 * @param answers how often it comes off, air over the net, pace, angle, room: balls change them
 * @param geometry the way, the net there, the court behind it: the same for every ball
 */
public record LineRow(String shot, String way, List<Cell> answers, List<String> geometry) {

  /** Copies the lists. */
  public LineRow {
    geometry = List.copyOf(geometry);
    answers = List.copyOf(answers);
  }

  /**
   * A number that balls change.
   *
   * @param value for the central ball
   * @param range for four balls in five; empty where they do not change it
   */
  public record Cell(String value, String range) {

    private static Cell of(Ranged number, DoubleFunction<String> words, String around) {
      return new Cell(
          String.format(Locale.ROOT, around, words.apply(number.central())),
          RangeWords.range(number, words));
    }
  }

  static LineRow of(UsualShot shot, String way, LineTable.Line line, Units units) {
    return new LineRow(
        shot.words().replace(", straight", ""),
        way,
        line.way().map(found -> answers(found, units)).orElse(NOTHING),
        List.of(
            units.length(line.line().distance()),
            units.small(line.line().netHeight()),
            units.length(line.line().courtBehind())));
  }

  private static final Cell NONE = new Cell("–", "");

  /** Where nothing that can be hit succeeds. */
  private static final List<Cell> NOTHING =
      List.of(new Cell(ShotWords.timesInTen(0), ""), NONE, NONE, NONE, NONE);

  private static List<Cell> answers(LineTable.Way way, Units units) {
    Ranged chance = way.aim().chance();
    String range = RangeWords.range(chance, ShotWords::percentWithin);
    return List.of(
        new Cell(ShotWords.timesInTen(chance.central()), range.isEmpty() ? "" : range + " in 100"),
        Cell.of(way.aim().clearance(), air -> units.small(Math.max(0, air)), "%s"),
        Cell.of(way.forgives().pace(), share -> tenths(100 * share), "± %s %%"),
        Cell.of(way.forgives().elevation(), angle -> tenths(Math.toDegrees(angle)), "± %s°"),
        Cell.of(way.forgives().area(), area -> String.valueOf(Math.round(10 * area)), "%s"));
  }

  private static String tenths(double number) {
    return String.format(Locale.ROOT, "%.1f", number);
  }
}
