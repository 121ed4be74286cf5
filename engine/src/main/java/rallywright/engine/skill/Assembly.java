package rallywright.engine.skill;

import java.util.Arrays;
import java.util.List;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;

/**
 * The whole system: groups, the border that they share, and evidence that spans groups. Some groups
 * may rest: they follow the border by their {@link Summary}. Groups are worked on side by side;
 * what comes out does not depend on the order.
 */
final class Assembly {
  private final List<Part> parts;
  private final Border border;
  private final List<CrossTerm> cross;
  private final Summary[] resting;

  /**
   * A system.
   *
   * @param resting for each group its summary where it rests, else null
   */
  Assembly(List<Part> parts, Border border, List<CrossTerm> cross, Summary[] resting) {
    this.parts = List.copyOf(parts);
    this.border = border;
    this.cross = List.copyOf(cross);
    this.resting = resting.clone();
  }

  static Assembly of(List<Part> parts, Border border, List<CrossTerm> cross) {
    return new Assembly(parts, border, cross, new Summary[parts.size()]);
  }

  /** The same system with other groups at rest. */
  Assembly withResting(Summary[] other) {
    return new Assembly(parts, border, cross, other);
  }

  int parts() {
    return parts.size();
  }

  Part part(int part) {
    return parts.get(part);
  }

  Border border() {
    return border;
  }

  List<CrossTerm> cross() {
    return cross;
  }

  boolean rests(int part) {
    return resting[part] != null;
  }

  Summary resting(int part) {
    return resting[part];
  }

  /** Whether factoring costs less than a pass over the evidence. */
  boolean isCheapToFactor() {
    return parts.stream().allMatch(Part::isCheapToFactor);
  }

  /** Does the work for each group that does not rest. */
  void forEachAwake(IntConsumer work) {
    int[] awake = IntStream.range(0, parts.size()).filter(part -> !rests(part)).toArray();
    if (awake.length == 1) {
      work.accept(awake[0]);
    } else {
      IntStream.of(awake).parallel().forEach(work);
    }
  }

  /** The prior mean. */
  Point start() {
    double[][] own = new double[parts.size()][];
    for (int part = 0; part < own.length; part++) {
      own[part] = Arrays.copyOf(parts.get(part).prior().mean(), parts.get(part).own());
    }
    return new Point(own, border.means());
  }

  /** The log posterior, without the 2π of the prior, around a point. */
  Evaluation at(Point x) {
    Point gradient = Point.zeroFor(this, x);
    Curves[] curves = new Curves[parts.size()];
    double[][] slopes = new double[parts.size()][];
    forEachAwake(
        part -> {
          double[] local = x.local(part);
          slopes[part] = new double[local.length];
          curves[part] = parts.get(part).at(local, slopes[part]);
        });
    double sum = border.logDensity(x.border(), gradient.border());
    for (int part = 0; part < curves.length; part++) {
      if (rests(part)) {
        sum += resting[part].at(x.border(), gradient.border());
      } else {
        sum += curves[part].value();
        gradient.addLocal(part, slopes[part]);
      }
    }
    Likelihood.Curve[] guests = new Likelihood.Curve[cross.size()];
    for (int i = 0; i < guests.length; i++) {
      guests[i] = cross.get(i).at(x);
      sum += guests[i].value();
      cross.get(i).addGradient(guests[i], gradient);
    }
    return new Evaluation(x, sum, gradient, curves, guests);
  }
}
