package rallywright.engine.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import rallywright.engine.club.PlayerId;

/** Finds what a coach wants to know of a plan beside its rules. */
final class PlanNotes {

  private final SessionPlan plan;
  private final PlanContext context;

  PlanNotes(SessionPlan plan, PlanContext context) {
    this.plan = plan;
    this.context = context;
  }

  List<PlanNote> all() {
    List<PlanNote> notes = new ArrayList<>();
    int players = context.attendees().size();
    int needed = Math.max(1, players / 2);
    if (plan.courts() > needed) {
      notes.add(new PlanNote.SpareCourts(players, plan.courts(), needed));
    }
    if (players == 1) {
      notes.add(new PlanNote.Alone());
    }
    for (Attendee attendee : context.attendees()) {
      Stay stay = attendee.stay();
      boolean throughout = !stay.comesLate() && !stay.leavesBefore(plan.minutes());
      List<BlockClock.Span> games = throughout ? List.of() : games(attendee.id());
      if (stay.comesLate()) {
        double ready = Presence.readyFrom(stay, context.wish());
        int ownWarmUp = (int) Math.round(ready) - stay.fromMinute();
        notes.add(
            new PlanNote.ComesLate(attendee.name(), stay.fromMinute(), ownWarmUp, first(games)));
      }
      if (stay.leavesBefore(plan.minutes())) {
        notes.add(new PlanNote.LeavesEarly(attendee.name(), stay.untilMinute(), last(games)));
      }
    }
    return notes;
  }

  private static OptionalDouble first(List<BlockClock.Span> games) {
    return games.stream().mapToDouble(BlockClock.Span::fromMinute).min();
  }

  private static OptionalDouble last(List<BlockClock.Span> games) {
    return games.stream().mapToDouble(BlockClock.Span::untilMinute).max();
  }

  /** When somebody plays. */
  private List<BlockClock.Span> games(PlayerId player) {
    List<BlockClock.Span> games = new ArrayList<>();
    double start = 0;
    for (PlannedBlock block : plan.blocks()) {
      List<List<PlannedGame>> stints = context.stints(block);
      List<BlockClock.Span> spans = BlockClock.spans(block, start, context);
      for (int stint = 0; stint < stints.size(); stint++) {
        boolean plays =
            stints.get(stint).stream()
                .anyMatch(
                    game ->
                        game.a().players().contains(player) || game.b().players().contains(player));
        if (plays) {
          games.add(spans.get(stint));
        }
      }
      start += block.time().mean();
    }
    return games;
  }
}
