package rallywright.engine.rotation;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rallywright.engine.club.PlayerId;
import rallywright.engine.drill.DrillKey;

/**
 * A day of games as it is kept.
 *
 * @param id what it is known by, 1 to {@value #LONGEST_ID} characters
 * @param name what the coach calls it, 1 to {@value #LONGEST_NAME} characters
 * @param date the day
 * @param drill the drill game that is played, or null for doubles and for lanes without one
 * @param day the rounds and scores
 */
public record SavedDay(
    String id, String name, LocalDate date, @Nullable DrillKey drill, PlayDay day) {

  /** The longest id. */
  public static final int LONGEST_ID = 64;

  /** The longest name. */
  public static final int LONGEST_NAME = 80;

  /** Checks the lengths. */
  public SavedDay {
    if (id.isBlank() || id.length() > LONGEST_ID) {
      throw new IllegalArgumentException(
          "The id \"%s\" must have 1 to %d characters.".formatted(id, LONGEST_ID));
    }
    if (name.isBlank() || name.length() > LONGEST_NAME) {
      throw new IllegalArgumentException(
          "The name \"%s\" must have 1 to %d characters.".formatted(name, LONGEST_NAME));
    }
  }

  /**
   * The same with rounds and scores as they are now.
   *
   * @param next the day
   * @return the saved day
   */
  public SavedDay with(PlayDay next) {
    return new SavedDay(id, name, date, drill, next);
  }

  /**
   * Everybody whom it names.
   *
   * @return their ids
   */
  public Set<PlayerId> named() {
    Stream<PlayerId> asked = day.wish().players().stream().map(RotationPlayer::id);
    Stream<PlayerId> placed =
        day.rounds().stream()
            .flatMap(
                round ->
                    Stream.concat(
                        round.sitting().stream(),
                        round.matches().stream().flatMap(match -> match.players().stream())));
    return Stream.concat(asked, placed).collect(Collectors.toSet());
  }

  /**
   * The same with other players in place of some.
   *
   * @param other gives another id for each; no two may become one
   * @return the saved day
   */
  public SavedDay replaced(UnaryOperator<PlayerId> other) {
    DayWish wish = day.wish();
    DayWish renamed =
        new DayWish(
            wish.style(),
            wish.game(),
            wish.courts(),
            wish.rounds(),
            wish.players().stream()
                .map(
                    each ->
                        new RotationPlayer(
                            other.apply(each.id()),
                            each.strengthLogits(),
                            each.firstRound(),
                            each.lastRound()))
                .toList(),
            replaced(wish.apart(), other),
            replaced(wish.together(), other),
            wish.seed());
    List<RotationRound> rounds =
        day.rounds().stream()
            .map(
                round ->
                    new RotationRound(
                        round.number(),
                        round.matches().stream().map(match -> replaced(match, other)).toList(),
                        round.sitting().stream().map(other).toList()))
            .toList();
    return with(new PlayDay(renamed, rounds, day.results(), day.now()));
  }

  private static Set<Pairing> replaced(Set<Pairing> pairs, UnaryOperator<PlayerId> other) {
    return pairs.stream()
        .map(pair -> new Pairing(other.apply(pair.one()), other.apply(pair.other())))
        .collect(Collectors.toSet());
  }

  private static RotationMatch replaced(RotationMatch match, UnaryOperator<PlayerId> other) {
    return new RotationMatch(
        match.court(),
        match.lane(),
        match.a().stream().map(other).toList(),
        match.b().stream().map(other).toList(),
        match.headStart());
  }
}
