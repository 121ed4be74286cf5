package rallywright.engine.simulation;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.random.RandomGenerator;
import rallywright.engine.club.PlayerId;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.DrillForm;
import rallywright.engine.drill.DrillKey;
import rallywright.engine.drill.DrillSide;
import rallywright.engine.drill.Serving;
import rallywright.engine.drill.Yardstick;
import rallywright.engine.plan.PlannedGame;
import rallywright.engine.plan.Seat;
import rallywright.engine.score.Side;

/**
 * The truth behind an invented club's scores: skills of players, and what each drill favours.
 *
 * @param skills the players' true skills this week
 * @param effects the true advantage of each drill's first role and the true difficulty of each
 *     yardstick, in log odds; a drill missing here favours nobody
 */
public record ClubTruth(TrueSkills skills, Map<DrillKey, Double> effects) {

  /** Keeps a copy. */
  public ClubTruth {
    effects = Map.copyOf(effects);
  }

  /**
   * Draws the drills' true advantages from the catalogue's spreads.
   *
   * @param skills the players' true skills
   * @param drills the drills that may be played
   * @param yardsticks the yardsticks that may be counted
   * @param random the seeded source of chance
   * @return the truth of the first week
   */
  public static ClubTruth drawn(
      TrueSkills skills, List<Drill> drills, List<Yardstick> yardsticks, RandomGenerator random) {
    Map<DrillKey, Double> effects = new HashMap<>();
    for (Drill drill : drills) {
      drill
          .scored()
          .map(DrillForm.Scored::advantage)
          .ifPresent(
              each -> effects.put(drill.key(), each.logit() + each.sd() * random.nextGaussian()));
    }
    for (Yardstick each : yardsticks) {
      double spread = each.difficulty().sd() * random.nextGaussian();
      effects.put(each.key(), each.difficulty().logit() + spread);
    }
    return new ClubTruth(skills, effects);
  }

  /**
   * The same drills with other skills.
   *
   * @param other the skills of another week
   * @return the truth of that week
   */
  public ClubTruth withSkills(TrueSkills other) {
    return new ClubTruth(other, effects);
  }

  /**
   * The true chance that side A wins the next rally; the model's logistic contest.
   *
   * @param drill a scored drill
   * @param game who plays in which role
   * @param server the side that serves; without meaning where the drill starts with a feed
   * @return from 0 to 1
   */
  public double chanceOfA(Drill drill, PlannedGame game, Side server) {
    DrillForm.Scored scored = drill.scored().orElseThrow();
    DrillSide first = scored.layout().sides().a();
    boolean byServe = scored.serving() != Serving.FEED;
    boolean firstIsA =
        byServe ? server == Side.A : scored.layout().isEven() || game.a().role() == first.role();
    Seat firsts = firstIsA ? game.a() : game.b();
    Seat seconds = firstIsA ? game.b() : game.a();
    double edge =
        effects.getOrDefault(drill.key(), 0.0)
            + skills.strength(firsts.players(), first.weights())
            - skills.strength(seconds.players(), scored.layout().sides().b().weights());
    return logistic(firstIsA ? edge : -edge);
  }

  /**
   * The true chance of a hit.
   *
   * @param player who hits
   * @param yardstick what is counted
   * @return from 0 to 1
   */
  public double chanceOfHit(PlayerId player, Yardstick yardstick) {
    return logistic(
        skills.of(player, yardstick.skill()) - effects.getOrDefault(yardstick.key(), 0.0));
  }

  private static double logistic(double logits) {
    return 1 / (1 + Math.exp(-logits));
  }
}
