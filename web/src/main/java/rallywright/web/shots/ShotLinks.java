package rallywright.web.shots;

import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rallywright.engine.aim.ShotSetting;
import rallywright.engine.aim.ShotSetting.Area;
import rallywright.engine.aim.ShotSetting.Hitter;
import rallywright.engine.aim.ShotSetting.Place;
import rallywright.engine.aim.UsualShot;
import rallywright.engine.court.CourtPoint;
import rallywright.engine.court.Direction;
import rallywright.engine.court.End;
import rallywright.engine.court.Lane;
import rallywright.engine.court.Polygon;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.Skill;
import rallywright.engine.drill.Yardstick;
import rallywright.web.page.Units;

/** From a drill to what its shot allows. */
public final class ShotLinks {

  private static final Map<Skill, UsualShot> STRAIGHT =
      Map.of(
          Skill.DROP, UsualShot.DROP_STRAIGHT,
          Skill.RESET, UsualShot.RESET,
          Skill.DINK, UsualShot.DINK_STRAIGHT,
          Skill.DRIVE, UsualShot.DRIVE,
          Skill.SERVE, UsualShot.SERVE,
          Skill.PRESSING_VOLLEY, UsualShot.DEEP_VOLLEY,
          Skill.LOB, UsualShot.LOB);

  private static final Map<Skill, UsualShot> CROSS =
      Map.of(Skill.DROP, UsualShot.DROP_CROSS, Skill.DINK, UsualShot.DINK_CROSS);

  private ShotLinks() {}

  /** The shot of a drill's foremost skill as part of an address; empty where it has no shot. */
  public static Optional<String> of(Drill drill, Units units) {
    Direction direction =
        drill.directions().isEmpty() ? Direction.STRAIGHT : drill.directions().get(0);
    return drill
        .layout()
        .flatMap(
            layout ->
                layout.sides().a().weights().shares().entrySet().stream()
                    .max(Map.Entry.comparingByValue())
                    .flatMap(most -> shot(most.getKey(), direction)))
        .map(shot -> ShotForm.query(shot.usual(), "", units));
  }

  /** The shot and the target of a yardstick as part of an address. */
  public static Optional<String> of(Yardstick yardstick, Units units) {
    return setting(yardstick).map(setting -> ShotForm.query(setting, "", units));
  }

  /** The shot and the target of a yardstick. */
  static Optional<ShotSetting> setting(Yardstick yardstick) {
    Direction direction = yardstick.court().direction();
    return shot(yardstick.skill(), direction).map(shot -> placed(shot.usual(), yardstick));
  }

  private static Optional<UsualShot> shot(Skill skill, Direction direction) {
    @Nullable UsualShot cross = direction.isCross() ? CROSS.get(skill) : null;
    return Optional.ofNullable(cross == null ? STRAIGHT.get(skill) : cross);
  }

  private static ShotSetting placed(ShotSetting usual, Yardstick yardstick) {
    Lane lane = Lane.of(yardstick.court().direction()).get(0);
    Place player = place(yardstick.court().player().on(lane, End.NEAR));
    Place opponent =
        yardstick
            .court()
            .feeder()
            .map(spot -> place(spot.on(lane, End.FAR)))
            .orElse(usual.opponent());
    return new ShotSetting(
        usual.shot(),
        new Hitter(player, usual.hitter().height(), usual.hitter().spin()),
        around(yardstick.court().target().on(lane, End.FAR)),
        opponent,
        usual.day(),
        usual.player());
  }

  private static Place place(CourtPoint point) {
    return new Place(point.across().metres(), point.along().metres());
  }

  /** The rectangle around an area. */
  private static Area around(Polygon area) {
    double left = area.corners().stream().mapToDouble(c -> c.across().metres()).min().orElse(0);
    double right = area.corners().stream().mapToDouble(c -> c.across().metres()).max().orElse(0);
    double near = area.corners().stream().mapToDouble(c -> c.along().metres()).min().orElse(0);
    double far = area.corners().stream().mapToDouble(c -> c.along().metres()).max().orElse(0);
    return new Area(new Place((left + right) / 2, (near + far) / 2), right - left, far - near);
  }
}
