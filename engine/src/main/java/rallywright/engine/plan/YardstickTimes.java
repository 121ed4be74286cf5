package rallywright.engine.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rallywright.engine.club.Limit;
import rallywright.engine.drill.Skill;
import rallywright.engine.drill.Yardstick;
import rallywright.engine.practice.SkillStanding;

/** Which closed tests stand in a session, and how long everybody needs for them. */
final class YardstickTimes {

  /** An estimate of this spread or more, in logits, is wide. Assumption of this project. */
  static final double WIDE_SD = 0.35;

  /** To hand over balls and places from one striker to the next. Assumption of this project. */
  private static final double HAND_OVER_MINUTES = 0.5;

  private YardstickTimes() {}

  /**
   * One test in the plan.
   *
   * @param yardstick which one
   * @param minutes how long until everybody has struck
   * @param why why it is there, the end of a sentence
   */
  record Planned(Yardstick yardstick, double minutes, String why) {}

  static List<Planned> of(PlanProblem problem) {
    YardstickWish wish = problem.wish().requests().yardsticks();
    List<Planned> planned = new ArrayList<>();
    if (wish instanceof YardstickWish.Named named) {
      for (Yardstick each : problem.yardsticks()) {
        if (named.keys().contains(each.key())) {
          planned.add(new Planned(each, minutes(problem, each), "the coach asked for it."));
        }
      }
    } else if (wish instanceof YardstickWish.WhereUnsure) {
      widest(problem)
          .filter(each -> spread(problem, each) >= WIDE_SD)
          .ifPresent(each -> planned.add(unsure(problem, each, "too little is known so far.")));
    } else if (wish instanceof YardstickWish.Every every && every.isDue()) {
      String why =
          every.sessions() == 1
              ? "the coach asked for a test."
              : "a test stands in one of %d sessions.".formatted(every.sessions());
      widest(problem).ifPresent(each -> planned.add(unsure(problem, each, why)));
    }
    return planned;
  }

  private static Planned unsure(PlanProblem problem, Yardstick yardstick, String why) {
    return new Planned(yardstick, minutes(problem, yardstick), why);
  }

  /** The test of the skill in which those present are known worst. */
  private static Optional<Yardstick> widest(PlanProblem problem) {
    Yardstick best = null;
    List<Yardstick> offered =
        problem.attendees().size() == 1 ? Alone.tests(problem) : problem.yardsticks();
    for (Yardstick each : offered) {
      boolean spared = each.skill() == Skill.OVERHEAD && somebodyIsSparedOverheads(problem);
      if (!spared && (best == null || spread(problem, each) > spread(problem, best) + 1e-9)) {
        best = each;
      }
    }
    return Optional.ofNullable(best);
  }

  private static boolean somebodyIsSparedOverheads(PlanProblem problem) {
    return problem.attendees().stream()
        .anyMatch(each -> each.limits().contains(Limit.NO_OVERHEADS));
  }

  private static double spread(PlanProblem problem, Yardstick yardstick) {
    return problem.attendees().stream()
        .filter(Attendee::practises)
        .map(each -> each.standing().in(yardstick.skill()))
        .mapToDouble(SkillStanding::sd)
        .average()
        .orElse(0);
  }

  /** Tests come right after the warm-ups: who comes later strikes another day. */
  private static boolean isThereForTests(Attendee attendee, SessionWish wish) {
    return Presence.readyFrom(attendee.stay(), wish) <= WarmUpTimes.SHARE * wish.minutes();
  }

  /** Two share a lane where somebody feeds and strike one after the other; else one has it. */
  static double minutes(PlanProblem problem, Yardstick yardstick) {
    int lanes = 2 * problem.wish().courts();
    int strikers =
        (int)
            problem.attendees().stream()
                .filter(each -> each.practises() && isThereForTests(each, problem.wish()))
                .count();
    int rounds;
    if (yardstick.court().feeder().isPresent()) {
      int pairs = (strikers + 1) / 2;
      rounds = 2 * ((pairs + lanes - 1) / lanes);
    } else {
      rounds = (strikers + lanes - 1) / lanes;
    }
    return BlockClock.BLOCK_SECONDS / 60
        + rounds * yardstick.minutesForOne()
        + Math.max(0, rounds - 1) * HAND_OVER_MINUTES;
  }
}
