package rallywright.engine.plan;

import java.util.EnumSet;
import java.util.Set;
import rallywright.engine.drill.SkillGroup;
import rallywright.engine.pace.SessionTime;
import rallywright.engine.plan.SearchModel.Option;

/**
 * What a choice must keep to and what it should, each as a price in the unit of the benefit. What
 * must hold costs more than any practice can bring; prices are assumptions of this project.
 */
final class SearchRules {

  private static final double FORBIDDEN = 50;
  private static final double REQUIRED = 20;
  private static final double SMALL = 0.02;
  private static final double FULL_GAME_SHARE = 0.3;
  private static final int LONG_BLOCK_STINTS = 3;

  private final SearchModel model;
  private final double reserve;
  private final Set<SkillGroup> reachableGroups = EnumSet.noneOf(SkillGroup.class);
  private final boolean fullGameFits;

  SearchRules(SearchModel model) {
    this.model = model;
    SessionWish wish = model.context().wish();
    reserve = SessionTime.reserve(wish.confidence());
    boolean fits = false;
    for (Option option : model.options()) {
      reachableGroups.addAll(option.groups());
      double share = option.blockSeconds(1) / 60 / wish.minutes();
      fits |= option.isFullGame() && share <= FULL_GAME_SHARE;
    }
    fullGameFits = fits;
  }

  double reserve() {
    return reserve;
  }

  /** Benefit less all prices: what the search makes as large as it can. */
  double score(Walk walk) {
    return walk.benefit()
        - fitsTheBookedTime(walk)
        - hardMinutesAreLimited(walk)
        - everySkillGroupIsTouched(walk)
        - endsWithAFullGame(walk)
        - bothDirectionsAreUsed(walk)
        - noDrillGoesOnAndOn(walk)
        - equipmentStays(walk);
  }

  /** "We are off the court in time, nine times in ten." */
  double fitsTheBookedTime(Walk walk) {
    double over = walk.reservedMinutes(reserve) - model.context().wish().minutes();
    return over > 0 ? FORBIDDEN + over : 0;
  }

  /** "After so many hard minutes comes an easier block or a rest." */
  double hardMinutesAreLimited(Walk walk) {
    return walk.overHardMinutes() > 0 ? REQUIRED + walk.overHardMinutes() : 0;
  }

  /** "Touch everything once: soft game, hands, power." Only where the coach asks for it. */
  double everySkillGroupIsTouched(Walk walk) {
    if (model.context().wish().coverage() == Coverage.NEEDS) {
      return 0;
    }
    return REQUIRED * (reachableGroups.size() - walk.groups().size());
  }

  /** "We end with half-court games with serve and return", where one takes under a third. */
  double endsWithAFullGame(Walk walk) {
    return fullGameFits && walk.fullGames() == 0 ? REQUIRED : 0;
  }

  /** "Change direction": a drill that is played both ways is played both ways alike. */
  double bothDirectionsAreUsed(Walk walk) {
    double price = 0;
    for (int i = 0; i + 1 < walk.stints().length; i++) {
      if (model.options().get(i).drill() == model.options().get(i + 1).drill()) {
        int apart = Math.abs(walk.stints()[i] - walk.stints()[i + 1]);
        price += SMALL * Math.max(0, apart - 1);
      }
    }
    return price;
  }

  /** "Nobody wants the fifth round of the same thing." */
  double noDrillGoesOnAndOn(Walk walk) {
    double price = 0;
    for (int stints : walk.stints()) {
      price += SMALL * Math.max(0, stints - LONG_BLOCK_STINTS);
    }
    return price;
  }

  /** "Do not carry cones about more often than needed." */
  double equipmentStays(Walk walk) {
    return SMALL / 4 * walk.equipmentChanges();
  }
}
