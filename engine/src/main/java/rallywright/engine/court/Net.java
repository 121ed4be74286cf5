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

  private Net() {}

  /**
   * The height of the net's top.
   *
   * @param across distance from the middle of the court, to either side
   * @return 34 to 36 in
   */
  public static Length heightAt(Length across) {
    double share = Math.min(1, Math.abs(across.metres()) / Court.HALF_WIDTH.metres());
    return Court.NET_AT_CENTRE.plus(Court.NET_AT_SIDELINE.minus(Court.NET_AT_CENTRE).times(share));
  }
}
