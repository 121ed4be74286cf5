package rallywright.engine.flight;

/** The smooth results of a flight, in an array that can be interpolated. */
final class Fields implements Track {

  static final int COUNT = 8;

  private static final double LOWEST = -3;
  private static final double LATEST = 4;

  final double[] values = new double[COUNT];
  private final double radius;

  Fields(Shot shot) {
    radius = shot.conditions().ball().radiusM();
  }

  /**
   * Heights are kept at 3 m below the floor at the least: deeper, a ball slows down until it never
   * gets there, and what is no number would spread to its neighbours.
   */
  static void write(Track track, double[] into, int at) {
    into[at] = Double.isNaN(track.netZ()) ? LOWEST : Math.max(LOWEST, track.netZ());
    into[at + 1] = Double.isNaN(track.netY()) ? track.landY() : track.netY();
    into[at + 2] = track.top();
    into[at + 3] = track.landX();
    into[at + 4] = track.landY();
    into[at + 5] = Double.isNaN(track.reachZ()) ? LOWEST : Math.max(LOWEST, track.reachZ());
    into[at + 6] = Double.isNaN(track.reachY()) ? track.landY() : track.reachY();
    into[at + 7] = Double.isNaN(track.reachSeconds()) ? LATEST : track.reachSeconds();
  }

  @Override
  public double radius() {
    return radius;
  }

  @Override
  public double netZ() {
    return values[0];
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
    return values[5];
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
