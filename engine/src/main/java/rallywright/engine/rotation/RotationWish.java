package rallywright.engine.rotation;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import rallywright.engine.club.PlayerId;
import rallywright.engine.score.GameFormat;

/**
 * What a rotation is asked for.
 *
 * <p>To plan anew when somebody comes late, leaves or is hurt, change the player's rounds ({@link
 * RotationPlayer#from}, {@link RotationPlayer#until}) and hand over the rounds that were played
 * ({@link #withPlayed}): they stay as they are and count.
 *
 * @param game how players are put together
 * @param courts courts at hand, 1 to {@value #MOST_COURTS}
 * @param rounds rounds in all, those played included, 1 to {@value #MOST_ROUNDS}
 * @param players everyone who is there in any round
 * @param apart pairs that must not meet, neither as partners nor as opponents
 * @param together pairs that must be partners (mates of a lane) in each round
 * @param played rounds that were played already, in order from round 1
 * @param format how a match is counted: the head starts of uneven matches follow from it
 * @param seed the same wish with the same seed gives the same rotation
 */
public record RotationWish(
    RotationGame game,
    int courts,
    int rounds,
    List<RotationPlayer> players,
    Set<Pairing> apart,
    Set<Pairing> together,
    List<RotationRound> played,
    GameFormat format,
    long seed) {

  /** More courts than this are refused. */
  public static final int MOST_COURTS = 12;

  /** More rounds than this are refused. */
  public static final int MOST_ROUNDS = 60;

  /** More players than this are refused. */
  public static final int MOST_PLAYERS = 40;

  /** Keeps the lists as they are. */
  public RotationWish {
    players = List.copyOf(players);
    apart = Set.copyOf(apart);
    together = Set.copyOf(together);
    played = List.copyOf(played);
  }

  /**
   * A wish without pairs and without rounds played: doubles to 11, other games to 5.
   *
   * @param game how players are put together
   * @param courts courts at hand
   * @param rounds rounds in all
   * @param players who is there
   * @return the wish
   */
  public static RotationWish of(
      RotationGame game, int courts, int rounds, List<RotationPlayer> players) {
    GameFormat format =
        game.form() == RotationGame.Form.PAIRS ? GameFormat.DOUBLES_TO_11 : GameFormat.DRILL_GAME;
    return new RotationWish(
        game, courts, rounds, players, Set.of(), Set.of(), List.of(), format, 1);
  }

  /**
   * Players named "1" to "n", all of the same strength.
   *
   * @param count how many
   * @return the players
   */
  public static List<RotationPlayer> numbered(int count) {
    return Stream.iterate(1, number -> number + 1)
        .limit(count)
        .map(number -> RotationPlayer.of(new PlayerId(String.valueOf(number)), 0))
        .toList();
  }

  /**
   * The same wish with other players.
   *
   * @param next who is there
   * @return the wish
   */
  public RotationWish withPlayers(List<RotationPlayer> next) {
    return new RotationWish(game, courts, rounds, next, apart, together, played, format, seed);
  }

  /**
   * The same wish with a pair that must not meet.
   *
   * @param pair the two
   * @return the wish
   */
  public RotationWish keepingApart(Pairing pair) {
    return new RotationWish(
        game, courts, rounds, players, joined(apart, pair), together, played, format, seed);
  }

  /**
   * The same wish with a pair that must be partners in each round.
   *
   * @param pair the two
   * @return the wish
   */
  public RotationWish keepingTogether(Pairing pair) {
    return new RotationWish(
        game, courts, rounds, players, apart, joined(together, pair), played, format, seed);
  }

  /**
   * The same wish after some rounds.
   *
   * @param done the rounds that were played, from round 1
   * @return the wish
   */
  public RotationWish withPlayed(List<RotationRound> done) {
    return new RotationWish(game, courts, rounds, players, apart, together, done, format, seed);
  }

  /**
   * The same wish for another way of counting.
   *
   * @param next how a match is counted
   * @return the wish
   */
  public RotationWish withFormat(GameFormat next) {
    return new RotationWish(game, courts, rounds, players, apart, together, played, next, seed);
  }

  /**
   * The same wish with another seed.
   *
   * @param next any number
   * @return the wish
   */
  public RotationWish withSeed(long next) {
    return new RotationWish(game, courts, rounds, players, apart, together, played, format, next);
  }

  /**
   * The same wish when somebody leaves early.
   *
   * @param who the player
   * @param lastRound the last round they play
   * @return the wish; unchanged if nobody has that id
   */
  public RotationWish leaving(PlayerId who, int lastRound) {
    return withPlayers(
        players.stream()
            .map(each -> each.id().equals(who) ? each.until(lastRound) : each)
            .toList());
  }

  /**
   * The same wish when somebody comes late.
   *
   * @param player who, with the first round they can play
   * @return the wish
   */
  public RotationWish arriving(RotationPlayer player) {
    List<RotationPlayer> all = new ArrayList<>(players);
    all.removeIf(each -> each.id().equals(player.id()));
    all.add(player);
    return withPlayers(all);
  }

  private static Set<Pairing> joined(Set<Pairing> pairs, Pairing one) {
    Set<Pairing> all = new LinkedHashSet<>(pairs);
    all.add(one);
    return all;
  }
}
