package rallywright.engine.skill;

/**
 * A closed test of one skill: balls that succeeded, of a fixed number. P(success) = 1/(1 + e^−(θ −
 * difficulty)).
 *
 * @param week the week, from 0
 * @param test whose skill, and what makes it hard
 * @param hits balls that succeeded
 * @param balls balls tried, 0 or more
 */
public record YardstickResult(int week, Test test, int hits, int balls) implements Evidence {
  /**
   * Who was tested in what.
   *
   * @param player number of the player
   * @param skill number of the skill
   * @param difficulty number of the shared effect that is the difficulty
   */
  public record Test(int player, int skill, int difficulty) {}

  /** Checks the ranges. */
  public YardstickResult {
    if (!(hits >= 0 && hits <= balls)) {
      throw new IllegalArgumentException(
          "The hits ("
              + hits
              + ") must lie from 0 to the balls ("
              + balls
              + "). Maybe the two were swapped.");
    }
  }

  SkillSum predictor() {
    return SkillSum.builder()
        .plusSkill(1, new SkillSum.Key(test.player(), test.skill(), week))
        .plusEffect(-1, test.difficulty())
        .build();
  }
}
