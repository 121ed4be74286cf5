package rallywright.engine.flight;

/**
 * The smooth results of a flight, in an array that can be interpolated.
 *
 * <p>For the maintainer: the height over the net of a ball that falls short goes down without end,
 * and some balls never get there. A limit would leave a kink, and cubics carry it to where the edge
 * of success runs: chances of cross-court dinks into the wind were off by up to 0.008. So heights
 * below half a metre, where no edge runs, are bent before they are interpolated, d into d/√(1+d²),
 * which joins what is above without a jump of slope or curvature, has an end for balls that never
 * get there, and is bent back exactly.
 */
final class Fields implements Track {

  static final int COUNT = 8;

  /** Below this height a field is bent; no requirement has its edge there. */
  private static final double BENT_BELOW = 0.5;

  /** How deep all depths together are bent to, in metres. */
  private static final double BEND = 2.5;

  private static final double DEEPEST = -0.999;
  private static final double LATEST = 4;

  final double[] values = new double[COUNT];
  private final double radius;

  private final Target target;

  Fields(Shot shot) {
    radius = shot.conditions().ball().radiusM();
    target = shot.target();
  }

  /** How clearly a flight of these values does what the target asks: above 0 if it does. */
  double margin() {
    double margin = target.margin(this);
    return Double.isNaN(margin) ? Requirement.NOWHERE_NEAR : margin;
  }

  static void write(Track track, double[] into, int at) {
    into[at] = bent(track.netZ());
    into[at + 1] = Double.isNaN(track.netY()) ? track.landY() : track.netY();
    into[at + 2] = track.top();
    into[at + 3] = track.landX();
    into[at + 4] = track.landY();
    into[at + 5] = bent(track.reachZ());
    into[at + 6] = Double.isNaN(track.reachY()) ? track.landY() : track.reachY();
    into[at + 7] = Double.isNaN(track.reachSeconds()) ? LATEST : track.reachSeconds();
  }

  /** The height, or where it is low something that falls no further than to the bend's depth. */
  private static double bent(double height) {
    if (Double.isNaN(height)) {
      return BENT_BELOW - BEND;
    }
    double depth = (height - BENT_BELOW) / BEND;
    return depth >= 0 ? height : BENT_BELOW + BEND * depth / Math.sqrt(1 + depth * depth);
  }

  private static double straight(double bent) {
    if (bent >= BENT_BELOW) {
      return bent;
    }
    double depth = Math.max(DEEPEST, (bent - BENT_BELOW) / BEND);
    return BENT_BELOW + BEND * depth / Math.sqrt(1 - depth * depth);
  }

  @Override
  public double radius() {
    return radius;
  }

  @Override
  public double netZ() {
    return straight(values[0]);
  }

  @Override
  public double netY() {
    return values[1];
  }

  @Override
  public double top() {
    return values[2];
  }

  @Override
  public double landX() {
    return values[3];
  }

  @Override
  public double landY() {
    return values[4];
  }

  @Override
  public double reachZ() {
    return straight(values[5]);
  }

  @Override
  public double reachY() {
    return values[6];
  }

  @Override
  public double reachSeconds() {
    return values[7];
  }
}
