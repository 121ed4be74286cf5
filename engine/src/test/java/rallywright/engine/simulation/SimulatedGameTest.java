package rallywright.engine.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import rallywright.engine.club.PlayerId;
import rallywright.engine.court.CourtLane;
import rallywright.engine.court.Lane;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.Intensity;
import rallywright.engine.drill.Progression;
import rallywright.engine.drill.Role;
import rallywright.engine.drill.Skill;
import rallywright.engine.plan.GameId;
import rallywright.engine.plan.HeadStart;
import rallywright.engine.plan.PlannedGame;
import rallywright.engine.plan.Seat;
import rallywright.engine.plan.ToyDrills;
import rallywright.engine.score.GameFormat;
import rallywright.engine.score.Rally;
import rallywright.engine.score.Side;

class SimulatedGameTest {

  private static final PlayerId ANA = new PlayerId("ana");
  private static final PlayerId BO = new PlayerId("bo");
  private static final int GAMES = 2000;
  private static final Drill DINKS =
      ToyDrills.even("dinks", Skill.DINK, Progression.LINE, Intensity.EASY);
  private static final Drill DROPS =
      ToyDrills.uneven("drops", Skill.DROP, Skill.COUNTER, Progression.BASELINE);

  @Test
  void firstRallyOfAnEvenDrill_isWonAsOftenAsTheModelSays() {
    // The logistic contest of the model: 1 / (1 + e^-0.6) for an edge of 0.6.
    assertShareOfFirstRallies(DINKS, Role.EVEN, Role.EVEN, 1 / (1 + Math.exp(-0.6)));
  }

  @Test
  void firstRallyWithRolesTurned_countsTheAdvantageForTheOtherSide() {
    // Ana counters at +0.4 as the second role, Bo drops at 0.1 with the advantage of -0.5.
    assertShareOfFirstRallies(DROPS, Role.UP, Role.BACK, 1 / (1 + Math.exp(-(0.4 - 0.1 + 0.5))));
  }

  private static void assertShareOfFirstRallies(Drill drill, Role a, Role b, double chance) {
    ClubTruth truth = truth(drill);
    SplittableRandom random = new SplittableRandom(5);
    int won = 0;
    for (int i = 0; i < GAMES; i++) {
      List<Rally> rallies =
          SimulatedGame.play(truth, drill, game(a, b), GameFormat.DRILL_GAME, random).rallies();
      won += rallies.get(0).winner() == Side.A ? 1 : 0;
    }
    double standardError = Math.sqrt(chance * (1 - chance) / GAMES);
    assertThat(won / (double) GAMES).isCloseTo(chance, within(4 * standardError));
  }

  private static ClubTruth truth(Drill drill) {
    Map<Skill, Double> ana = new EnumMap<>(Map.of(Skill.DINK, 0.5, Skill.COUNTER, 0.4));
    Map<Skill, Double> bo = new EnumMap<>(Map.of(Skill.DINK, -0.1, Skill.DROP, 0.1));
    double advantage = drill.equals(DROPS) ? -0.5 : 0;
    return new ClubTruth(new TrueSkills(Map.of(ANA, ana, BO, bo)), Map.of(drill.key(), advantage));
  }

  private static PlannedGame game(Role a, Role b) {
    return new PlannedGame(
        new GameId("g"),
        1,
        new CourtLane(1, Lane.STRAIGHT_RIGHT),
        new Seat(a, List.of(ANA)),
        new Seat(b, List.of(BO)),
        HeadStart.NONE);
  }
}
