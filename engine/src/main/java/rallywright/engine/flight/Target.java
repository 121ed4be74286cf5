package rallywright.engine.flight;

import java.util.List;
import java.util.stream.DoubleStream;

/**
 * What a shot should do: every one of its requirements.
 *
 * @param requirements one or more
 */
public record Target(List<Requirement> requirements) {

  /** Checks that there is one, and that all look at the ball at one plane. */
  public Target {
    requirements = List.copyOf(requirements);
    if (requirements.isEmpty()) {
      throw new IllegalArgumentException("A target needs one requirement or more.");
    }
    if (planes(requirements).count() > 1) {
      throw new IllegalArgumentException(
          "The requirements of a target must look at the ball at one plane. Maybe leave one out.");
    }
  }

  /**
   * A target of these requirements.
   *
   * @param requirements one or more
   * @return the target
   */
  public static Target of(Requirement... requirements) {
    return new Target(List.of(requirements));
  }

  /**
   * How clearly a flight does it all: the smallest margin.
   *
   * @param flight what is known of the flight
   * @return above 0 if it succeeds
   */
  public double margin(Track flight) {
    double smallest = Double.POSITIVE_INFINITY;
    for (Requirement requirement : requirements) {
      smallest = Math.min(smallest, requirement.margin(flight));
    }
    return smallest;
  }

  /**
   * Where the ball is looked at beyond the net, if that is asked: at an opponent's reach.
   *
   * @return metres beyond the net, or NaN
   */
  public double reachX() {
    return planes(requirements).findFirst().orElse(Double.NaN);
  }

  private static DoubleStream planes(List<Requirement> requirements) {
    return requirements.stream()
        .mapToDouble(Requirement::planeX)
        .filter(x -> !Double.isNaN(x))
        .distinct();
  }
}
