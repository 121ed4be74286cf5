package rallywright.engine.flight;

/**
 * What requirements may ask of a flight. A ball that lands before a plane is followed below the
 * floor, so that its height there changes without a jump; NaN only where it never gets there.
 */
public interface Track {

  /** The ball's radius in metres. */
  double radius();

  /** Height of the centre over the net plane in metres, or NaN. */
  double netZ();

  /** Where it crosses the net plane, in metres to the hitter's left, or NaN. */
  double netY();

  /** The greatest height of the centre in metres. */
  double top();

  /** Where it lands, in metres beyond the net. */
  double landX();

  /** Where it lands, in metres to the hitter's left. */
  double landY();

  /** Height of the centre at the opponent's reach in metres, or NaN. */
  double reachZ();

  /** Where it passes the opponent's reach, in metres to the hitter's left, or NaN. */
  double reachY();

  /** When it passes the opponent's reach, in seconds after contact, or NaN. */
  double reachSeconds();
}
