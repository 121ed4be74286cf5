package rallywright.benchmarks.rotation;

import com.google.ortools.Loader;
import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.List;
import java.util.Optional;
import rallywright.engine.rotation.RotationRound;
import rallywright.engine.rotation.RotationWish;

/**
 * A constraint model of a doubles rotation in which everybody plays.
 *
 * <p>Which side of which table a player takes in a round; for each two whether they share a table
 * and whether they share a side; repeats by tangents, which are exact at whole numbers.
 */
final class CpSatRotation {

  private static final int GREATEST_STRENGTH = 10_000;

  private final RotationWish wish;
  private final CpModel model = new CpModel();
  private final LinearExprBuilder cost = LinearExpr.newBuilder();
  private final int players;
  private final int sides;
  private final BoolVar[][][] at;

  private CpSatRotation(RotationWish wish) {
    this.wish = wish;
    players = wish.players().size();
    sides = players / 2;
    at = new BoolVar[wish.rounds()][players][sides];
    for (int round = 0; round < at.length; round++) {
      placesOf(round);
      balance(round);
    }
    meetings();
    model.minimize(cost);
  }

  static Optional<List<RotationRound>> solve(RotationWish wish, Budget budget) {
    Loader.loadNativeLibraries();
    CpSatRotation rotation = new CpSatRotation(wish);
    CpSolver solver = new CpSolver();
    solver.getParameters().setNumSearchWorkers(1).setRandomSeed(1);
    budget.whenUsedUp(solver::stopSearch);
    CpSolverStatus status = solver.solve(rotation.model);
    return status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.FEASIBLE
        ? Optional.of(rotation.rounds(solver))
        : Optional.empty();
  }

  private void placesOf(int round) {
    for (int player = 0; player < players; player++) {
      for (int side = 0; side < sides; side++) {
        at[round][player][side] = model.newBoolVar("");
      }
      model.addExactlyOne(at[round][player]);
    }
    for (int side = 0; side < sides; side++) {
      BoolVar[] there = new BoolVar[players];
      for (int player = 0; player < players; player++) {
        there[player] = at[round][player][side];
      }
      model.addEquality(LinearExpr.sum(there), 2);
    }
  }

  private void balance(int round) {
    for (int table = 0; table < sides / 2; table++) {
      LinearExprBuilder difference = LinearExpr.newBuilder();
      for (int player = 0; player < players; player++) {
        long strength = Weights.millilogits(wish, player);
        difference.addTerm(at[round][player][2 * table], strength);
        difference.addTerm(at[round][player][2 * table + 1], -strength);
      }
      IntVar size = model.newIntVar(0, 4L * GREATEST_STRENGTH, "");
      model.addAbsEquality(size, difference);
      IntVar charge = model.newIntVar(0, 1L << 40, "");
      model.addGreaterOrEqual(charge, LinearExpr.term(size, Weights.HALF_MILLILOGIT));
      model.addGreaterOrEqual(
          charge,
          LinearExpr.newBuilder()
              .addTerm(size, Weights.HALF_MILLILOGIT * (1 + Weights.BEYOND))
              .add(-Weights.HALF_MILLILOGIT * Weights.BEYOND * Weights.LIMIT_HALF_MILLILOGITS));
      cost.add(charge);
    }
  }

  private void meetings() {
    LinearExprBuilder[][] mates = new LinearExprBuilder[wish.rounds()][players];
    LinearExprBuilder[][] partners = new LinearExprBuilder[wish.rounds()][players];
    for (int round = 0; round < wish.rounds(); round++) {
      for (int player = 0; player < players; player++) {
        mates[round][player] = LinearExpr.newBuilder();
        partners[round][player] = LinearExpr.newBuilder();
      }
    }
    for (int one = 0; one < players; one++) {
      for (int other = one + 1; other < players; other++) {
        LinearExprBuilder asPartners = LinearExpr.newBuilder();
        LinearExprBuilder asOpponents = LinearExpr.newBuilder();
        for (int round = 0; round < wish.rounds(); round++) {
          BoolVar partner = model.newBoolVar("");
          BoolVar mate = model.newBoolVar("");
          model.addImplication(partner, mate);
          shared(round, one, other, partner, mate);
          mates[round][one].add(mate);
          mates[round][other].add(mate);
          partners[round][one].add(partner);
          partners[round][other].add(partner);
          asPartners.add(partner);
          asOpponents.add(mate).addTerm(partner, -1);
        }
        repeats(asPartners, Weights.PARTNER_AGAIN);
        repeats(asOpponents, Weights.OPPONENT_AGAIN);
      }
    }
    for (int round = 0; round < wish.rounds(); round++) {
      for (int player = 0; player < players; player++) {
        model.addEquality(mates[round][player], 3);
        model.addEquality(partners[round][player], 1);
      }
    }
  }

  private void shared(int round, int one, int other, BoolVar partner, BoolVar mate) {
    for (int side = 0; side < sides; side++) {
      Literal a = at[round][one][side];
      Literal b = at[round][other][side];
      model.addBoolOr(new Literal[] {a.not(), b.not(), partner});
      model.addBoolOr(new Literal[] {partner.not(), a.not(), b});
      model.addBoolOr(new Literal[] {partner.not(), a, b.not()});
      Literal across = at[round][other][side ^ 1];
      model.addBoolOr(new Literal[] {a.not(), across.not(), mate});
      model.addBoolOr(new Literal[] {mate.not(), a.not(), b, across});
    }
  }

  private void repeats(LinearExprBuilder times, long weight) {
    IntVar repeats = model.newIntVar(0, (long) wish.rounds() * wish.rounds(), "");
    for (int slope = 1; slope < wish.rounds(); slope++) {
      model.addGreaterOrEqual(
          LinearExpr.newBuilder().add(repeats).add((long) slope * (slope + 1) / 2),
          LinearExpr.newBuilder().addTerm(times, slope));
    }
    cost.addTerm(repeats, weight);
  }

  private List<RotationRound> rounds(CpSolver solver) {
    int[][] lines = new int[wish.rounds()][players];
    for (int round = 0; round < lines.length; round++) {
      int place = 0;
      for (int side = 0; side < sides; side++) {
        for (int player = 0; player < players; player++) {
          if (solver.booleanValue(at[round][player][side])) {
            lines[round][place++] = player;
          }
        }
      }
    }
    return Weights.rounds(wish, lines);
  }
}
