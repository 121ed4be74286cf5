package rallywright.engine.aim;

import java.util.List;
import java.util.Optional;
import rallywright.engine.aim.ShotAnswer.BestShot;
import rallywright.engine.aim.ShotSetting.Area;
import rallywright.engine.aim.ShotSetting.Place;
import rallywright.engine.flight.AimSearch;

/**
 * Where to put cones and tape for a drill at a player's level.
 *
 * <p>The cones bound the target that counts. A smaller box of tape lies around the best aim: so
 * large that half of the balls that count land in it as well; a smaller aim inside the drill's own,
 * made for the player's scatter. That it should be half is an assumption of this project.
 *
 * @param answer the shot and its best aim
 * @param cross where the tape cross of the aim lies
 * @param tape the box of tape around it
 * @param inTape how often a ball of this player counts and lands in the tape
 */
public record TargetCard(ShotAnswer answer, Place cross, Area tape, double inTape) {

  private static final double HALF = 0.5;
  private static final int HALVINGS = 9;

  /**
   * The card of a shot.
   *
   * @param answer the shot with its best aim
   * @return the card, or empty where nothing succeeds
   */
  public static Optional<TargetCard> of(ShotAnswer answer) {
    return answer.best().map(best -> around(answer, best));
  }

  private static TargetCard around(ShotAnswer answer, BestShot best) {
    double wanted = HALF * best.aim().chance();
    double small = 0.05;
    double large = 1.5;
    for (int halving = 0; halving < HALVINGS; halving++) {
      double middle = (small + large) / 2;
      if (chance(answer.setting(), box(answer.setting(), best, middle), best) < wanted) {
        small = middle;
      } else {
        large = middle;
      }
    }
    Area tape = box(answer.setting(), best, large);
    return new TargetCard(answer, best.landing(), tape, chance(answer.setting(), tape, best));
  }

  /** A box around the landing, a share as large as the spread of landings, inside the target. */
  private static Area box(ShotSetting setting, BestShot best, double share) {
    Area target = setting.target();
    Place at = best.landing();
    double left = Math.max(target.left(), at.across() - share * best.scatter().halfAcross());
    double right = Math.min(target.right(), at.across() + share * best.scatter().halfAcross());
    double near = Math.max(target.near(), at.along() - share * best.scatter().halfAlong());
    double far = Math.min(target.far(), at.along() + share * best.scatter().halfAlong());
    return new Area(
        new Place((left + right) / 2, (near + far) / 2),
        Math.max(0.01, right - left),
        Math.max(0.01, far - near));
  }

  private static double chance(ShotSetting setting, Area area, BestShot best) {
    return AimSearch.of(setting.asShot(setting.day().conditions(), area), setting.scatter())
        .chanceOf(best.aim().aim());
  }

  /**
   * The four cones: corners of the target, near left first, against the clock.
   *
   * @return places on the court
   */
  public List<Place> cones() {
    return corners(answer.setting().target());
  }

  /**
   * Corners of an area, near left first, against the clock as the reader sees it.
   *
   * @param area a rectangle
   * @return four places
   */
  public static List<Place> corners(Area area) {
    return List.of(
        new Place(area.left(), area.near()),
        new Place(area.right(), area.near()),
        new Place(area.right(), area.far()),
        new Place(area.left(), area.far()));
  }
}
