package rallywright.engine.odds;

import java.util.Optional;

/**
 * What makes a game fair.
 *
 * @param headStart the best head start
 * @param unequalTargets where no head start comes near enough to the wish, the best pair of targets
 *     from 0-0, won by one
 */
public record FairGame(HeadStart headStart, Optional<UnequalTargets> unequalTargets) {

  /**
   * A head start: one side at 0, the other at 0 or more.
   *
   * @param a points that A starts with
   * @param b points that B starts with
   * @param winA the chance that A then wins
   */
  public record HeadStart(int a, int b, double winA) {}

  /**
   * Targets that differ, played from 0-0.
   *
   * @param targetA points that A needs
   * @param targetB points that B needs
   * @param winA the chance that A then wins
   */
  public record UnequalTargets(int targetA, int targetB, double winA) {}
}
