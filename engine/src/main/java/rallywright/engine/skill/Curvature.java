package rallywright.engine.skill;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Minus the Hessian of the log posterior around a point, factored group by group with the border
 * last. Evidence that spans groups is in the factor cut to each group, the rest of it taken as a
 * normal variable of its own; {@link #product} has it whole.
 */
final class Curvature {
  private final Assembly assembly;
  private BlockCholesky[] factors;
  private Curves[] curves;
  private final Likelihood.Curve[] crossCurves;
  private final Dense schur;

  private Curvature(
      Assembly assembly,
      BlockCholesky[] factors,
      Curves[] curves,
      Likelihood.Curve[] crossCurves,
      Dense schur) {
    this.assembly = assembly;
    this.factors = factors;
    this.curves = curves;
    this.crossCurves = crossCurves;
    this.schur = schur;
  }

  /**
   * Factors around a point; resting groups keep the factors that they have.
   *
   * @param kept factors of resting groups, and of others those that may be taken up
   * @param outside see {@link Outside}
   */
  static Curvature of(Assembly assembly, Evaluation around, BlockCholesky[] kept, Outside outside) {
    return tried(assembly, around, Term.Bend.EXACT, kept, outside)
        .or(() -> tried(assembly, around, Term.Bend.GUARDED, kept, outside))
        .orElseThrow(() -> new IllegalStateException("The prior must have a density."));
  }

  /**
   * Factors anew those groups that moved, in an update.
   *
   * @param moved for each group whether it moved so far that its curvature changed
   * @param earlier of those that moved the factors that may be taken up
   */
  Curvature refreshed(
      Evaluation around, boolean[] moved, BlockCholesky[] earlier, Outside outside) {
    BlockCholesky[] kept = factors.clone();
    Summary[] resting = new Summary[factors.length];
    for (int part = 0; part < factors.length; part++) {
      if (!moved[part]) {
        resting[part] =
            assembly.rests(part)
                ? assembly.resting(part)
                : Summary.ofRemainder(factors[part].remainder());
      } else {
        kept[part] = earlier[part];
      }
    }
    Curvature fresh = of(assembly.withResting(resting), around, kept, outside);
    Curves[] joined = curves.clone();
    for (int part = 0; part < factors.length; part++) {
      joined[part] = moved[part] ? fresh.curves[part] : curves[part];
    }
    return new Curvature(assembly, fresh.factors, joined, fresh.crossCurves, fresh.schur);
  }

  private static Optional<Curvature> tried(
      Assembly assembly, Evaluation around, Term.Bend bend, BlockCholesky[] kept, Outside outside) {
    List<List<Part.Side>> sides = sides(assembly, around.cross(), outside);
    BlockCholesky[] factors = new BlockCholesky[assembly.parts()];
    assembly.forEachAwake(
        part ->
            factors[part] =
                assembly
                    .part(part)
                    .factor(
                        around.curves()[part],
                        sides.get(part),
                        bend,
                        Optional.ofNullable(kept[part]))
                    .orElse(null));
    boolean whole =
        IntStream.range(0, factors.length)
            .allMatch(part -> assembly.rests(part) || factors[part] != null);
    if (!whole) {
      return Optional.empty();
    }
    for (int part = 0; part < factors.length; part++) {
      if (assembly.rests(part)) {
        factors[part] = kept[part];
      }
    }
    return Dense.tried(schur(assembly, factors))
        .map(schur -> new Curvature(assembly, factors, around.curves(), around.cross(), schur));
  }

  private static List<List<Part.Side>> sides(
      Assembly assembly, Likelihood.Curve[] crossCurves, Outside outside) {
    List<List<Part.Side>> sides = new ArrayList<>();
    for (int part = 0; part < assembly.parts(); part++) {
      sides.add(new ArrayList<>());
    }
    for (int i = 0; i < crossCurves.length; i++) {
      List<CrossTerm.Cut> cuts = assembly.cross().get(i).cuts();
      for (int j = 0; j < cuts.size(); j++) {
        sides
            .get(cuts.get(j).part())
            .add(new Part.Side(cuts.get(j).term(), crossCurves[i], outside.of(i, j)));
      }
    }
    return sides;
  }

  private static double[][] schur(Assembly assembly, BlockCholesky[] factors) {
    int size = assembly.border().size();
    double[][] sum = new double[size][size];
    for (int i = 0; i < size; i++) {
      sum[i][i] = assembly.border().precision(i);
    }
    for (int part = 0; part < factors.length; part++) {
      double[][] left =
          assembly.rests(part) ? assembly.resting(part).remainder() : factors[part].remainder();
      for (int i = 0; i < left.length; i++) {
        for (int j = 0; j < left.length; j++) {
          sum[i][j] += left[i][j];
        }
      }
    }
    return sum;
  }

  /** Lets go of the factors, before others take their room. */
  void release() {
    factors = new BlockCholesky[0];
    curves = new Curves[0];
  }

  BlockCholesky factor(int part) {
    return factors[part];
  }

  /** The precision of the border, all groups following. */
  Dense border() {
    return schur;
  }

  /** Solves with the factor; resting groups are left where they are. */
  Point solve(Point right) {
    double[][] locals = new double[assembly.parts()][];
    assembly.forEachAwake(
        part -> {
          double[] local = new double[right.own(part).length + right.border().length];
          System.arraycopy(right.own(part), 0, local, 0, right.own(part).length);
          factors[part].forward(local);
          locals[part] = local;
        });
    double[] left = right.border().clone();
    for (int part = 0; part < locals.length; part++) {
      if (!assembly.rests(part)) {
        for (int i = 0; i < left.length; i++) {
          left[i] += locals[part][right.own(part).length + i];
        }
      }
    }
    double[] border = schur.solve(left);
    Point solution = Point.zeroLike(right);
    System.arraycopy(border, 0, solution.border(), 0, border.length);
    assembly.forEachAwake(
        part -> {
          int own = right.own(part).length;
          System.arraycopy(border, 0, locals[part], own, border.length);
          factors[part].backward(locals[part]);
          System.arraycopy(locals[part], 0, solution.own(part), 0, own);
        });
    return solution;
  }

  /** Minus the Hessian times a vector, with evidence that spans groups whole. */
  Point product(Point vector) {
    Point product = Point.zeroLike(vector);
    double[][] locals = new double[assembly.parts()][];
    assembly.forEachAwake(
        part -> {
          double[] local = vector.local(part);
          locals[part] = new double[local.length];
          assembly.part(part).addProduct(curves[part], local, locals[part]);
        });
    for (int part = 0; part < locals.length; part++) {
      if (assembly.rests(part)) {
        addResting(assembly.resting(part).remainder(), vector.border(), product.border());
      } else {
        product.addLocal(part, locals[part]);
      }
    }
    for (int i = 0; i < vector.border().length; i++) {
      product.border()[i] += assembly.border().precision(i) * vector.border()[i];
    }
    for (int i = 0; i < crossCurves.length; i++) {
      if (!assembly.cross().get(i).rests(assembly)) {
        assembly.cross().get(i).addProduct(crossCurves[i], vector, product);
      }
    }
    return product;
  }

  private static void addResting(double[][] remainder, double[] border, double[] product) {
    for (int i = 0; i < remainder.length; i++) {
      product[i] += Point.dot(remainder[i], border);
    }
  }
}
