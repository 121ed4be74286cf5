package rallywright.engine.flight;

/**
 * Flies balls: adaptive steps of Dormand and Prince, with the moments that matter found to the
 * accuracy of the steps themselves.
 *
 * <p><b>Card.</b> In: a launch and the conditions. Out: the moment over the net plane, the highest
 * point, the landing, and the crossing of a player's reach plane. Valid: any launch above the
 * floor. Limits: ω and C_D stay constant in flight; the net is no obstacle, only a plane. Checked
 * against an independent integrator of order 8 to 1e-6 m and 1e-6 s, and against exact solutions.
 *
 * <p>For the maintainer: a moment inside a step is found on the arc through both of its ends
 * ({@link Arc}), which costs no further flying. A solver belongs to one thread. Nothing is
 * allocated while a ball flies.
 */
public final class FlightSolver {

  /** Error allowed in one step, in metres and metres per second. */
  private static final double TOLERANCE = 1e-9;

  /** The first step, in seconds, where the tolerance is 1. */
  private static final double FIRST_STEP = 0.8;

  /** Four fifths of the bits of 1: a fifth of the bits of a number leaves that much over. */
  private static final long ROOT_BIAS = Double.doubleToRawLongBits(1) / 5 * 4;

  private static final double LONGEST_STEP = 0.25;
  private static final double SHORTEST_STEP = 1e-9;
  private static final double SMALLEST_ERROR = 1e-300;
  private static final double SAFETY = 0.9;
  private static final double LONGEST_FLIGHT = 60;
  private static final double DEEPEST = -6;

  private final Conditions conditions;
  private final Motion motion;
  private final Stepper stepper;
  private final Arc arc;
  private final double radius;
  private final double[] before = new double[Motion.SIZE];
  private final double[] after = new double[Motion.SIZE];
  private final Moment net = new Moment();
  private final Moment apex = new Moment();
  private final Moment landing = new Moment();
  private final Moment reach = new Moment();
  private double reachX = Double.NaN;
  private double time;
  private double tolerance = TOLERANCE;
  private Floor floor = Floor.STOPS;

  /** What the floor does to a flight. */
  enum Floor {
    /** The flight ends there. */
    STOPS,
    /** The flight goes on below it until the planes are crossed: smooth from launch to launch. */
    LETS_THROUGH
  }

  private FlightSolver(Conditions conditions) {
    this.conditions = conditions;
    motion = new Motion(conditions);
    stepper = new Stepper(motion);
    arc = new Arc(stepper);
    radius = conditions.ball().radiusM();
  }

  /**
   * A solver for these conditions.
   *
   * @param conditions ball, air and wind
   * @return the solver, for one thread
   */
  public static FlightSolver of(Conditions conditions) {
    return new FlightSolver(conditions);
  }

  /**
   * The same with another error allowed in one step; the usual is 1e-9.
   *
   * @param allowed metres and metres per second, above 0
   * @return this solver
   */
  public FlightSolver withTolerance(double allowed) {
    tolerance = allowed;
    return this;
  }

  /**
   * Also find where the ball crosses a plane across the court.
   *
   * @param x distance of the plane beyond the net, in metres; NaN for none
   * @return this solver
   */
  public FlightSolver reachAt(double x) {
    reachX = x;
    return this;
  }

  /** Whether a flight ends at the floor. */
  FlightSolver floor(Floor wished) {
    floor = wished;
    return this;
  }

  /**
   * The conditions.
   *
   * @return ball, air and wind
   */
  public Conditions conditions() {
    return conditions;
  }

  /**
   * Flies a ball to the floor.
   *
   * @param launch a ball above the floor, or on it and going up
   * @return its moments
   * @throws IllegalArgumentException if the ball starts in the floor
   */
  public Flight fly(Launch launch) {
    run(launch);
    return new Flight(
        launch,
        net.toLaunch(launch),
        apex.toLaunch(launch),
        reach.toLaunch(launch),
        landing.toSure(launch));
  }

  /**
   * Flies a ball to the floor without making an object; ask {@link #landing()} and its likes.
   *
   * @param launch a ball above the floor, or on it and going up
   * @throws IllegalArgumentException if the ball starts in the floor
   */
  void run(Launch launch) {
    Vector position = launch.position();
    Vector velocity = launch.velocity();
    motion.spin(launch.spin().x(), launch.spin().y(), launch.spin().z());
    before[0] = position.x();
    before[1] = position.y();
    before[2] = position.z();
    before[3] = velocity.x();
    before[4] = velocity.y();
    before[5] = velocity.z();
    run();
  }

  /** Flies a ball with topspin from its speed and angles, without making an object. */
  void run(Vector position, double topspin, double[] aim) {
    double level = aim[0] * Math.cos(aim[1]);
    double cos = Math.cos(aim[2]);
    double sin = Math.sin(aim[2]);
    motion.spin(-topspin * sin, topspin * cos, 0);
    before[0] = position.x();
    before[1] = position.y();
    before[2] = position.z();
    before[3] = level * cos;
    before[4] = level * sin;
    before[5] = aim[0] * Math.sin(aim[1]);
    run();
  }

  private void run() {
    checkStart();
    net.clear();
    apex.clear();
    reach.clear();
    landing.clear();
    time = 0;
    if (before[5] <= 0) {
      apex.set(0, before);
    }
    stepper.begin(before);
    double seconds = Math.min(LONGEST_STEP, FIRST_STEP * fifthRoot(tolerance));
    while (!done()) {
      seconds = accepted(seconds);
      findMoments(seconds);
      time += seconds;
      if (time > LONGEST_FLIGHT) {
        throw new IllegalArgumentException(
            "The ball is still in the air after " + LONGEST_FLIGHT + " s. Maybe less spin.");
      }
      double grown = SAFETY * seconds * fifthRoot(tolerance / errorOf());
      seconds = Math.min(LONGEST_STEP, Math.max(seconds / 5, Math.min(5 * seconds, grown)));
      System.arraycopy(after, 0, before, 0, Motion.SIZE);
      stepper.accept();
    }
  }

  private boolean done() {
    if (!landing.known()) {
      return false;
    }
    boolean planes = net.known() && (reach.known() || Double.isNaN(reachX));
    return floor == Floor.STOPS || planes || before[2] < DEEPEST;
  }

  /**
   * The fifth root to 2 in 100, which is enough for the length of a step: from the exponent and a
   * straight line through the mantissa.
   */
  private static double fifthRoot(double value) {
    long bits = Double.doubleToRawLongBits(value);
    return Double.longBitsToDouble(bits / 5 + ROOT_BIAS);
  }

  private void checkStart() {
    boolean above = before[2] > radius;
    boolean leaving = before[2] >= radius - 1e-9 && before[5] > 0;
    if (!(above || leaving)) {
      throw new IllegalArgumentException(
          "The ball's centre (%s m) must start above its radius (%s m). Maybe 0.5."
              .formatted(before[2], radius));
    }
  }

  /** Takes a step as long as the tolerance allows, at most the given one; says how long. */
  private double accepted(double wished) {
    double seconds = wished;
    while (true) {
      stepper.step(before, seconds, after);
      double error = errorOf();
      if (!Double.isFinite(error)) {
        throw new IllegalArgumentException(
            "The ball's speed or the wind is too great to be followed. Maybe the units are wrong.");
      }
      if (error <= tolerance || seconds <= SHORTEST_STEP) {
        return seconds;
      }
      seconds = Math.max(seconds / 5, SAFETY * seconds * fifthRoot(tolerance / error));
    }
  }

  private double errorOf() {
    return Math.max(stepper.error(), SMALLEST_ERROR);
  }

  private void findMoments(double seconds) {
    boolean rises = !apex.known() && after[5] <= 0;
    boolean lands = !landing.known() && after[2] <= radius && after[5] < 0;
    boolean nets = !net.known() && crosses(0);
    boolean reaches = !reach.known() && crosses(reachX);
    if (!(rises || lands || nets || reaches)) {
      return;
    }
    arc.between(before, after, seconds);
    if (rises) {
      set(apex, arc.top(), seconds);
    }
    if (nets) {
      set(net, arc.at(0, 0, before[0] / (before[0] - after[0])), seconds);
    }
    if (reaches) {
      set(reach, arc.at(0, reachX, (before[0] - reachX) / (before[0] - after[0])), seconds);
    }
    if (lands) {
      set(landing, arc.at(2, radius, 1), seconds);
    }
    if (lands && floor == Floor.STOPS) {
      dropIfLater(net);
      dropIfLater(reach);
      dropIfLater(apex);
    }
  }

  private void set(Moment moment, double share, double seconds) {
    arc.write(share, moment.state);
    moment.seconds = time + share * seconds;
  }

  private void dropIfLater(Moment moment) {
    if (moment.known() && moment.seconds > landing.seconds) {
      moment.clear();
    }
  }

  private boolean crosses(double x) {
    return (before[0] - x) * (after[0] - x) < 0 || (after[0] == x && before[0] != x);
  }

  Moment net() {
    return net;
  }

  Moment apex() {
    return apex;
  }

  Moment reach() {
    return reach;
  }

  Moment landing() {
    return landing;
  }
}
