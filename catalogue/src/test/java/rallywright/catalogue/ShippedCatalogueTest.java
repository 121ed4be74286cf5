package rallywright.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rallywright.engine.court.Court;
import rallywright.engine.court.CourtPoint;
import rallywright.engine.court.Direction;
import rallywright.engine.court.Lane;
import rallywright.engine.court.Polygon;
import rallywright.engine.drill.Demand;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.DrillKind;
import rallywright.engine.drill.DrillSide;
import rallywright.engine.drill.Layout;
import rallywright.engine.drill.Progression;
import rallywright.engine.drill.Role;
import rallywright.engine.drill.Skill;
import rallywright.engine.drill.Yardstick;
import rallywright.engine.score.Ending.Stroke;
import rallywright.engine.score.Scoring;
import rallywright.engine.score.Side;

class ShippedCatalogueTest {

  private static final Path FOLDER = Path.of("src/main/resources/rallywright/drills");

  static List<Drill> drills() {
    return Catalogue.shipped().drills();
  }

  static List<Drill> drillsOnALane() {
    return drills().stream().filter(drill -> drill.layout().isPresent()).toList();
  }

  static List<Yardstick> yardsticks() {
    return Catalogue.shipped().yardsticks();
  }

  @Test
  void catalogue_holdsEveryFileOfItsFolder() throws IOException {
    try (Stream<Path> files = Files.list(FOLDER)) {
      long inFolder = files.filter(file -> file.toString().endsWith(".yaml")).count();
      assertThat(drills().size() + yardsticks().size()).isEqualTo((int) inFolder);
    }
  }

  @Test
  void catalogue_hasSixteenGamesThreeWarmUpsAndFourYardsticks() {
    assertThat(drills()).filteredOn(drill -> drill.scored().isPresent()).hasSize(16);
    assertThat(drills())
        .extracting(Drill::kind)
        .contains(DrillKind.GENERAL_WARM_UP, DrillKind.PADDLE_WARM_UP, DrillKind.VOLLEY_WARM_UP);
    assertThat(yardsticks()).hasSize(4).extracting(Yardstick::skill).doesNotHaveDuplicates();
  }

  @Test
  void catalogue_startsWithTheGeneralWarmUp_andEndsWithFullPoints() {
    assertThat(drills().get(0).kind()).isEqualTo(DrillKind.GENERAL_WARM_UP);
    assertThat(drills()).extracting(Drill::progression).isSorted();
    assertThat(drills().get(drills().size() - 1).progression()).isEqualTo(Progression.FULL_POINT);
  }

  @Test
  void everySkill_hasItsMainWeightInSomeGame() {
    Set<Skill> covered = EnumSet.noneOf(Skill.class);
    for (Drill drill : drills()) {
      drill.scored().ifPresent(game -> covered.addAll(mainSkills(game.layout())));
    }
    assertThat(covered).containsExactly(Skill.values());
  }

  private static Set<Skill> mainSkills(Layout layout) {
    Set<Skill> main = EnumSet.noneOf(Skill.class);
    for (Side side : Side.values()) {
      for (Skill skill : Skill.values()) {
        if (layout.sides().of(side).weights().of(skill) >= 0.25) {
          main.add(skill);
        }
      }
    }
    return main;
  }

  @Test
  void everyDirection_isPlayedStraightAndCross_inEachPlaceOfTheSession() {
    for (Progression place : EnumSet.complementOf(EnumSet.of(Progression.WARM_UP))) {
      assertThat(drills())
          .filteredOn(drill -> drill.progression() == place)
          .flatExtracting(Drill::directions)
          .contains(Direction.values());
    }
  }

  @ParameterizedTest
  @MethodSource("drillsOnALane")
  void positions_ofEveryLane_lieOnTheSurface_eachAtItsOwnEnd(Drill drill) {
    Layout layout = drill.layout().orElseThrow();
    double halfWidth = Court.SURFACE_WIDTH.metres() / 2;
    double halfLength = Court.SURFACE_LENGTH.metres() / 2;
    for (Direction direction : layout.directions()) {
      for (Lane lane : Lane.of(direction)) {
        for (CourtPoint near : layout.positions(Side.A, lane)) {
          assertThat(Math.abs(near.across().metres())).isLessThanOrEqualTo(halfWidth);
          assertThat(near.along().metres()).isNegative().isGreaterThanOrEqualTo(-halfLength);
        }
        for (CourtPoint far : layout.positions(Side.B, lane)) {
          assertThat(Math.abs(far.across().metres())).isLessThanOrEqualTo(halfWidth);
          assertThat(far.along().metres()).isPositive().isLessThanOrEqualTo(halfLength);
        }
      }
    }
  }

  /** Nobody starts in the kitchen: a volley from there is a fault (rule 2.B.3 for the zone). */
  @ParameterizedTest
  @MethodSource("drillsOnALane")
  void roles_startWhereTheirNameSays(Drill drill) {
    for (Side side : Side.values()) {
      DrillSide each = drill.layout().orElseThrow().sides().of(side);
      double feet = each.stands().get(0).straight().fromNet().feet();
      assertThat(feet).isGreaterThan(7);
      if (each.role() == Role.UP) {
        assertThat(feet).isLessThan(9);
      } else if (each.role() == Role.MID) {
        assertThat(feet).isBetween(10.0, 17.0);
      } else if (each.role() != Role.EVEN) {
        assertThat(feet).isGreaterThanOrEqualTo(22);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("drillsOnALane")
  void bounds_ofEveryLane_lieInsideTheLines(Drill drill) {
    Layout layout = drill.layout().orElseThrow();
    for (Direction direction : layout.directions()) {
      for (Lane lane : Lane.of(direction)) {
        for (Side side : Side.values()) {
          Polygon area = layout.inBounds(side, lane);
          double sign = side == Side.A ? -1 : 1;
          for (CourtPoint corner : area.corners()) {
            assertThat(Math.abs(corner.across().feet())).isLessThanOrEqualTo(10 + 1e-9);
            assertThat(sign * corner.along().feet()).isBetween(-1e-9, 22 + 1e-9);
          }
          assertThat(area.squareMetres()).isGreaterThan(3);
        }
      }
    }
  }

  @ParameterizedTest
  @MethodSource("drillsOnALane")
  void unevenDrills_haveTwoRolesAndASpread_evenOnesNoAdvantage(Drill drill) {
    drill
        .scored()
        .ifPresent(
            game -> {
              boolean sameRole =
                  game.layout().sides().a().role() == game.layout().sides().b().role();
              assertThat(game.layout().isEven()).isEqualTo(sameRole);
              assertThat(game.advantage().sd()).isEqualTo(sameRole ? 0 : 0.4);
              assertThat(game.advantage().source().words()).isNotBlank();
            });
  }

  /** Where the serve changes hands the final score alone tells roles only if the server scores. */
  @ParameterizedTest
  @MethodSource("drillsOnALane")
  void fullGames_countOnlyForTheServer(Drill drill) {
    drill
        .scored()
        .ifPresent(
            game ->
                assertThat(game.format().scoring())
                    .isEqualTo(
                        drill.kind() == DrillKind.FULL_GAME
                            ? Scoring.SIDE_OUT_ONE_SERVER
                            : Scoring.EVERY_RALLY));
  }

  @ParameterizedTest
  @MethodSource("drillsOnALane")
  void weights_fallOnStrokesThatTheRoleMayPlay(Drill drill) {
    for (Side side : Side.values()) {
      DrillSide each = drill.layout().orElseThrow().sides().of(side);
      for (Skill skill : each.weights().skills()) {
        assertThat(each.strokes()).contains(Stroke.valueOf(skill.name()));
      }
    }
  }

  @ParameterizedTest
  @MethodSource("drills")
  void lobsAndSmashes_carryTheirDemandAndTheirCaution(Drill drill) {
    boolean smashes =
        drill.layout().stream()
            .flatMap(layout -> Stream.of(layout.sides().a(), layout.sides().b()))
            .anyMatch(side -> side.strokes().contains(Stroke.OVERHEAD));
    assertThat(drill.demands().contains(Demand.OVERHEADS)).isEqualTo(smashes);
    if (smashes) {
      assertThat(String.join(" ", drill.advice().safety())).contains("never back-pedal");
    }
  }

  @ParameterizedTest
  @MethodSource("drills")
  void everyDrill_isTaughtAndKeptSafe(Drill drill) {
    assertThat(drill.advice().cues()).hasSizeGreaterThanOrEqualTo(2);
    assertThat(drill.advice().mistakes()).isNotEmpty();
    assertThat(drill.advice().safety()).hasSizeGreaterThanOrEqualTo(3);
    assertThat(drill.rule()).hasSizeLessThanOrEqualTo(120);
    assertThat(drill.name()).hasSizeLessThanOrEqualTo(30);
  }

  @Test
  void usualCautions_allStandSomewhere() {
    Set<String> cautions = new TreeSet<>();
    drills().forEach(drill -> cautions.addAll(drill.advice().safety()));
    assertThat(String.join(" ", cautions))
        .contains("“ball”", "replay the rally", "never back-pedal", "eye protection", "at pain");
  }

  @ParameterizedTest
  @MethodSource("yardsticks")
  void yardsticks_haveTwentyBalls_andATargetInsideTheLines(Yardstick yardstick) {
    assertThat(yardstick.balls()).isEqualTo(20);
    assertThat(yardstick.minutesForOne()).isBetween(1.0, 5.0);
    assertThat(yardstick.court().target().corners())
        .allSatisfy(corner -> assertThat(corner.isInsideTheLines()).isTrue());
    assertThat(yardstick.difficulty().source().words()).isNotBlank();
    assertThat(Catalogue.shipped().yardstick(yardstick.key())).contains(yardstick);
  }
}
