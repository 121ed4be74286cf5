package rallywright.engine.aim;

/** How lengths and speeds are written: in the units that the reader chose. */
public interface Measures {

  /**
   * A length, to the inch or centimetre.
   *
   * @param metres any
   * @return for example "2 ft 3 in" or "0.69 m"
   */
  String length(double metres);

  /**
   * A length as a coach says it from the fence: to half a foot or 10 cm.
   *
   * @param metres 0 or more
   * @return for example "2 ½ ft" or "0.7 m"
   */
  String about(double metres);

  /**
   * A small height, to the inch or centimetre, in the smaller unit only.
   *
   * @param metres 0 or more
   * @return for example "16 in" or "41 cm"
   */
  String small(double metres);

  /**
   * A speed, to the mile or kilometre per hour.
   *
   * @param metresPerSecond 0 or more
   * @return for example "10 mph" or "16 km/h"
   */
  String speed(double metresPerSecond);
}
