package rallywright.engine.plan;

import rallywright.engine.drill.Drill;

/** Says how many points a weaker side is given before a game. */
@FunctionalInterface
public interface FairStarts {

  /** Every game starts at 0-0. */
  FairStarts LOVE_ALL = (drill, a, b) -> HeadStart.NONE;

  /**
   * The head start of a game.
   *
   * @param drill the drill
   * @param a who plays its first side
   * @param b who plays its second side
   * @return the points given to either side
   */
  HeadStart of(Drill drill, Seat a, Seat b);
}
