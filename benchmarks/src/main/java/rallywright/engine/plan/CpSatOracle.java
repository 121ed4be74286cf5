package rallywright.engine.plan;

import com.google.ortools.Loader;
import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rallywright.engine.drill.SkillGroup;
import rallywright.engine.pace.SessionTime;
import rallywright.engine.plan.DrillChoices.Choice;
import rallywright.engine.plan.SearchModel.Option;

/**
 * The best session by an independent solver, the CP-SAT of OR-Tools, proven.
 *
 * <p>The model: one choice of rounds for each drill; before each block a rest or none; hard minutes
 * and minutes since the last rest carried along the session; equipment carried along; what must be
 * touched touched. The spread of the time is a root of squares; with the mean time T known to six
 * seconds, the largest sum of squares is a table. Everything is rounded in favour of the solver, so
 * its optimum is never below that of the search's own sums. Rests may stand anywhere, where the
 * search takes one only when due: again in favour of the solver.
 */
final class CpSatOracle {

  private static final double VALUE = 1e6;
  private static final int TENTHS = 10;
  private static final int STEP_TENTHS = 60;

  private final SearchModel numbers;
  private final SearchRules rules;
  private final CpModel model = new CpModel();
  private final List<LinearExprBuilder> tenths = new ArrayList<>();
  private final List<BoolVar> present = new ArrayList<>();
  private final List<LinearExprBuilder> shown = new ArrayList<>();
  private final LinearExprBuilder value = LinearExpr.newBuilder();
  private final LinearExprBuilder time = LinearExpr.newBuilder();
  private final LinearExprBuilder squares = LinearExpr.newBuilder();
  private final Map<SkillGroup, List<Literal>> touching = new LinkedHashMap<>();
  private final List<Literal> fullGames = new ArrayList<>();

  /**
   * What the solver says.
   *
   * @param proven whether the optimum is proven
   * @param score the best score found
   * @param bound what no choice can pass
   * @param seconds the time it took
   */
  record Outcome(boolean proven, double score, double bound, double seconds) {}

  private CpSatOracle(SearchModel numbers, SearchRules rules) {
    this.numbers = numbers;
    this.rules = rules;
  }

  static Outcome solve(SearchModel numbers, SearchRules rules, double seconds) {
    Loader.loadNativeLibraries();
    CpSatOracle oracle = new CpSatOracle(numbers, rules);
    oracle.drills();
    oracle.sequence();
    oracle.equipment();
    oracle.clock();
    oracle.coverage();
    oracle.model.maximize(oracle.value);
    CpSolver solver = new CpSolver();
    solver.getParameters().setNumWorkers(1);
    solver.getParameters().setMaxTimeInSeconds(seconds);
    CpSolverStatus status = solver.solve(oracle.model);
    return new Outcome(
        status == CpSolverStatus.OPTIMAL,
        solver.objectiveValue() / VALUE,
        solver.bestObjectiveBound() / VALUE,
        solver.wallTime());
  }

  /** One choice for each drill. */
  private void drills() {
    for (int i = 0; i < numbers.options().size(); i++) {
      tenths.add(LinearExpr.newBuilder());
      shown.add(LinearExpr.newBuilder());
      present.add(model.newBoolVar("present " + i));
    }
    for (DrillChoices drill : DrillChoices.of(numbers, rules)) {
      List<Literal> all = new ArrayList<>();
      for (Choice choice : drill.choices()) {
        BoolVar taken = model.newBoolVar("choice");
        all.add(taken);
        value.addTerm(taken, (long) Math.ceil(VALUE * choice.value()));
        double square = choice.variance() + choice.shared() * choice.shared();
        squares.addTerm(taken, (long) Math.floor(square));
        for (int i = 0; i < choice.stints().length; i++) {
          take(drill.options().get(i), choice.stints()[i], taken);
        }
      }
      model.addExactlyOne(all);
      drill.options().forEach(each -> model.addEquality(shown.get(each), present.get(each)));
    }
  }

  private void take(int option, int stints, BoolVar taken) {
    if (stints == 0) {
      return;
    }
    Option numbersOf = numbers.options().get(option);
    long length = (long) Math.floor(TENTHS * numbersOf.blockSeconds(stints));
    tenths.get(option).addTerm(taken, length);
    time.addTerm(taken, length);
    shown.get(option).addTerm(taken, 1);
    numbersOf.groups().forEach(group -> of(group).add(taken));
    if (numbersOf.isFullGame()) {
      fullGames.add(taken);
    }
  }

  private List<Literal> of(SkillGroup group) {
    return touching.computeIfAbsent(group, key -> new ArrayList<>());
  }

  /** Rests, hard minutes in a row and minutes since the last rest. */
  private void sequence() {
    SessionWish wish = numbers.context().wish();
    long most = 600L * wish.minutes();
    long mostHard = (long) Math.ceil(600 * wish.maxHardMinutes());
    double every = Walk.restEvery(wish);
    long rest = (long) Math.floor(600 * BlockBuilder.restMinutes(wish));
    LinearArgument hard = LinearExpr.constant(0);
    LinearArgument since = LinearExpr.constant((long) Math.floor(TENTHS * numbers.fixedSeconds()));
    for (int i = 0; i < numbers.options().size(); i++) {
      BoolVar here = present.get(i);
      BoolVar restful = model.newBoolVar("rest before " + i);
      model.addImplication(restful, here);
      time.addTerm(restful, rest);
      hard = carried(hard, i, restful, new Carry(mostHard, numbers.options().get(i).isHard()));
      LinearArgument before = since;
      since = carried(since, i, restful, new Carry(2 * most, true));
      if (every < Double.POSITIVE_INFINITY) {
        LinearExprBuilder middle = LinearExpr.newBuilder();
        middle.addTerm(before, 2).add(tenths.get(i));
        model
            .addLessOrEqual(middle, (long) Math.ceil(1200 * every))
            .onlyEnforceIf(new Literal[] {here, restful.not()});
      }
    }
  }

  private record Carry(long most, boolean counts) {}

  /** A sum that goes on from block to block, begins anew after a rest, and may be set to 0. */
  private LinearArgument carried(LinearArgument before, int option, BoolVar restful, Carry carry) {
    IntVar after = model.newIntVar(0, carry.most(), "carried " + option);
    BoolVar here = present.get(option);
    model.addEquality(after, before).onlyEnforceIf(here.not());
    if (!carry.counts()) {
      model.addEquality(after, 0).onlyEnforceIf(here);
      return after;
    }
    LinearExprBuilder goesOn = LinearExpr.newBuilder();
    goesOn.add(before).add(tenths.get(option));
    model.addEquality(after, goesOn).onlyEnforceIf(new Literal[] {here, restful.not()});
    model.addEquality(after, tenths.get(option)).onlyEnforceIf(restful);
    return after;
  }

  /** A small price whenever the next block needs other things. */
  private void equipment() {
    Map<List<String>, Integer> kinds = new LinkedHashMap<>();
    kinds.put(List.of(), 0);
    LinearArgument before = LinearExpr.constant(0);
    for (int i = 0; i < numbers.options().size(); i++) {
      List<String> needed = numbers.options().get(i).line().drill().advice().equipment();
      int kind = kinds.computeIfAbsent(needed, key -> kinds.size());
      IntVar after = model.newIntVar(0, 20, "equipment " + i);
      BoolVar changes = model.newBoolVar("change " + i);
      model.addEquality(after, kind).onlyEnforceIf(present.get(i));
      model.addEquality(after, before).onlyEnforceIf(present.get(i).not());
      model.addEquality(before, kind).onlyEnforceIf(new Literal[] {present.get(i), changes.not()});
      value.addTerm(changes, -(long) Math.floor(VALUE * SearchRules.equipmentChangePrice()));
      before = after;
    }
  }

  /** The booked time holds the mean and the wished number of standard deviations. */
  private void clock() {
    double booked = 60.0 * numbers.context().wish().minutes();
    double fixed = numbers.fixedSeconds();
    double reserve = rules.reserve();
    List<Long> largest = new ArrayList<>();
    for (int step = 0; ; step++) {
      double mean = step * (double) STEP_TENTHS / TENTHS;
      double root = (booked - mean) / reserve;
      double day = SessionTime.DAY_CV * mean;
      double room = root * root - day * day;
      if (mean > booked || room < 0) {
        break;
      }
      largest.add((long) Math.ceil(room));
    }
    time.add((long) Math.floor(TENTHS * fixed));
    IntVar mean = model.newIntVar(0, (long) largest.size() * STEP_TENTHS - 1, "mean");
    model.addEquality(mean, time);
    IntVar step = model.newIntVar(0, largest.size() - 1L, "step");
    model.addDivisionEquality(step, mean, LinearExpr.constant(STEP_TENTHS));
    IntVar room = model.newIntVar(0, largest.get(0), "room");
    long[] table = largest.stream().mapToLong(Long::longValue).toArray();
    model.addElement(step, table, room);
    model.addLessOrEqual(squares, room);
  }

  private void coverage() {
    for (SkillGroup group : rules.groupsToTouch()) {
      model.addAtLeastOne(of(group));
    }
    if (rules.needsFullGame()) {
      model.addAtLeastOne(fullGames);
    }
  }
}
