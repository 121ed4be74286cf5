package rallywright.engine.flight;

/** The smooth results of a flight, in an array that can be interpolated. */
final class Fields implements Track {

  static final int COUNT = 8;

  final double[] values = new double[COUNT];
  private final double radius;

  Fields(Shot shot) {
    radius = shot.conditions().ball().radiusM();
  }

  static void write(Track track, double[] into, int at) {
    into[at] = track.netZ();
    into[at + 1] = track.netY();
    into[at + 2] = track.top();
    into[at + 3] = track.landX();
    into[at + 4] = track.landY();
    into[at + 5] = track.reachZ();
    into[at + 6] = track.reachY();
    into[at + 7] = track.reachSeconds();
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
