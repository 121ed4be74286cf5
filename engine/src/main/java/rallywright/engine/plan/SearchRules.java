package rallywright.engine.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
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
  private static final double LENIENT_MINUTE = 0.25;
  private static final double SMALL = 0.02;
  private static final double NEW_BLOCK = 0.08;
  private static final double EQUIPMENT_CHANGE = SMALL / 4;
  private static final double FULL_GAME_SHARE = 0.3;

  /** More stints than this of one block are dear. Assumption of this project. */
  static final int LONG_BLOCK_STINTS = 3;

  private final SearchModel model;
  private final double reserve;
  private final Set<SkillGroup> reachableGroups = EnumSet.noneOf(SkillGroup.class);
  private final int neededBits;
  private final int[] firstOfPair;
  private final boolean fullGameFits;
  private final int[] pinnedStints;
  private final boolean nothingPinned;
  private final Map<SkillGroup, Integer> slots = new EnumMap<>(SkillGroup.class);

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
    neededBits = SearchModel.bits(neededGroups());
    firstOfPair = firstOfPair();
    pinnedStints = pinned();
    nothingPinned = IntStream.of(pinnedStints).allMatch(stints -> stints == 0);
    for (Slot slot : wish.requests().slots()) {
      if (slot instanceof Slot.AnyOf any) {
        slots.merge(any.group(), 1, Integer::sum);
      }
    }
  }

  /** For each option the first line of its drill, if the drill has two lines; else -1. */
  private int[] firstOfPair() {
    List<Option> options = model.options();
    int[] first = new int[options.size()];
    Arrays.fill(first, -1);
    for (int i = 0; i + 1 < first.length; i++) {
      if (options.get(i).drill() == options.get(i + 1).drill()) {
        first[i] = i;
        first[i + 1] = i;
      }
    }
    return first;
  }

  private int[] pinned() {
    int[] stints = new int[model.options().size()];
    for (Slot slot : model.context().wish().requests().slots()) {
      if (slot instanceof Slot.Pinned pin) {
        for (int i = 0; i < stints.length; i++) {
          Option option = model.options().get(i);
          boolean same = option.line().drill().key().equals(pin.drill());
          boolean line = option.line().line() == pin.line() || option.line().players() > 2;
          if (same && line) {
            stints[i] = Math.min(option.mostStints(), Math.max(stints[i], pin.rounds()));
          }
        }
      }
    }
    return stints;
  }

  double reserve() {
    return reserve;
  }

  boolean needsFullGame() {
    return fullGameFits;
  }

  Set<SkillGroup> neededGroups() {
    return model.context().wish().coverage() == Coverage.NEEDS
        ? EnumSet.noneOf(SkillGroup.class)
        : reachableGroups;
  }

  int[] pinnedStints() {
    return pinnedStints.clone();
  }

  /** Whether a single drill's stints keep to what the coach pinned and to both directions. */
  boolean allows(List<Integer> options, int[] stints) {
    for (int i = 0; i < stints.length; i++) {
      if (stints[i] < pinnedStints[options.get(i)]) {
        return false;
      }
    }
    return stints.length < 2 || apart(options.get(0), stints[0], stints[1]) <= 1;
  }

  /** How far two lines of a drill lie apart beyond what was pinned. */
  private int apart(int option, int one, int other) {
    int pinnedApart = Math.abs(pinnedStints[option] - pinnedStints[option + 1]);
    return Math.max(0, Math.abs(one - other) - pinnedApart);
  }

  /** Benefit less all prices: what the search makes as large as it can. */
  double score(Walk walk) {
    return worth(walk) - fitsTheBookedTime(walk);
  }

  /** As the score, but minutes too many cost only a little: a way through while searching. */
  double lenientScore(Walk walk) {
    double over = walk.reservedMinutes(reserve) - model.context().wish().minutes();
    return worth(walk) - LENIENT_MINUTE * Math.max(0, over);
  }

  /** Benefit less all prices but that of the time. */
  double worth(Walk walk) {
    return walk.benefit()
        - hardMinutesAreLimited(walk)
        - everySkillGroupIsTouched(walk)
        - enoughAreThere(walk)
        - everySlotIsFilled(walk)
        - pinnedIsPlanned(walk)
        - endsWithAFullGame(walk)
        - bothDirectionsAreUsed(walk)
        - smallPrices(walk);
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
    return REQUIRED * Integer.bitCount(neededBits & ~walk.groupBits());
  }

  /** "Every slot for a group of skills has a drill." */
  double everySlotIsFilled(Walk walk) {
    int missing = 0;
    if (slots.isEmpty()) {
      return 0;
    }
    for (SkillGroup group : slots.keySet()) {
      int wanted = slots.getOrDefault(group, 0);
      missing += wanted == 0 ? 0 : Math.max(0, wanted - walk.drillsOf(group));
    }
    return REQUIRED * missing;
  }

  /** "What the coach has pinned is in the plan." */
  double pinnedIsPlanned(Walk walk) {
    int missing = 0;
    if (nothingPinned) {
      return 0;
    }
    for (int i = 0; i < pinnedStints.length; i++) {
      missing += Math.max(0, pinnedStints[i] - walk.stints()[i]);
    }
    return REQUIRED * missing;
  }

  /** "We end with half-court games with serve and return", where one takes under a third. */
  double endsWithAFullGame(Walk walk) {
    return fullGameFits && walk.fullGames() == 0 ? REQUIRED : 0;
  }

  /** "Change direction": a drill that is played both ways is played both ways alike. */
  double bothDirectionsAreUsed(Walk walk) {
    double price = 0;
    int done = -1;
    for (int block = 0; block < walk.blocks(); block++) {
      int first = firstOfPair[walk.used(block)];
      if (first > done) {
        int apart = apart(first, walk.stints()[first], walk.stints()[first + 1]);
        price += REQUIRED * Math.max(0, apart - 1);
        done = first;
      }
    }
    return price;
  }

  /** "We are enough for it when its turn comes", where some come late or leave early. */
  double enoughAreThere(Walk walk) {
    return REQUIRED * walk.tooFew();
  }

  /** "Nobody wants the fifth round of the same thing." */
  double noDrillGoesOnAndOn(Walk walk) {
    return NEW_BLOCK * walk.blocks() + SMALL * walk.laterStints();
  }

  /** A block that goes on and on is dear, and so is one more rule to explain and to print. */
  double longBlock(int stints) {
    return (stints > 0 ? NEW_BLOCK : 0) + SMALL * Math.max(0, stints - LONG_BLOCK_STINTS);
  }

  /** The prices of blocks, of their later rounds and of fetching other things. */
  double smallPrices(Walk walk) {
    return noDrillGoesOnAndOn(walk) + equipmentStays(walk);
  }

  /** "Do not carry cones about more often than needed." */
  double equipmentStays(Walk walk) {
    return EQUIPMENT_CHANGE * walk.equipmentChanges();
  }

  /** What one change of equipment costs. */
  static double equipmentChangePrice() {
    return EQUIPMENT_CHANGE;
  }

  /** The slots and groups that a plan must touch, for the bound. */
  List<SkillGroup> groupsToTouch() {
    List<SkillGroup> groups = new ArrayList<>(neededGroups());
    for (SkillGroup group : SkillGroup.values()) {
      if (slots.containsKey(group) && !groups.contains(group)) {
        groups.add(group);
      }
    }
    return groups;
  }
}
