package rallywright.engine.aim;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Landings as a coach writes them down: one ball a line, from the net and from the centre line.
 *
 * @param places where balls landed
 * @param inTheNet how many more went into the net
 */
public record LandingLines(List<ShotSetting.Place> places, int inTheNet) {

  /** Copies the list. */
  public LandingLines {
    places = List.copyOf(places);
  }

  private static final String NUMBER = "([+-]?\\d{1,3}(?:\\.\\d{0,6})?)";
  private static final Pattern LINE = Pattern.compile(NUMBER + "[\\s,;]+" + NUMBER);
  private static final Pattern NET = Pattern.compile("net", Pattern.CASE_INSENSITIVE);
  private static final int LONGEST_ECHO = 30;

  /** Out of every court, about 50 ft beyond the net and 25 ft aside: assumption of this project. */
  private static final double FARTHEST_M = 15;

  private static final double WIDEST_M = 8;

  /**
   * Reads landings.
   *
   * @param text two numbers a line: how far beyond the net, how far right of the centre line, left
   *     of it below 0; or the word net for a ball in the net; empty lines are passed over
   * @param metresPerUnit 1 for metres, 0.3048 for feet
   * @param unit the unit's name, for sentences about mistakes
   * @return the places and the balls in the net
   * @throws IllegalArgumentException with a sentence that names the first line that is wrong
   */
  public static LandingLines read(String text, double metresPerUnit, String unit) {
    List<ShotSetting.Place> places = new ArrayList<>();
    int number = 0;
    int inTheNet = 0;
    for (String line : text.lines().map(String::strip).toList()) {
      number++;
      if (NET.matcher(line).matches()) {
        inTheNet++;
      } else if (!line.isEmpty()) {
        places.add(place(line, number, metresPerUnit, unit));
      }
    }
    if (Math.max(places.size(), inTheNet) > MeasuredScatter.MOST) {
      throw new IllegalArgumentException(
          "%d landings are too many; at most %d are taken. Maybe keep the latest."
              .formatted(Math.max(places.size(), inTheNet), MeasuredScatter.MOST));
    }
    return new LandingLines(places, inTheNet);
  }

  private static ShotSetting.Place place(
      String line, int number, double metresPerUnit, String unit) {
    Matcher parts = LINE.matcher(line.replace('−', '-'));
    if (parts.matches()) {
      double along = Double.parseDouble(parts.group(1)) * metresPerUnit;
      double across = Double.parseDouble(parts.group(2)) * metresPerUnit;
      if (along > 0 && along <= FARTHEST_M && Math.abs(across) <= WIDEST_M) {
        return new ShotSetting.Place(across, along);
      }
      throw new IllegalArgumentException(
          ("Line %d (%s): a ball lands from 0 to %.0f %s beyond the net and at most %.0f %s from"
                  + " the centre line. Maybe write net for a ball in the net.")
              .formatted(
                  number,
                  echo(line),
                  FARTHEST_M / metresPerUnit,
                  unit,
                  WIDEST_M / metresPerUnit,
                  unit));
    }
    throw new IllegalArgumentException(
        ("Line %d (%s) must hold two numbers in %s: how far beyond the net, and how far right of"
                + " the centre line (left of it: below 0). Maybe 5.5 -2.")
            .formatted(number, echo(line), unit));
  }

  private static String echo(String line) {
    return line.length() <= LONGEST_ECHO ? line : line.substring(0, LONGEST_ECHO) + "…";
  }
}
