package rallywright.web.rotation;

import java.util.Optional;
import java.util.function.Function;
import org.springframework.stereotype.Component;
import rallywright.engine.rotation.DayAnswer;
import rallywright.engine.rotation.PlayDay;
import rallywright.engine.rotation.SavedDay;
import rallywright.store.ClubStore;

/**
 * Changes days of games. The rounds to come are searched for first, without holding up whoever
 * scores, and stored only if the day is still the one that they were found for.
 */
@Component
final class DayKeeper {

  private static final int TRIES = 4;

  private final ClubStore store;

  DayKeeper(ClubStore store) {
    this.store = store;
  }

  /**
   * Changes a day; found anew if somebody else changes it meanwhile.
   *
   * @param change gives the day as it will be, or why it stays
   * @param beside stores what belongs to the change, such as a new player, in the same step
   * @return why the day stays as it was, or an empty text
   */
  String change(String id, Function<PlayDay, DayAnswer> change, Runnable beside) {
    for (int attempt = 0; attempt < TRIES; attempt++) {
      SavedDay seen = store.days().find(id).orElseThrow(DayPages::notHere);
      DayAnswer answer = change.apply(seen.day());
      if (answer instanceof DayAnswer.Refused refused) {
        return String.join(" ", refused.sentences());
      }
      if (keep(seen, seen.with(((DayAnswer.Ready) answer).day()), beside) == Kept.YES) {
        return "";
      }
    }
    return "Somebody else is changing this rotation. Maybe look at it again and try once more.";
  }

  private enum Kept {
    YES,
    CHANGED_MEANWHILE
  }

  private Kept keep(SavedDay seen, SavedDay next, Runnable beside) {
    return store.inOneStep(
        () -> {
          Optional<SavedDay> now = store.days().find(seen.id());
          if (now.isEmpty() || !now.get().equals(seen)) {
            return Kept.CHANGED_MEANWHILE;
          }
          beside.run();
          store.days().save(next);
          return Kept.YES;
        });
  }
}
