package rallywright.engine.drill;

/** The skills of doubles play that are estimated, in the trade's words. */
public enum Skill {
  /** Putting the ball in play. */
  SERVE("serve", SkillGroup.POWER),
  /** The second shot. */
  RETURN("return", SkillGroup.POWER),
  /** A hard, low ball from the back. */
  DRIVE("drive", SkillGroup.POWER),
  /** A soft ball from the back that lands in the kitchen. */
  DROP("drop", SkillGroup.SOFT_GAME),
  /** Taking the pace off a hard ball from the transition zone. */
  RESET("reset", SkillGroup.SOFT_GAME),
  /** A soft ball from kitchen to kitchen. */
  DINK("dink", SkillGroup.SOFT_GAME),
  /** Speeding the ball up from the line. */
  ATTACK("attack", SkillGroup.HANDS),
  /** Blocking and counter-volleying a speed-up. */
  COUNTER("counter", SkillGroup.HANDS),
  /** Volleys that keep the other side deep. */
  PRESSING_VOLLEY("pressing volley", SkillGroup.HANDS),
  /** A high ball over the players at the line. */
  LOB("lob", SkillGroup.POWER),
  /** Putting a high ball away. */
  OVERHEAD("overhead", SkillGroup.POWER);

  private final String words;
  private final SkillGroup group;

  Skill(String words, SkillGroup group) {
    this.words = words;
    this.group = group;
  }

  /**
   * The skill in the trade's words.
   *
   * @return for example "pressing volley"
   */
  public String words() {
    return words;
  }

  /**
   * The group it belongs to.
   *
   * @return the group
   */
  public SkillGroup group() {
    return group;
  }
}
