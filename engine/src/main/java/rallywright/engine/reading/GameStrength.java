package rallywright.engine.reading;

import rallywright.engine.club.PlayerId;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.DrillForm;
import rallywright.engine.drill.Skill;
import rallywright.engine.drill.SkillWeights;
import rallywright.engine.point.SkillWorths.Play;

/**
 * How strong a player is in one kind of game, in logits of a rally: what a rotation makes even
 * matches from. Only differences between players mean something.
 *
 * <p>Limits: means of estimates, so a player of whom little is known counts as what the level says.
 */
public final class GameStrength {

  private static final double HALF = 0.5;

  private GameStrength() {}

  /**
   * In doubles with serve and return: the logit of the chance to win a rally against an average
   * player of the club, the mean of serving and receiving.
   *
   * @param points what the club's points say
   * @param player a player of the history
   * @return logits
   */
  public static double inDoubles(PointReading points, PlayerId player) {
    RallyOutlook rallies = points.rallies(player, Play.DOUBLES);
    return HALF * (logit(rallies.serving().mean()) + logit(rallies.receiving().mean()));
  }

  private static double logit(double chance) {
    return Math.log(chance / (1 - chance));
  }

  /**
   * In a scored drill: the skills by the weights of the drill, the mean of both roles, since both
   * are played.
   *
   * @param reading what the club's scores say
   * @param player a player of the history
   * @param drill a scored drill
   * @return logits
   * @throws IllegalArgumentException if the drill is not scored
   */
  public static double inDrill(ClubReading reading, PlayerId player, Drill drill) {
    DrillForm.Scored scored =
        drill
            .scored()
            .orElseThrow(
                () ->
                    new IllegalArgumentException(
                        "The drill %s is not scored, so nobody is strong in it. Maybe another."
                            .formatted(drill.name())));
    SkillWeights a = scored.layout().sides().a().weights();
    SkillWeights b = scored.layout().sides().b().weights();
    double sum = 0;
    for (Skill skill : Skill.values()) {
      double weight = HALF * (a.of(skill) + b.of(skill));
      if (weight != 0) {
        sum += weight * reading.skill(player, skill).now().mean();
      }
    }
    return sum;
  }
}
