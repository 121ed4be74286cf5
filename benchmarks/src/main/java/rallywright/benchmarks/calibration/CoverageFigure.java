package rallywright.benchmarks.calibration;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import rallywright.engine.calibration.Coverage;
import rallywright.engine.calibration.Kind;

/**
 * How far the covered shares lie from what the intervals say, in points, with two standard errors.
 *
 * @param coverages of each kind, for each share
 */
record CoverageFigure(Map<Kind, List<Coverage>> coverages) {
  private static final int LEFT = 60;
  private static final int TOP = 40;
  private static final int HEIGHT = 300;
  private static final int STEP = 30;
  private static final int GAP = 24;
  private static final int LEAST_REACH = 4;

  String svg() {
    int group = STEP * CalibrateClubs.SHARES.size() + GAP;
    int width = LEFT + group * coverages.size() + GAP;
    Drawing drawing =
        new Drawing(width, TOP + HEIGHT + 60, "Covered share less stated share, by kind");
    drawing.text(
        LEFT, 22, Drawing.Anchor.START, Drawing.INK, "covered less stated, points; bars: 2 SE");
    int reach = reach();
    double tolerance = 100 * CalibrateClubs.TOLERANCE;
    drawing.box(
        new Drawing.Box(LEFT, y(tolerance, reach), width - LEFT - 10, 2 * tolerance * unit(reach)),
        Drawing.BAND);
    drawing.line(new Drawing.Box(LEFT, y(0, reach), width - LEFT - 10, 0), Drawing.PALE);
    for (int tick = -reach; tick <= reach; tick += 2) {
      String words = String.format(Locale.ROOT, "%+d", tick).replace("+0", "0").replace('-', '−');
      drawing.text(LEFT - 8, y(tick, reach) + 4, Drawing.Anchor.END, Drawing.PALE, words);
    }
    double x = LEFT + GAP;
    for (Map.Entry<Kind, List<Coverage>> entry : coverages.entrySet()) {
      drawing.text(
          x + group / 2.0 - GAP,
          TOP + HEIGHT + 44,
          Drawing.Anchor.MIDDLE,
          Drawing.INK,
          entry.getKey().words());
      for (Coverage coverage : entry.getValue()) {
        mark(drawing, x, coverage, reach);
        x += STEP;
      }
      x += GAP;
    }
    return drawing.svg();
  }

  private static void mark(Drawing drawing, double x, Coverage coverage, int reach) {
    double off = 100 * (coverage.covered() - coverage.share());
    double bar = 200 * coverage.standardError();
    String colour = coverage.holdsWithin(CalibrateClubs.TOLERANCE) ? Drawing.MARK : Drawing.FAULT;
    drawing.line(new Drawing.Box(x, y(off + bar, reach), 0, 2 * bar * unit(reach)), colour);
    drawing.dot(x, y(off, reach), colour);
    String share = String.format(Locale.ROOT, "%.0f", 100 * coverage.share());
    drawing.text(x, TOP + HEIGHT + 20, Drawing.Anchor.MIDDLE, Drawing.PALE, share);
  }

  /** The smallest even number of points that holds every bar. */
  private int reach() {
    double most =
        coverages.values().stream()
            .flatMap(List::stream)
            .mapToDouble(
                each -> 100 * Math.abs(each.covered() - each.share()) + 200 * each.standardError())
            .max()
            .orElse(0);
    return (int) (2 * Math.ceil(Math.max(LEAST_REACH, most) / 2));
  }

  private static double unit(int reach) {
    return HEIGHT / (2.0 * reach);
  }

  private static double y(double points, int reach) {
    return TOP + (reach - points) * unit(reach);
  }
}
