package rallywright.engine.plan;

import java.util.List;
import rallywright.engine.practice.PointWorth;
import rallywright.engine.practice.SkillWorth;

/**
 * What the planner asks others: what a skill is worth, what a drill brings, how long it takes and
 * what makes a game fair.
 *
 * @param worth what a skill is worth to a player
 * @param gains what an effective minute of a drill brings
 * @param paces how fast rallies follow one another
 * @param fairStarts the points given to weaker sides
 */
public record PlanKnowledge(
    SkillWorth worth, DrillGains gains, DrillPaces paces, FairStarts fairStarts) {

  /**
   * What is assumed before anything was learned: the stages of doubles as assumed, all drills
   * alike, the drills' own times, head starts from the players' standings.
   *
   * @param attendees who will be there
   * @return the first ideas
   */
  public static PlanKnowledge firstIdeas(List<Attendee> attendees) {
    return new PlanKnowledge(
        PointWorth.DOUBLES, DrillGains.ALIKE, DrillPaces.FIRST_IDEAS, StandingStarts.of(attendees));
  }

  /**
   * This knowledge with other fair starts.
   *
   * @param other the points given to weaker sides
   * @return the changed knowledge
   */
  public PlanKnowledge withFairStarts(FairStarts other) {
    return new PlanKnowledge(worth, gains, paces, other);
  }

  /**
   * This knowledge with other paces.
   *
   * @param other how fast rallies follow one another
   * @return the changed knowledge
   */
  public PlanKnowledge withPaces(DrillPaces other) {
    return new PlanKnowledge(worth, gains, other, fairStarts);
  }

  /**
   * This knowledge with another worth of skills.
   *
   * @param other what a skill is worth to a player
   * @return the changed knowledge
   */
  public PlanKnowledge withWorth(SkillWorth other) {
    return new PlanKnowledge(other, gains, paces, fairStarts);
  }

  /**
   * This knowledge with other gains of drills.
   *
   * @param other what an effective minute of a drill brings
   * @return the changed knowledge
   */
  public PlanKnowledge withGains(DrillGains other) {
    return new PlanKnowledge(worth, other, paces, fairStarts);
  }
}
