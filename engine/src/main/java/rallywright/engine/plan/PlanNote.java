package rallywright.engine.plan;

import java.util.OptionalDouble;
import java.util.function.IntFunction;

/** Something that a coach wants to know of a plan that breaks no rule. */
public sealed interface PlanNote {

  /**
   * The note in words.
   *
   * @param clock how a minute from the session's start is said, for example "minute 20" or "18:50"
   * @return one or two sentences
   */
  String words(IntFunction<String> clock);

  /**
   * Courts on which nobody will ever play.
   *
   * @param players how many are there
   * @param courts how many courts are booked
   * @param needed how many they can fill, one pair to a court
   */
  record SpareCourts(int players, int courts, int needed) implements PlanNote {

    @Override
    public String words(IntFunction<String> clock) {
      return "%d %s use at most %d of %d courts. Maybe give %s back."
          .formatted(
              players,
              players == 1 ? "player can" : "players can",
              needed,
              courts,
              courts - needed == 1 ? "one" : String.valueOf(courts - needed));
    }
  }

  /**
   * Somebody comes late and warms up alone.
   *
   * @param name who
   * @param minute when they come
   * @param ownWarmUp how long they warm up, in minutes; 0 where warm-ups were left out by choice
   * @param firstGame when they play first; empty where they have no game
   */
  record ComesLate(String name, int minute, int ownWarmUp, OptionalDouble firstGame)
      implements PlanNote {

    @Override
    public String words(IntFunction<String> clock) {
      String warm =
          ownWarmUp == 0
              ? ""
              : " and first warms up alone for %d minutes, easy steps and soft balls"
                  .formatted(ownWarmUp);
      String plays =
          firstGame.isPresent()
              ? "; plays first at about " + clock.apply((int) Math.round(firstGame.getAsDouble()))
              : "; no game is left by then";
      return "%s comes at %s%s%s.".formatted(name, clock.apply(minute), warm, plays);
    }
  }

  /**
   * Somebody leaves early.
   *
   * @param name who
   * @param minute when they leave
   * @param lastGame when their last game ends; empty where they have no game
   */
  record LeavesEarly(String name, int minute, OptionalDouble lastGame) implements PlanNote {

    @Override
    public String words(IntFunction<String> clock) {
      String plays =
          lastGame.isPresent()
              ? "the last game ends at about "
                  + clock.apply((int) Math.round(lastGame.getAsDouble()))
              : "there is no game before that";
      return "%s leaves at %s; %s.".formatted(name, clock.apply(minute), plays);
    }
  }

  /** One player alone has only what nobody else is needed for. */
  record Alone() implements PlanNote {

    @Override
    public String words(IntFunction<String> clock) {
      return "Alone there is only what nobody needs to feed. Maybe let the coach play or feed as"
          + " one more, counted or not: then every drill for two comes in.";
    }
  }
}
