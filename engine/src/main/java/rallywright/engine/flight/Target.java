package rallywright.engine.flight;

import java.util.List;

/**
 * What a shot should do: every one of its requirements.
 *
 * @param requirements one or more
 */
public record Target(List<Requirement> requirements) {

  /** Checks that there is one. */
  public Target {
    requirements = List.copyOf(requirements);
    if (requirements.isEmpty()) {
      throw new IllegalArgumentException("A target needs one requirement or more.");
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
   * Where an opponent can meet the ball, if that is asked.
   *
   * @return metres beyond the net, or NaN
   */
  public double reachX() {
    return requirements.stream()
        .filter(Requirement.NotAttackable.class::isInstance)
        .mapToDouble(each -> ((Requirement.NotAttackable) each).reachX())
        .findFirst()
        .orElse(Double.NaN);
  }
}
