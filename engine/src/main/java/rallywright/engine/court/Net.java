package rallywright.engine.court;

import rallywright.engine.quantity.Length;

/**
 * The net's top between the posts.
 *
 * <p>The rules give two heights only, 34 in in the middle and 36 in at the side lines, and no shape
 * between them. Reading of this project: straight from the middle to the side lines, which is the
 * higher of the usual readings (35 in against 34.5 in of a parabola, 5 ft off the middle), and
 * level from there to the posts.
 */
public final class Net {

  private static final double CENTRE_M = Court.NET_AT_CENTRE.metres();
  private static final double RISE_M = Court.NET_AT_SIDELINE.metres() - CENTRE_M;
  private static final double HALF_M = Court.HALF_WIDTH.metres();

  private Net() {}

  /**
   * The height of the net's top.
   *
   * @param across distance from the middle of the court, to either side
   * @return 34 to 36 in
   */
  public static Length heightAt(Length across) {
    return Length.metres(heightM(across.metres()));
  }

  /**
   * The same for numerical loops.
   *
   * @param acrossM metres from the middle of the court, to either side
   * @return metres
   */
  public static double heightM(double acrossM) {
    return CENTRE_M + RISE_M * Math.min(1, Math.abs(acrossM) / HALF_M);
  }
}
