package rallywright.engine.flight;

import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketedUnivariateSolver;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.events.Action;
import org.hipparchus.ode.events.AdaptableInterval;
import org.hipparchus.ode.events.ODEEventDetector;
import org.hipparchus.ode.events.ODEEventHandler;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;

/** The same flight by the integrator of order 8 of Hipparchus, with its own event location. */
final class HipparchusFlight implements OrdinaryDifferentialEquation {

  private static final double LONGEST_STEP = 1;
  private static final double LONGEST_FLIGHT = 20;
  private static final double CHECK_SECONDS = 0.5;
  private static final int MOST_ITERATIONS = 100;
  private static final double EVENT_SECONDS = 1e-9;

  private final Motion motion;
  private final double radius;
  private final DormandPrince853Integrator integrator;
  private double netZ;

  HipparchusFlight(Conditions conditions, double tolerance) {
    motion = new Motion(conditions);
    radius = conditions.ball().radiusM();
    integrator = new DormandPrince853Integrator(1e-9, LONGEST_STEP, tolerance, tolerance);
    integrator.addEventDetector(new Plane(2, radius, Action.STOP));
    integrator.addEventDetector(new Plane(0, 0, Action.CONTINUE));
  }

  /** Where the ball lands, in metres beyond the net. */
  double landingX(Launch launch) {
    netZ = Double.NaN;
    motion.spin(launch.spin().x(), launch.spin().y(), launch.spin().z());
    Vector p = launch.position();
    Vector v = launch.velocity();
    double[] start = {p.x(), p.y(), p.z(), v.x(), v.y(), v.z()};
    return integrator.integrate(this, new ODEState(0, start), LONGEST_FLIGHT).getPrimaryState()[0];
  }

  double netZ() {
    return netZ;
  }

  @Override
  public int getDimension() {
    return Motion.SIZE;
  }

  @Override
  public double[] computeDerivatives(double seconds, double[] state) {
    double[] rate = new double[Motion.SIZE];
    motion.rate(state, rate);
    return rate;
  }

  /** A coordinate comes to a value. */
  private final class Plane implements ODEEventDetector, ODEEventHandler {
    private final int coordinate;
    private final double value;
    private final Action action;

    Plane(int coordinate, double value, Action action) {
      this.coordinate = coordinate;
      this.value = value;
      this.action = action;
    }

    @Override
    public double g(ODEStateAndDerivative state) {
      return state.getPrimaryState()[coordinate] - value;
    }

    @Override
    public Action eventOccurred(
        ODEStateAndDerivative state, ODEEventDetector detector, boolean increasing) {
      if (action == Action.CONTINUE) {
        netZ = state.getPrimaryState()[2];
      }
      return action;
    }

    @Override
    public AdaptableInterval getMaxCheckInterval() {
      return (state, forward) -> CHECK_SECONDS;
    }

    @Override
    public int getMaxIterationCount() {
      return MOST_ITERATIONS;
    }

    @Override
    public BracketedUnivariateSolver<UnivariateFunction> getSolver() {
      return new BracketingNthOrderBrentSolver(0, EVENT_SECONDS, 0, 5);
    }

    @Override
    public ODEEventHandler getHandler() {
      return this;
    }
  }
}
