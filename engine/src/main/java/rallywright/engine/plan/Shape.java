package rallywright.engine.plan;

/**
 * How those who may play a drill divide over the places.
 *
 * @param groups how many games run side by side, 0 if nobody can play
 * @param size how many belong to a game: 2, 3 or 4
 * @param threes how many of the lanes are shared by three who come in game by game
 * @param turns games one after another before opponents change
 */
record Shape(int groups, int size, int threes, int turns) {

  /** Three who share a lane, or two against one, take three turns: each is once apart. */
  static final int TURNS_OF_THREE = 3;

  static Shape of(DrillLine line, int eligible, SessionWish wish) {
    int size = line.players();
    int groups = Math.min(line.capacity(wish.courts()), eligible / size);
    int spare = eligible - groups * size;
    boolean shared =
        wish.requests().spare() == Requests.Spare.THREE_ON_A_LANE && size == 2 && line.isScored();
    int threes = shared ? Math.min(groups, spare) : 0;
    return new Shape(groups, size, threes, turns(line, threes));
  }

  private static int turns(DrillLine line, int threes) {
    if (threes > 0 || line.players() == 3) {
      return TURNS_OF_THREE;
    }
    return line.swapsRoles() ? 2 : 1;
  }

  /** The same with other turns: who shares a lane must come in once in every turn. */
  Shape withTurns(int other) {
    return new Shape(groups, size, other == TURNS_OF_THREE ? threes : 0, other);
  }

  /** How many stand on court at once. */
  int onCourt() {
    return groups * size;
  }

  /** How many take part in a stint. */
  int takePart() {
    return groups * size + threes;
  }
}
