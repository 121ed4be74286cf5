package rallywright.store;

import java.util.Optional;
import java.util.function.UnaryOperator;
import rallywright.engine.club.PlayerId;
import rallywright.engine.plan.GameId;
import rallywright.engine.session.CourtEvent;

/** The game and the player of which an event speaks. */
final class EventSubjects {

  private EventSubjects() {}

  static Optional<GameId> game(CourtEvent event) {
    if (event instanceof CourtEvent.RallyPlayed rally) {
      return Optional.of(rally.game());
    } else if (event instanceof CourtEvent.FirstServerNamed named) {
      return Optional.of(named.game());
    } else if (event instanceof CourtEvent.FinalScoreGiven given) {
      return Optional.of(given.game());
    } else if (event instanceof CourtEvent.TimeCalled called) {
      return Optional.of(called.game());
    }
    return Optional.empty();
  }

  static Optional<PlayerId> player(CourtEvent event) {
    if (event instanceof CourtEvent.EffortRated rated) {
      return Optional.of(rated.player());
    } else if (event instanceof CourtEvent.YardstickCounted counted) {
      return Optional.of(counted.player());
    } else if (event instanceof CourtEvent.NoteWritten note) {
      return note.player();
    }
    return Optional.empty();
  }

  /** Whether an event says something of a person that goes with the person's name. */
  static boolean isPersonal(CourtEvent event) {
    return event instanceof CourtEvent.EffortRated || event instanceof CourtEvent.NoteWritten;
  }

  static CourtEvent withPlayer(CourtEvent event, UnaryOperator<PlayerId> other) {
    if (event instanceof CourtEvent.EffortRated rated) {
      return new CourtEvent.EffortRated(rated.stamp(), other.apply(rated.player()), rated.rating());
    } else if (event instanceof CourtEvent.YardstickCounted counted) {
      return new CourtEvent.YardstickCounted(
          counted.stamp(),
          counted.block(),
          other.apply(counted.player()),
          counted.hits(),
          counted.balls());
    } else if (event instanceof CourtEvent.NoteWritten note) {
      return new CourtEvent.NoteWritten(
          note.stamp(), note.player().map(other), note.block(), note.text(), note.instead());
    }
    return event;
  }
}
