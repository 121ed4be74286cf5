package rallywright.engine.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rallywright.engine.club.AgeGroup;
import rallywright.engine.club.Hand;
import rallywright.engine.club.Level;
import rallywright.engine.club.Player;
import rallywright.engine.club.PlayerId;
import rallywright.engine.club.Standing;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.Progression;
import rallywright.engine.drill.Skill;
import rallywright.engine.plan.ToyDrills;

class GameStrengthTest {

  private static final PlayerId ANA = new PlayerId("ana");
  private static final PlayerId BO = new PlayerId("bo");
  private static final Drill DROPS =
      ToyDrills.uneven("drops", Skill.DROP, Skill.COUNTER, Progression.BASELINE);
  private static final ClubReading READING =
      ClubReading.of(
          new ClubHistory(
              List.of(player(ANA, 4.0), player(BO, 3.5)),
              List.of(DROPS),
              List.of(),
              List.of(),
              LocalDate.of(2026, 3, 31)));

  private static Player player(PlayerId id, double level) {
    return new Player(
        id,
        id.value(),
        new Level(level),
        Hand.RIGHT,
        Set.of(),
        "",
        AgeGroup.ADULT,
        Standing.ACTIVE);
  }

  /** Before any score half a step of level is 0.45 logits in every skill, so in every mixture. */
  @Test
  void inDrill_withoutScores_isWhatTheLevelSays() {
    assertThat(GameStrength.inDrill(READING, ANA, DROPS) - GameStrength.inDrill(READING, BO, DROPS))
        .isCloseTo(0.45, within(1e-9));
  }

  /** A whole point has several stages, and the better player is ahead in each. */
  @Test
  void inDoubles_ofTheBetterPlayer_isMore_andOfEqualOnesTheSame() {
    PointReading points = READING.points();
    double ana = GameStrength.inDoubles(points, ANA);
    double bo = GameStrength.inDoubles(points, BO);
    assertThat(ana - bo).isBetween(0.2, 3.0);
    assertThat(ana).isCloseTo(-bo, within(0.2));
  }

  @Test
  void inDrill_thatIsNotScored_isRefused() {
    Drill warmUp =
        ToyDrills.all().stream().filter(each -> each.scored().isEmpty()).findFirst().orElseThrow();
    assertThatThrownBy(() -> GameStrength.inDrill(READING, ANA, warmUp))
        .hasMessageContaining("is not scored");
  }
}
