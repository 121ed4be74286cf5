package rallywright.engine.skill;

/**
 * Where a week lies on a player's chain of nodes: at or after one, and before another, or after the
 * last.
 *
 * @param before the node at the week or the last one before it
 * @param weekBefore its week
 * @param after the next node, or −1 after the last one and at a node
 * @param weekAfter its week
 * @param week the week asked for
 */
record Place(int before, int weekBefore, int after, int weekAfter, int week) {
  static Place at(int node, int week) {
    return new Place(node, week, -1, week, week);
  }

  static Place afterLast(int node, int weekOfNode, int week) {
    return new Place(node, weekOfNode, -1, week, week);
  }

  boolean isBetween() {
    return after >= 0;
  }

  /** How far the week lies on the way to the next node, 0 to 1. */
  double share() {
    return isBetween() ? (week - weekBefore) / (double) (weekAfter - weekBefore) : 0;
  }

  /**
   * Weeks of random walk that the nodes do not tell, shared by this place and another of the same
   * player: a walk of its own after the last node, a bridge between two.
   */
  double freeWeeksWith(Place other) {
    if (before != other.before) {
      return 0;
    }
    int first = Math.min(week, other.week);
    int last = Math.max(week, other.week);
    double weeks = first - weekBefore;
    return isBetween() ? weeks * (weekAfter - last) / (weekAfter - weekBefore) : weeks;
  }
}
