package rallywright.engine.plan;

import java.util.Arrays;
import java.util.List;
import rallywright.engine.score.Side;

/**
 * What came before: who met whom, who played with whom, who sat out; and what it would cost to let
 * people meet or sit again. The prices are assumptions of this project.
 */
final class Meetings {

  /** More than any other price: only where nothing else is possible. */
  static final double IMPOSSIBLE = 1e9;

  private static final double SIT_OUT = 1e6;
  private static final double UNEVEN_SIT_OUT = 20_000;
  private static final double TWICE_RUNNING = 39_000;
  private static final double MET_BEFORE = 200;
  private static final double PARTNERS_BEFORE = 400;
  private static final double STRENGTH = 40;
  private static final double CLEARLY_STRONGER_LOGITS = 0.8;

  private final PlanContext context;
  private final int[][] met;
  private final int[][] partnered;
  private final int[] sits;
  private final int[] lastSat;
  private final int[] begunFirst;
  private final double[] missed;
  private int stints;

  Meetings(PlanContext context) {
    this.context = context;
    int players = context.attendees().size();
    met = new int[players][players];
    partnered = new int[players][players];
    sits = new int[players];
    lastSat = new int[players];
    Arrays.fill(lastSat, -2);
    begunFirst = new int[players];
    missed = new double[players];
  }

  /**
   * Takes a stint into account: who meets in its first turns, who has no part in it, and who is not
   * there and so neither plays nor sits: to them it counts as much sitting as to the others on
   * average.
   */
  void remember(List<List<Duel>> lanes, List<Integer> sitting, List<Integer> away) {
    double there = (double) met.length - away.size();
    away.forEach(place -> missed[place] += there > 0 ? sitting.size() / there : 0);
    for (List<Duel> lane : lanes) {
      for (Duel duel : lane.stream().map(Meetings::sorted).distinct().toList()) {
        duel.a().forEach(one -> duel.b().forEach(other -> count(met, one, other)));
        together(duel.a());
        together(duel.b());
      }
      lane.get(0).a().forEach(first -> begunFirst[first]++);
    }
    for (int place : sitting) {
      sits[place]++;
      lastSat[place] = stints;
    }
    stints++;
  }

  private static Duel sorted(Duel duel) {
    return duel.a().get(0) < duel.b().get(0) ? duel : duel.swapped();
  }

  private void together(List<Integer> side) {
    if (side.size() == 2) {
      count(partnered, side.get(0), side.get(1));
    }
  }

  private static void count(int[][] table, int one, int other) {
    table[one][other]++;
    table[other][one]++;
  }

  boolean beginsFirst(int one, int other) {
    return begunFirst[one] <= begunFirst[other];
  }

  RoleAccess access(DrillLine line, int place) {
    return context.access(place, line.drill());
  }

  /** The price of a round on the bench. */
  double sitting(int place) {
    if (!context.attendees().get(place).practises()) {
      return 0;
    }
    boolean satLast = lastSat[place] == stints - 1;
    return SIT_OUT
        + UNEVEN_SIT_OUT * (2 * (sits[place] + missed[place]) + 1)
        + (satLast ? TWICE_RUNNING : 0);
  }

  /** The price of a game of one against one. */
  double meeting(DrillLine line, int one, int other) {
    if (!access(line, one).fits(access(line, other))) {
      return IMPOSSIBLE;
    }
    double apart = line.isScored() ? Math.abs(strength(line, one) - strength(line, other)) : 0;
    return MET_BEFORE * met[one][other] + uneven(apart);
  }

  /** The price of a game with these sides. */
  double meeting(DrillLine line, Duel duel) {
    double price = 0;
    double apart = 0;
    for (int one : duel.a()) {
      apart += strength(line, one) / duel.a().size();
      for (int other : duel.b()) {
        price += MET_BEFORE * met[one][other];
      }
    }
    for (int other : duel.b()) {
      apart -= strength(line, other) / duel.b().size();
    }
    for (int place : duel.players()) {
      price += access(line, place) == RoleAccess.BOTH ? 0 : IMPOSSIBLE;
    }
    price += PARTNERS_BEFORE * (partnersBefore(duel.a()) + partnersBefore(duel.b()));
    return price + (duel.a().size() == duel.b().size() ? uneven(Math.abs(apart)) : 0);
  }

  private int partnersBefore(List<Integer> side) {
    return side.size() == 2 ? partnered[side.get(0)][side.get(1)] : 0;
  }

  private static double uneven(double apart) {
    double clearly = Math.max(0, apart - CLEARLY_STRONGER_LOGITS);
    return STRENGTH * (apart + 3 * clearly);
  }

  private double strength(DrillLine line, int place) {
    return line.isScored() ? context.strength(place, line) : 0;
  }

  /** Whether one may take the first side against the other on the second. */
  boolean mayFace(DrillLine line, int first, int second) {
    return access(line, first).mayTake(Side.A) && access(line, second).mayTake(Side.B);
  }
}
