package rallywright.engine.reading;

import java.util.List;
import java.util.Map;
import rallywright.engine.club.PlayerId;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.DrillForm;
import rallywright.engine.drill.DrillSide;
import rallywright.engine.drill.Serving;
import rallywright.engine.drill.Skill;
import rallywright.engine.drill.SkillWeights;
import rallywright.engine.plan.Seat;
import rallywright.engine.score.Score;
import rallywright.engine.score.Side;
import rallywright.engine.skill.Contest;
import rallywright.engine.skill.Sides;
import rallywright.engine.skill.SkillGroups;
import rallywright.engine.skill.Weights;

/**
 * A drill game as the skill model sees it: the first role of the drill is the model's side A.
 *
 * @param contest what is contested
 * @param sides who plays, by number
 * @param turn whether the model's sides are those of the sheet or the other way round
 */
record Fixture(Contest contest, Sides sides, Turn turn) {

  /** How the sides of the sheet lie to those of the model. */
  enum Turn {
    /** Side A of the sheet has the drill's first role. */
    AS_WRITTEN,
    /** Side B of the sheet has the drill's first role. */
    TURNED
  }

  /**
   * The game of two seats.
   *
   * @param numbers the number of each player in the model
   * @param shared numbers of the shared effects of the drill and its direction
   */
  static Fixture of(
      Drill drill, Seat a, Seat b, Map<PlayerId, Integer> numbers, List<Integer> shared) {
    DrillForm.Scored game = drill.scored().orElseThrow();
    DrillSide first = game.layout().sides().a();
    boolean byServe = game.serving() != Serving.FEED;
    Contest contest =
        new Contest(
            weights(first.weights()),
            weights(game.layout().sides().b().weights()),
            byServe ? Contest.Roles.BY_SERVE : Contest.Roles.BY_SIDE,
            shared);
    boolean turned = !byServe && !game.layout().isEven() && a.role() != first.role();
    List<Integer> playersA = a.players().stream().map(each -> numberOf(numbers, each)).toList();
    List<Integer> playersB = b.players().stream().map(each -> numberOf(numbers, each)).toList();
    return turned
        ? new Fixture(contest, new Sides(playersB, playersA), Turn.TURNED)
        : new Fixture(contest, new Sides(playersA, playersB), Turn.AS_WRITTEN);
  }

  private static int numberOf(Map<PlayerId, Integer> numbers, PlayerId player) {
    Integer number = numbers.get(player);
    if (number == null) {
      throw new IllegalArgumentException("Nothing is known of the player " + player + ".");
    }
    return number;
  }

  private static Weights weights(SkillWeights shares) {
    double[] values = new double[Skill.values().length];
    for (Skill skill : shares.skills()) {
      values[SkillGroups.numberOf(skill)] = shares.of(skill);
    }
    return Weights.of(values);
  }

  /** A score of the sheet as the model sees it, or the other way round. */
  Score turned(Score score) {
    return turn == Turn.TURNED ? score.swapped() : score;
  }

  /** A side of the sheet as the model sees it, or the other way round. */
  Side turned(Side side) {
    return turn == Turn.TURNED ? side.opponent() : side;
  }
}
