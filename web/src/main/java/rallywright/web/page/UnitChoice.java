package rallywright.web.page;

import org.springframework.stereotype.Component;

/** The units that the club's pages are written in. */
@Component
public final class UnitChoice {

  private volatile Units chosen = Units.FEET;

  /** The units now. */
  public Units current() {
    return chosen;
  }

  /** Takes other units from now on. */
  public void choose(Units units) {
    chosen = units;
  }
}
