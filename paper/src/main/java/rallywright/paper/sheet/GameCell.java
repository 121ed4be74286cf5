package rallywright.paper.sheet;

/**
 * One game to be written down.
 *
 * @param turn which turn of the block it belongs to, for example "1"
 * @param place the lane, for example "court 1 left"
 * @param near the near side
 * @param far the far side
 */
public record GameCell(String turn, String place, SeatLine near, SeatLine far) {}
