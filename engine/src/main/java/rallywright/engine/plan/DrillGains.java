package rallywright.engine.plan;

import rallywright.engine.drill.DrillKey;

/** How much an effective minute of a drill brings, beside other drills. */
@FunctionalInterface
public interface DrillGains {

  /** All drills bring the same: what is assumed until a club has learned otherwise. */
  DrillGains ALIKE = drill -> 1;

  /**
   * The gain of a drill.
   *
   * @param drill the drill
   * @return 0 or more; 1 is usual
   */
  double of(DrillKey drill);
}
