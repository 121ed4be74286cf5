package rallywright.engine.plan;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import rallywright.engine.club.PlayerId;

/** Answers wishes that cannot be met, each in a sentence that says what to change. */
final class WishCheck {

  private WishCheck() {}

  /** What keeps a session from being planned. */
  static List<String> problems(PlanProblem problem) {
    return problems(problem, SessionWish.MOST_COURTS);
  }

  /** What keeps a plan that exists from being changed: sessions that are kept may be larger. */
  static List<String> problemsOfKept(PlanProblem problem) {
    return problems(problem, SessionPlan.MOST_COURTS_KEPT);
  }

  private static List<String> problems(PlanProblem problem, int mostCourts) {
    List<String> sentences = new ArrayList<>();
    aboutPlayers(problem.attendees(), sentences);
    aboutNumbers(problem.wish(), mostCourts, sentences);
    boolean warmUpMissing =
        problem.wish().warmUps() == WarmUps.FIRST
            && problem.drills().stream().noneMatch(drill -> drill.kind().isWarmUp());
    if (warmUpMissing) {
      sentences.add(
          "The list of drills has no warm-up. Maybe add one, or leave warm-ups out by choice.");
    }
    if (problem.drills().stream().noneMatch(DrillLine::isPlayedOnCourt)) {
      sentences.add("The list of drills has no game. Maybe add a drill.");
    }
    if (problem.attendees().size() == 1 && Alone.tests(problem).isEmpty()) {
      sentences.add(
          "1 player is there, and every drill here needs somebody else. Maybe let the coach play or"
              + " feed as one more, counted or not.");
    }
    if (sentences.isEmpty()) {
      StayCheck.problems(problem, sentences);
    }
    RequestCheck.problems(problem, sentences);
    return sentences;
  }

  private static void aboutPlayers(List<Attendee> attendees, List<String> sentences) {
    int players = attendees.size();
    if (players < 1 || players > SessionWish.MOST_PLAYERS) {
      sentences.add(
          "%s to plan for; a session needs 1 to %d. Maybe %s."
              .formatted(
                  players == 0 ? "Nobody is there" : players + " players are there",
                  SessionWish.MOST_PLAYERS,
                  players == 0 ? "choose who will be there" : "plan two groups"));
    }
    Set<PlayerId> seen = new HashSet<>();
    for (Attendee attendee : attendees) {
      if (!seen.add(attendee.id())) {
        sentences.add(
            "%s is named twice; each player counts once. Maybe take one out."
                .formatted(attendee.name()));
      }
    }
  }

  private static void aboutNumbers(SessionWish wish, int mostCourts, List<String> sentences) {
    if (wish.minutes() < SessionPlan.SHORTEST_MINUTES
        || wish.minutes() > SessionPlan.LONGEST_MINUTES) {
      sentences.add(
          "The booked time (%d min) must be from %d to %d minutes. Maybe 90."
              .formatted(
                  wish.minutes(), SessionPlan.SHORTEST_MINUTES, SessionPlan.LONGEST_MINUTES));
    }
    if (wish.courts() < 1 || wish.courts() > mostCourts) {
      sentences.add(
          "The number of courts (%d) must be from 1 to %d. Maybe %s."
              .formatted(
                  wish.courts(),
                  mostCourts,
                  wish.courts() < 1 ? "1" : "plan two groups, each on courts of its own"));
    }
    if (!(wish.confidence() >= SessionWish.LOWEST_CONFIDENCE
        && wish.confidence() <= SessionWish.HIGHEST_CONFIDENCE)) {
      sentences.add(
          "The confidence (%s) must be from 0.5 to 0.99. Maybe 0.9, nine times in ten."
              .formatted(wish.confidence()));
    }
    if (!(wish.maxHardMinutes() >= SessionWish.FEWEST_HARD_MINUTES
        && wish.maxHardMinutes() <= SessionWish.MOST_HARD_MINUTES)) {
      sentences.add(
          "The hard minutes in a row (%s) must be from 5 to 120. Maybe 20."
              .formatted(wish.maxHardMinutes()));
    }
  }
}
