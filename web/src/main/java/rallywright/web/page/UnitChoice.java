package rallywright.web.page;

import org.springframework.stereotype.Component;
import rallywright.store.ClubStore;

/** The units that the club's pages are written in, kept in the club's settings. */
@Component
public final class UnitChoice {

  private static final String SETTING = "units";

  private final ClubStore store;

  UnitChoice(ClubStore store) {
    this.store = store;
  }

  /** The units now. */
  public Units current() {
    String kept = store.settings().get(SETTING).orElse(Units.FEET.name());
    return kept.equals(Units.METRIC.name()) ? Units.METRIC : Units.FEET;
  }

  /** Takes other units from now on. */
  public void choose(Units units) {
    store.settings().put(SETTING, units.name());
  }
}
