package rallywright.engine.rotation;

/**
 * How players are put together in one round.
 *
 * @param words the game in a coach's words
 * @param size players in one group: the four of a doubles match, the two of a lane
 * @param perCourt groups that share one court
 * @param form whether a group splits into partners and opponents
 */
public record RotationGame(String words, int size, int perCourt, Form form) {

  /** Two against two on a court. */
  public static final RotationGame DOUBLES = new RotationGame("doubles", 4, 1, Form.PAIRS);

  /** One against one, two lanes on a court. */
  public static final RotationGame LANES = new RotationGame("lanes", 2, 2, Form.MATES);

  /** One against one, one lane on a court: where the balls of two lanes would collide. */
  public static final RotationGame LONE_LANES = new RotationGame("lanes", 2, 1, Form.MATES);

  /** The largest group that can share a court. */
  public static final int LARGEST_GROUP = 8;

  /** What the players of a group are to each other. */
  public enum Form {
    /** The first two are partners, the last two their opponents. */
    PAIRS,
    /** All are mates of one lane or one group. */
    MATES
  }

  /** Checks the ranges. */
  public RotationGame {
    if (size < 2 || size > LARGEST_GROUP || perCourt < 1 || perCourt > 2) {
      throw new IllegalArgumentException(
          "A group (%d players, %d on a court) must have 2 to %d players, 1 or 2 groups a court."
                  .formatted(size, perCourt, LARGEST_GROUP)
              + " Maybe groups of 4.");
    }
    if (form == Form.PAIRS && size != 4) {
      throw new IllegalArgumentException(
          "Partners and opponents (%d players) must be four. Maybe groups of mates were meant."
              .formatted(size));
    }
  }

  /**
   * Groups of any size in which all are mates, one group on a court.
   *
   * @param size players in a group, 2 to {@value #LARGEST_GROUP}
   * @return the game
   */
  public static RotationGame groupsOf(int size) {
    return new RotationGame("groups of " + size, size, 1, Form.MATES);
  }

  /**
   * How many groups can play at once.
   *
   * @param present players that are there
   * @param courts courts at hand
   * @return the number of groups
   */
  public int groups(int present, int courts) {
    return Math.min(courts * perCourt, present / size);
  }

  /**
   * How many courts a number of players can fill at most.
   *
   * @param present players that are there
   * @return the number of courts
   */
  public int courtsFilledBy(int present) {
    int groups = present / size;
    return (groups + perCourt - 1) / perCourt;
  }

  /** What two seats of a group are to each other. */
  Relation relation(int seat, int other) {
    return form == Form.MATES || seat / 2 == other / 2 ? Relation.CLOSE : Relation.ACROSS;
  }

  /** What two players of a group are to each other. */
  enum Relation {
    /** Partners, or mates of a lane or group. */
    CLOSE,
    /** Opponents in doubles. */
    ACROSS
  }
}
