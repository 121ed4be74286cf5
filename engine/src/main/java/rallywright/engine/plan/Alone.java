package rallywright.engine.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rallywright.engine.club.Limit;
import rallywright.engine.drill.Skill;
import rallywright.engine.drill.Yardstick;
import rallywright.engine.practice.PracticeMinutes;

/**
 * A session for one player alone: warm-ups, then rounds of the closed tests that nobody needs to
 * feed, in turn, as many as bring most in the time.
 *
 * <p>For the maintainer: there are few such tests, so every number of rounds of each is tried.
 */
final class Alone {

  /** More rounds of one test are not planned: arms tire. Assumption of this project. */
  static final int MOST_ROUNDS = 4;

  private static final int MOST_TESTS = 4;

  private final PlanContext context;
  private final BlockBuilder builder;
  private final List<Yardstick> tests;

  Alone(PlanContext context) {
    this.context = context;
    this.builder = new BlockBuilder(context);
    this.tests = tests(context.problem());
  }

  /** The tests that one player can strike alone, with what is at hand. */
  static List<Yardstick> tests(PlanProblem problem) {
    Optional<Set<String>> atHand = problem.wish().requests().equipment();
    boolean spared =
        problem.attendees().stream().anyMatch(each -> each.limits().contains(Limit.NO_OVERHEADS));
    return problem.yardsticks().stream()
        .filter(each -> each.court().feeder().isEmpty())
        .filter(each -> !problem.wish().requests().forbidden().contains(each.key()))
        .filter(each -> !spared || each.skill() != Skill.OVERHEAD)
        .filter(each -> atHand.isEmpty() || atHand.get().containsAll(each.advice().equipment()))
        .toList();
  }

  /** The plan that brings most and ends in time; empty where not one round fits. */
  Optional<SessionPlan> plan(PlanReading reading) {
    List<Yardstick> chosen =
        tests.stream()
            .sorted(Comparator.comparingDouble((Yardstick each) -> -rate(each)))
            .limit(MOST_TESTS)
            .toList();
    SessionPlan best = null;
    int[] rounds = new int[chosen.size()];
    while (next(rounds)) {
      SessionPlan plan = plan(chosen, rounds);
      boolean better = best == null || benefit(plan) > benefit(best);
      if (better && reading.clock(plan).fits()) {
        best = plan;
      }
    }
    return Optional.ofNullable(best);
  }

  /** Counts through all numbers of rounds; false after the last. */
  private static boolean next(int[] rounds) {
    for (int i = 0; i < rounds.length; i++) {
      if (rounds[i] < MOST_ROUNDS) {
        rounds[i]++;
        return true;
      }
      rounds[i] = 0;
    }
    return false;
  }

  private SessionPlan plan(List<Yardstick> chosen, int[] rounds) {
    SessionPlanner.BlockNames names = new SessionPlanner.BlockNames(Optional.empty());
    List<PlannedBlock> blocks = new ArrayList<>();
    for (WarmUpTimes.WarmUp warmUp : WarmUpTimes.of(context.problem())) {
      BlockId id = names.next(warmUp.drill().key().value());
      blocks.add(builder.warmUp(id, warmUp.drill(), warmUp.minutes()));
    }
    double sinceRest = BlockClock.startMinute(blocks, blocks.size());
    for (int round = 1; round <= MOST_ROUNDS; round++) {
      for (int i = 0; i < rounds.length; i++) {
        if (rounds[i] >= round) {
          Yardstick test = chosen.get(i);
          double minutes = YardstickTimes.minutes(context.problem(), test);
          if (sinceRest + minutes / 2 >= Walk.restEvery(context.wish())) {
            blocks.add(builder.rest(names.next(BlockBuilder.WATER.value())));
            sinceRest = 0;
          }
          String why = "nobody needs to feed it.";
          YardstickTimes.Planned planned = new YardstickTimes.Planned(test, minutes, why);
          blocks.add(builder.yardstick(names.next(test.key().value()), planned));
          sinceRest += minutes;
        }
      }
    }
    SessionWish wish = context.wish();
    return new SessionPlan(
        wish.minutes(),
        wish.courts(),
        context.attendees().stream().map(Attendee::id).toList(),
        blocks);
  }

  private double rate(Yardstick test) {
    double gain = context.problem().knowledge().gains().of(test.key());
    return context.needs().get(0).rate(Map.of(test.skill(), 1.0), gain);
  }

  /** What the rounds of a plan bring the player. */
  double benefit(SessionPlan plan) {
    double sum = 0;
    for (Yardstick test : tests) {
      long rounds =
          plan.blocks().stream().filter(block -> block.drill().equals(test.key())).count();
      sum += rate(test) * PracticeMinutes.effective(rounds * test.minutesForOne());
    }
    return sum;
  }
}
