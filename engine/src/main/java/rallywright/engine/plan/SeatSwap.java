package rallywright.engine.plan;

import rallywright.engine.club.PlayerId;

/**
 * Two people change places in one turn of a block. One of them may be sitting out, so that a
 * late-comer takes over from somebody; head starts are counted anew for those who meet then.
 *
 * @param block the block
 * @param turn the turn, from 1
 * @param one one of the two
 * @param other the other one
 */
public record SeatSwap(BlockId block, int turn, PlayerId one, PlayerId other) {

  /**
   * Who stands in a player's place after the swap.
   *
   * @param player somebody who stood there before
   * @return the one who stands there then
   */
  PlayerId after(PlayerId player) {
    return player.equals(one) ? other : player.equals(other) ? one : player;
  }
}
