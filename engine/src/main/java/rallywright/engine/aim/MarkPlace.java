package rallywright.engine.aim;

import rallywright.engine.aim.ShotSetting.Place;
import rallywright.engine.court.Court;

/** Where a mark goes, measured from lines, as somebody with a tape measure needs it. */
public final class MarkPlace {

  /** Nearer than this to a line is on it: half a line's width. */
  private static final double ON_M = Court.LINE_WIDTH.metres() / 2;

  private MarkPlace() {}

  /**
   * A place by its nearest lines.
   *
   * @param place on the far side
   * @param measures the reader's units
   * @return for example "1 ft 9 in short of the kitchen line, 2 ft right of the centre line"
   */
  public static String words(Place place, Measures measures) {
    return along(place.along(), measures) + ", " + across(place.across(), measures);
  }

  private static String along(double along, Measures measures) {
    double kitchen = Court.KITCHEN_DEPTH.metres();
    double end = Court.HALF_LENGTH.metres();
    if (along < ON_M) {
      return "under the net";
    }
    if (Math.abs(along - kitchen) < ON_M) {
      return "on the kitchen line";
    }
    if (along < kitchen) {
      return measures.length(kitchen - along) + " short of the kitchen line";
    }
    if (along > end - ON_M) {
      return "on the baseline";
    }
    return along < (kitchen + end) / 2
        ? measures.length(along - kitchen) + " past the kitchen line"
        : measures.length(end - along) + " inside the baseline";
  }

  private static String across(double across, Measures measures) {
    double out = Court.HALF_WIDTH.metres() - Math.abs(across);
    String side = across < 0 ? "left" : "right";
    if (out < ON_M) {
      return "on the " + side + " side line";
    }
    if (Math.abs(across) < ON_M) {
      return "on the centre line";
    }
    return out < Math.abs(across)
        ? "%s inside the %s side line".formatted(measures.length(out), side)
        : "%s %s of the centre line".formatted(measures.length(Math.abs(across)), side);
  }
}
