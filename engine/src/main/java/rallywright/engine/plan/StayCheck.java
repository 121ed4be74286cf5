package rallywright.engine.plan;

import java.util.List;
import java.util.TreeSet;

/** Answers times of coming and leaving with which a session cannot be planned, in sentences. */
final class StayCheck {

  private StayCheck() {}

  static void problems(PlanProblem problem, List<String> sentences) {
    int minutes = problem.wish().minutes();
    for (Attendee attendee : problem.attendees()) {
      aboutStay(attendee, minutes, sentences);
    }
    if (sentences.isEmpty() && problem.attendees().size() > 1) {
      aboutTooFew(problem, sentences);
    }
  }

  private static void aboutStay(Attendee attendee, int minutes, List<String> sentences) {
    Stay stay = attendee.stay();
    int there = Math.min(stay.untilMinute(), minutes) - stay.fromMinute();
    if (stay.fromMinute() >= minutes) {
      sentences.add(
          "%s comes at minute %d, but the session ends at minute %d. Maybe leave the name out, or"
                  .formatted(attendee.name(), stay.fromMinute(), minutes)
              + " book longer.");
    } else if (!stay.equals(Stay.THROUGHOUT) && there < Stay.SHORTEST_MINUTES) {
      sentences.add(
          "%s is there for %d minutes, too short to warm up and play. Maybe leave the name out, or"
                  .formatted(attendee.name(), there)
              + " %d minutes at least.".formatted(Stay.SHORTEST_MINUTES));
    }
  }

  /** Two at least must be there and warm from the first game to the end. */
  private static void aboutTooFew(PlanProblem problem, List<String> sentences) {
    SessionWish wish = problem.wish();
    Presence presence = new Presence(problem.attendees(), wish);
    double first = SessionPlanner.fixedMinutes(problem) + BlockClock.BLOCK_SECONDS / 60;
    TreeSet<Double> changes = new TreeSet<>(List.of(first));
    for (Attendee attendee : problem.attendees()) {
      changes.add(Presence.readyFrom(attendee.stay(), wish));
      changes.add((double) attendee.stay().untilMinute());
    }
    for (double from : changes.subSet(first, true, (double) wish.minutes(), false)) {
      Double next = changes.higher(from);
      double until = next == null ? wish.minutes() : Math.min(next, wish.minutes());
      int there = presence.places(presence.during(from, until)).size();
      if (there < 2) {
        sentences.add(
            "From minute %.0f to %.0f only %s there and warm; two are needed."
                    .formatted(from, until, there == 0 ? "nobody is" : "1 player is")
                + " Maybe let the session begin later or end sooner, or let somebody else come.");
        return;
      }
    }
  }
}
