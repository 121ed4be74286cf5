package rallywright.engine.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.DrillForm;
import rallywright.engine.score.Side;

/**
 * Who meets whom and who sits out, stint after stint.
 *
 * <p>For the maintainer: each stint is a cheapest choice of pairs and sitters, found exactly by
 * going through all subsets of those present (at most {@value #MOST_PLAYERS}), given what came
 * before. In order of weight: as many play as can; sit-outs even; nobody sits twice running;
 * opponents as new as possible; pairs of like strength. The weights are assumptions of this
 * project.
 */
final class Rotation {

  /** More players than this are not rotated as one group. */
  static final int MOST_PLAYERS = 12;

  private static final double SIT_OUT = 1e6;
  private static final double UNEVEN_SIT_OUT = 20_000;
  private static final double TWICE_RUNNING = 39_000;
  private static final double MET_BEFORE = 200;
  private static final double STRENGTH = 40;
  private static final double CLEARLY_STRONGER_LOGITS = 0.8;

  private final PlanContext context;
  private final int[][] met;
  private final int[] sits;
  private final int[] lastSat;
  private final int[] begunFirst;
  private int stints;

  /**
   * Two players who meet.
   *
   * @param first the place of the one who begins on the first side
   * @param second the place of the other one
   * @param roles whether they swap roles after the first game
   */
  record Pair(int first, int second, Roles roles) {}

  /** Whether two players swap roles. */
  enum Roles {
    SWAPPED,
    KEPT
  }

  /**
   * One stint.
   *
   * @param pairs who meet
   * @param sitting who sit out
   */
  record Stint(List<Pair> pairs, List<Integer> sitting) {}

  Rotation(PlanContext context) {
    this.context = context;
    int players = context.attendees().size();
    met = new int[players][players];
    sits = new int[players];
    lastSat = new int[players];
    Arrays.fill(lastSat, -2);
    begunFirst = new int[players];
  }

  /** Takes a block that is planned already into account. */
  void replay(PlannedBlock block) {
    if (block.games().isEmpty()) {
      return;
    }
    for (List<PlannedGame> stint : context.stints(block)) {
      int turn = stint.get(0).turn();
      List<Pair> pairs = new ArrayList<>();
      for (PlannedGame game : stint) {
        if (game.turn() == turn) {
          int a = context.placeOf(game.a().players().get(0));
          int b = context.placeOf(game.b().players().get(0));
          pairs.add(new Pair(a, b, Roles.KEPT));
        }
      }
      List<Integer> sitting = block.sitting().get(turn - 1).stream().map(context::placeOf).toList();
      remember(new Stint(pairs, sitting));
    }
  }

  /** The next stint of a drill. */
  Stint next(DrillLine line) {
    Stint stint = choose(line);
    remember(stint);
    return stint;
  }

  /** How many pairs of those present can play a drill at once. */
  int pairsPossible(DrillLine line) {
    return choose(line).pairs().size();
  }

  private void remember(Stint stint) {
    for (Pair pair : stint.pairs()) {
      met[pair.first()][pair.second()]++;
      met[pair.second()][pair.first()]++;
      begunFirst[pair.first()]++;
    }
    for (int place : stint.sitting()) {
      sits[place]++;
      lastSat[place] = stints;
    }
    stints++;
  }

  private Stint choose(DrillLine line) {
    List<Integer> eligible = context.eligible(line.drill());
    int most = Math.min(line.capacity(context.wish().courts()), eligible.size() / 2);
    List<int[]> chosen = new Matching(line, eligible, most).best();
    List<Pair> pairs = new ArrayList<>();
    List<Integer> sitting = new ArrayList<>();
    for (int place = 0; place < sits.length; place++) {
      sitting.add(place);
    }
    for (int[] two : chosen) {
      pairs.add(pair(line.drill(), two[0], two[1]));
      sitting.remove((Integer) two[0]);
      sitting.remove((Integer) two[1]);
    }
    pairs.sort(Comparator.comparingInt(each -> Math.min(each.first(), each.second())));
    return new Stint(pairs, sitting);
  }

  private Pair pair(Drill drill, int one, int other) {
    RoleAccess of = access(drill, one);
    RoleAccess against = access(drill, other);
    boolean oneFirst = of.mayTake(Side.A) && against.mayTake(Side.B);
    boolean otherFirst = against.mayTake(Side.A) && of.mayTake(Side.B);
    if (oneFirst && otherFirst) {
      return begunFirst[one] <= begunFirst[other]
          ? new Pair(one, other, Roles.SWAPPED)
          : new Pair(other, one, Roles.SWAPPED);
    }
    return oneFirst ? new Pair(one, other, Roles.KEPT) : new Pair(other, one, Roles.KEPT);
  }

  private RoleAccess access(Drill drill, int place) {
    return context.access(context.attendees().get(place), drill);
  }

  /** The cheapest pairs and sitters of one stint. */
  private final class Matching {

    private final DrillLine line;
    private final List<Integer> players;
    private final int most;
    private final double[][] cost;
    private final int[][] partner;

    Matching(DrillLine line, List<Integer> players, int most) {
      this.line = line;
      this.players = players;
      this.most = most;
      cost = new double[1 << players.size()][most + 1];
      partner = new int[1 << players.size()][most + 1];
    }

    List<int[]> best() {
      double[][] meet = costsOfMeeting();
      for (int undecided = 1; undecided < cost.length; undecided++) {
        for (int pairs = 0; pairs <= most; pairs++) {
          decide(undecided, pairs, meet);
        }
      }
      List<int[]> chosen = new ArrayList<>();
      int undecided = cost.length - 1;
      int pairs = most;
      while (undecided != 0) {
        int one = Integer.numberOfTrailingZeros(undecided);
        int other = partner[undecided][pairs];
        undecided &= ~(1 << one);
        if (other >= 0) {
          undecided &= ~(1 << other);
          pairs--;
          chosen.add(new int[] {players.get(one), players.get(other)});
        }
      }
      return chosen;
    }

    private void decide(int undecided, int pairs, double[][] meet) {
      int one = Integer.numberOfTrailingZeros(undecided);
      int rest = undecided & ~(1 << one);
      double best = sitting(players.get(one)) + cost[rest][pairs];
      int with = -1;
      for (int other = one + 1; pairs > 0 && other < players.size(); other++) {
        if ((rest & (1 << other)) != 0) {
          double next = meet[one][other] + cost[rest & ~(1 << other)][pairs - 1];
          if (next < best) {
            best = next;
            with = other;
          }
        }
      }
      cost[undecided][pairs] = best;
      partner[undecided][pairs] = with;
    }

    private double sitting(int place) {
      boolean satLast = lastSat[place] == stints - 1;
      return SIT_OUT + UNEVEN_SIT_OUT * (2 * sits[place] + 1) + (satLast ? TWICE_RUNNING : 0);
    }

    private double[][] costsOfMeeting() {
      double[][] meet = new double[players.size()][players.size()];
      for (int i = 0; i < players.size(); i++) {
        for (int j = i + 1; j < players.size(); j++) {
          meet[i][j] = meeting(players.get(i), players.get(j));
        }
      }
      return meet;
    }

    private double meeting(int one, int other) {
      if (!access(line.drill(), one).fits(access(line.drill(), other))) {
        return Double.POSITIVE_INFINITY;
      }
      DrillForm.Scored game = line.game();
      double apart =
          Math.abs(
              Matchup.strength(game, context.attendees().get(one).standing())
                  - Matchup.strength(game, context.attendees().get(other).standing()));
      double clearly = Math.max(0, apart - CLEARLY_STRONGER_LOGITS);
      return MET_BEFORE * met[one][other] + STRENGTH * (apart + 3 * clearly);
    }
  }
}
