package rallywright.engine.plan;

/** The rules of a session, by name. Each says the rule as a coach would. */
public enum PlanRule {
  /** The session ends in the booked time with the wished chance. */
  BOOKED_TIME("booked time", "We are off the court in time, nine times in ten."),
  /** Warm-ups come before everything else. */
  WARM_UP_FIRST("warm-up first", "Nobody strikes a hard ball cold."),
  /** Drills stand in the order of their progression. */
  FROM_THE_LINE_BACK("from the line back", "From the line back to the baseline, then together."),
  /** Hard minutes in a row are limited. */
  HARD_MINUTES("hard minutes", "After so many hard minutes comes an easier block or a rest."),
  /** Long sessions have a break. */
  WATER_BREAK("water break", "Long sessions have a water break."),
  /** Rests come as often as asked for. */
  RESTS("rests", "In the heat everybody rests as often as asked for."),
  /** Every skill group is touched. */
  COVERAGE("coverage", "Soft game, hands and power: each is touched once."),
  /** A drill is played along its lines alike. */
  DIRECTIONS("directions", "A drill played straight and cross-court gets both ways alike."),
  /** Both roles of an uneven drill are taken. */
  BOTH_ROLES("both roles", "Both of a pair take both roles of an uneven drill."),
  /** Limits of players are respected. */
  LIMITS("limits", "Nobody is asked to do what they should not do."),
  /** Lanes of one court fit together. */
  LANES_OF_A_COURT("lanes of a court", "A straight and a cross lane never share a court."),
  /** Blocks end as asked for. */
  BLOCK_ENDS("how blocks end", "Blocks end by the horn or with the last lane, as asked for."),
  /** Only equipment at hand is needed. */
  EQUIPMENT("equipment", "We play what we have the things for."),
  /** Pinned drills are in the plan. */
  PINNED("pinned", "What the coach has pinned is in the plan."),
  /** Forbidden drills are not in the plan. */
  FORBIDDEN("forbidden", "What the coach has ruled out is not in the plan."),
  /** Every slot for a group of skills is filled. */
  SLOTS("slots", "Every slot for a group of skills has a drill."),
  /** Tests stand in the plan when they are due. */
  YARDSTICKS("yardsticks", "A test stands in the plan when it is due."),
  /** Everybody plays or sits once a turn. */
  EVERYONE_ONCE("everyone once", "In every turn each of us plays once or sits out."),
  /** Nobody is placed who is not there. */
  PRESENCE("presence", "Nobody is placed before they are there and warm, or after they have left."),
  /** Sit-outs are even. */
  SIT_OUTS("sit-outs", "Everybody sits out as often as the others.");

  private final String words;
  private final String sentence;

  PlanRule(String words, String sentence) {
    this.words = words;
    this.sentence = sentence;
  }

  /**
   * The rule's short name.
   *
   * @return for example "warm-up first"
   */
  public String words() {
    return words;
  }

  /**
   * The rule as a coach would say it.
   *
   * @return one sentence
   */
  public String sentence() {
    return sentence;
  }
}
