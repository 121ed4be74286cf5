package rallywright.engine.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import rallywright.engine.plan.DrillChoices.Choice;

/**
 * The best choice of rounds for every drill within a time, where times add up and some drills must
 * be there: exact by dynamic programming over steps of time and what has been touched (textbook
 * multiple-choice knapsack).
 *
 * <p>For the maintainer: costs are rounded down to whole steps of {@value #STEP_SECONDS} seconds,
 * so the answer is never below that of the true costs. What must be touched multiplies the work, so
 * it is asked for only where the best filling without it does not touch it by itself: a filling
 * that is best under fewer conditions and keeps to all of them is best under all.
 */
final class Knapsack {

  private static final double STEP_SECONDS = 5;

  private final List<DrillChoices> drills;
  private final int[] touches;
  private final int needed;

  /**
   * A filled knapsack.
   *
   * @param worth what it brings, less the small prices of its blocks; negative infinity where not
   *     even what is pinned fits
   * @param choices one for each drill; empty where nothing fits
   */
  record Filled(double worth, List<Choice> choices) {}

  private record Item(Choice choice, int steps, double value) {}

  /**
   * Drills to choose from.
   *
   * @param drills their choices
   * @param touches what each drill touches, as bits
   * @param needed what must be touched, as bits
   */
  Knapsack(List<DrillChoices> drills, int[] touches, int needed) {
    this.drills = drills;
    this.touches = touches.clone();
    this.needed = needed;
  }

  Filled best(Relaxation.Plane plane, double seconds) {
    int room = (int) Math.floor(seconds / STEP_SECONDS);
    if (room < 0) {
      return new Filled(0, List.of());
    }
    List<List<Item>> items = new ArrayList<>();
    for (int drill = 0; drill < drills.size(); drill++) {
      items.add(useful(drill, plane, room));
    }
    int asked = 0;
    Filled filled = best(items, room, asked);
    int missing = needed & ~touched(filled);
    while (!filled.choices().isEmpty() && (asked | missing) != asked) {
      asked |= missing;
      filled = best(items, room, asked);
      missing = needed & ~touched(filled);
    }
    return filled;
  }

  private int touched(Filled filled) {
    int touched = 0;
    for (int drill = 0; drill < filled.choices().size(); drill++) {
      touched |= filled.choices().get(drill).isNothing() ? 0 : touches[drill];
    }
    return touched;
  }

  /** The best filling that touches what is asked for. */
  private Filled best(List<List<Item>> items, int room, int asked) {
    double[][] best = new double[asked + 1][0];
    best[0] = new double[room + 1];
    short[][][] chosen = new short[drills.size()][][];
    for (int drill = 0; drill < drills.size(); drill++) {
      chosen[drill] = new short[asked + 1][0];
      best = with(best, items.get(drill), touches[drill] & asked, chosen[drill]);
    }
    return filled(best, items, chosen);
  }

  /**
   * A drill's choices without those that cost as much as another one and bring no more. "Not at
   * all" drives none out: what brings less than its price may still touch what must be touched.
   */
  private List<Item> useful(int drill, Relaxation.Plane plane, int room) {
    List<Item> items = new ArrayList<>();
    for (Choice choice : drills.get(drill).choices()) {
      int steps = (int) Math.floor(plane.cost(drill, choice) / STEP_SECONDS);
      items.add(new Item(choice, steps, choice.value()));
    }
    items.sort(
        Comparator.comparingInt(Item::steps)
            .thenComparing(Comparator.comparingDouble(Item::value).reversed()));
    List<Item> useful = new ArrayList<>();
    double most = Double.NEGATIVE_INFINITY;
    for (Item item : items) {
      if (item.choice().isNothing()) {
        useful.add(item);
      } else if (item.steps() <= room && item.value() > most) {
        useful.add(item);
        most = item.value();
      }
    }
    return useful;
  }

  /** One drill more; a row that nothing reaches is not there. */
  private static double[][] with(double[][] best, List<Item> items, int touches, short[][] chosen) {
    double[][] next = new double[best.length][0];
    for (short place = 0; place < items.size(); place++) {
      Item item = items.get(place);
      for (int mask = 0; mask < best.length; mask++) {
        if (best[mask].length > 0) {
          int with = item.choice().isNothing() ? mask : mask | touches;
          if (next[with].length == 0) {
            next[with] = new double[best[mask].length];
            chosen[with] = new short[best[mask].length];
            Arrays.fill(next[with], Double.NEGATIVE_INFINITY);
            Arrays.fill(chosen[with], (short) -1);
          }
          short code = (short) (place * best.length + mask);
          improve(best[mask], item, next[with], chosen[with], code);
        }
      }
    }
    return next;
  }

  private static void improve(double[] from, Item item, double[] to, short[] chosen, short code) {
    int steps = item.steps();
    double value = item.value();
    for (int room = steps; room < to.length; room++) {
      double next = from[room - steps] + value;
      if (next > to[room]) {
        to[room] = next;
        chosen[room] = code;
      }
    }
  }

  private Filled filled(double[][] best, List<List<Item>> items, short[][][] chosen) {
    int room = best[0].length - 1;
    int mask = best.length - 1;
    if (worth(best, mask) == Double.NEGATIVE_INFINITY) {
      for (int less = 0; less < best.length; less++) {
        mask = worth(best, less) > worth(best, mask) ? less : mask;
      }
    }
    double worth = worth(best, mask);
    if (worth == Double.NEGATIVE_INFINITY) {
      return new Filled(0, List.of());
    }
    List<Choice> choices = new ArrayList<>();
    for (int drill = drills.size() - 1; drill >= 0; drill--) {
      int code = chosen[drill][mask][room];
      Item item = items.get(drill).get(code / best.length);
      mask = code % best.length;
      room -= item.steps();
      choices.add(0, item.choice());
    }
    return new Filled(worth, choices);
  }

  private static double worth(double[][] best, int mask) {
    return best[mask].length == 0 ? Double.NEGATIVE_INFINITY : best[mask][best[mask].length - 1];
  }
}
