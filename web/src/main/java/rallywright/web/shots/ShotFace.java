package rallywright.web.shots;

import rallywright.web.page.Units;

/** How a number of a shot stands on its page, in the club's units. */
public final class ShotFace {

  private final ShotField field;
  private final Units units;
  private final String prefix;

  private ShotFace(ShotField field, Units units, String prefix) {
    this.field = field;
    this.units = units;
    this.prefix = prefix;
  }

  /** The face of a field by its constant's name. */
  public static ShotFace of(String field, Units units, String prefix) {
    return new ShotFace(ShotField.valueOf(field), units, prefix);
  }

  /** The name in the form. */
  public String name() {
    return prefix + field.field();
  }

  /** The name without the prefix of the second shot. */
  public String field() {
    return field.field();
  }

  /** The id of its control. */
  public String id(ShotView shot) {
    return shot.id(field.field());
  }

  /** What stands beside it. */
  public String label() {
    return field.label(units);
  }

  /** Its unit. */
  public String unit() {
    return field.unit(units);
  }

  /** The least that is taken. */
  public String least() {
    return field.least(units);
  }

  /** The most that is taken. */
  public String most() {
    return field.most(units);
  }

  /** What an arrow key adds. */
  public String step() {
    return String.valueOf(field.step(units));
  }
}
