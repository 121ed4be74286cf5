package rallywright.engine.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rallywright.engine.drill.DrillKey;

/**
 * What a coach may ask for beyond time and courts. Nothing asked for is the usual case.
 *
 * @param slots drills and groups of skills that must be in the plan
 * @param forbidden drills that must not be in the plan
 * @param equipment what is at hand; empty where everything is
 * @param yardsticks which closed tests stand in the plan
 * @param spare what those do for whom there is no place in a pair
 * @param ends how blocks of games end
 * @param rests how often everybody rests; empty for water half-way through long sessions
 */
public record Requests(
    List<Slot> slots,
    Set<DrillKey> forbidden,
    Optional<Set<String>> equipment,
    YardstickWish yardsticks,
    Spare spare,
    Ends ends,
    Optional<Rests> rests) {

  /** Nothing beyond the usual. */
  public static final Requests NONE =
      new Requests(
          List.of(),
          Set.of(),
          Optional.empty(),
          YardstickWish.NONE,
          Spare.SIT_OUT,
          Ends.USUAL,
          Optional.empty());

  /** What those do for whom there is no place in a pair. */
  public enum Spare {
    /** They sit out a round, in turn. */
    SIT_OUT,
    /** Three share a lane and come in game by game. */
    THREE_ON_A_LANE
  }

  /** How blocks of games end. */
  public enum Ends {
    /** By a horn from three lanes up, else when the last lane is done. */
    USUAL,
    /** By a horn always. */
    BY_CLOCK,
    /** When the last lane is done, always. */
    LAST_LANE
  }

  /**
   * Rests for everybody, for example in the heat.
   *
   * @param everyMinutes a rest comes after about so many minutes, 10 to 120
   * @param minutes how long it is, 1 to 20
   */
  public record Rests(double everyMinutes, double minutes) {

    /** Checks the ranges; the checks are written so that NaN fails them. */
    public Rests {
      if (!(everyMinutes >= 10 && everyMinutes <= 120)) {
        throw new IllegalArgumentException(
            "A rest every %s minutes: it must be 10 to 120. Maybe 20.".formatted(everyMinutes));
      }
      if (!(minutes >= 1 && minutes <= 20)) {
        throw new IllegalArgumentException(
            "A rest of %s minutes: it must be 1 to 20. Maybe 5.".formatted(minutes));
      }
    }
  }

  /** Copies the collections in their order. */
  public Requests {
    slots = List.copyOf(slots);
    forbidden = Collections.unmodifiableSet(new LinkedHashSet<>(forbidden));
    equipment = equipment.map(Set::copyOf);
  }

  /**
   * These requests with one slot more.
   *
   * @param slot what must be in the plan
   * @return the changed requests
   */
  public Requests with(Slot slot) {
    List<Slot> more = new ArrayList<>(slots);
    more.add(slot);
    return new Requests(more, forbidden, equipment, yardsticks, spare, ends, rests);
  }

  /**
   * These requests without a drill.
   *
   * @param drill must not be in the plan
   * @return the changed requests
   */
  public Requests without(DrillKey drill) {
    Set<DrillKey> more = new LinkedHashSet<>(forbidden);
    more.add(drill);
    return new Requests(slots, more, equipment, yardsticks, spare, ends, rests);
  }

  /**
   * These requests with only some equipment at hand.
   *
   * @param atHand as the drills name it
   * @return the changed requests
   */
  public Requests withEquipment(Set<String> atHand) {
    return new Requests(slots, forbidden, Optional.of(atHand), yardsticks, spare, ends, rests);
  }

  /**
   * These requests with closed tests.
   *
   * @param other which ones
   * @return the changed requests
   */
  public Requests withYardsticks(YardstickWish other) {
    return new Requests(slots, forbidden, equipment, other, spare, ends, rests);
  }

  /**
   * These requests with another use of those who have no place in a pair.
   *
   * @param other what they do
   * @return the changed requests
   */
  public Requests withSpare(Spare other) {
    return new Requests(slots, forbidden, equipment, yardsticks, other, ends, rests);
  }

  /**
   * These requests with another end of blocks.
   *
   * @param other how blocks of games end
   * @return the changed requests
   */
  public Requests withEnds(Ends other) {
    return new Requests(slots, forbidden, equipment, yardsticks, spare, other, rests);
  }

  /**
   * These requests with rests for everybody.
   *
   * @param other how often and how long
   * @return the changed requests
   */
  public Requests withRests(Rests other) {
    return new Requests(slots, forbidden, equipment, yardsticks, spare, ends, Optional.of(other));
  }
}
