package rallywright.engine.flight;

/** Tries launches of one shot; for one thread. Keeps what the last flight did. */
final class ShotTrial implements Track {

  /** Error allowed in one step: a landing is right to some hundredths of a millimetre. */
  private static final double TOLERANCE = 1e-6;

  private final Shot shot;
  private final FlightSolver solver;
  private final double[] aim = new double[3];

  ShotTrial(Shot shot) {
    this.shot = shot;
    solver =
        FlightSolver.of(shot.conditions())
            .withTolerance(TOLERANCE)
            .reachAt(shot.target().reachX())
            .floor(FlightSolver.Floor.LETS_THROUGH);
  }

  /** Flies the launch and says how clearly it does what the target asks: above 0 if it does. */
  double margin(LaunchAim aim) {
    return margin(aim.speed(), aim.elevation(), aim.bearing());
  }

  double margin(double speed, double elevation, double bearing) {
    fly(speed, elevation, bearing);
    return shot.target().margin(this);
  }

  void fly(double speed, double elevation, double bearing) {
    aim[0] = speed;
    aim[1] = elevation;
    aim[2] = bearing;
    solver.run(shot.contact(), shot.topspin(), aim);
  }

  @Override
  public double radius() {
    return shot.conditions().ball().radiusM();
  }

  @Override
  public double netZ() {
    return solver.net().known() ? solver.net().z() : Double.NaN;
  }

  @Override
  public double netY() {
    return solver.net().known() ? solver.net().y() : Double.NaN;
  }

  @Override
  public double top() {
    return solver.apex().known() ? solver.apex().z() : shot.contact().z();
  }

  @Override
  public double landX() {
    return solver.landing().x();
  }

  @Override
  public double landY() {
    return solver.landing().y();
  }

  @Override
  public double reachZ() {
    return solver.reach().known() ? solver.reach().z() : Double.NaN;
  }

  @Override
  public double reachY() {
    return solver.reach().known() ? solver.reach().y() : Double.NaN;
  }

  @Override
  public double reachSeconds() {
    return solver.reach().known() ? solver.reach().seconds : Double.NaN;
  }
}
