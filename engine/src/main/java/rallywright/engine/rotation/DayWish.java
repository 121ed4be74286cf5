package rallywright.engine.rotation;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import rallywright.engine.club.PlayerId;

/**
 * What a day of games is asked for.
 *
 * @param style how partners are found
 * @param game doubles, or lanes for new partners and ladders
 * @param courts courts at hand
 * @param rounds rounds in all; fixed pairs and couples play as many as their schedule has, but no
 *     more than this
 * @param players everybody, in order: the top of a ladder first; fixed pairs and couples one after
 *     the other, in couples the man first
 * @param apart pairs that must not meet; only for new partners
 * @param together pairs that must be partners; only for new partners
 * @param seed the same wish with the same seed gives the same day
 */
public record DayWish(
    DayStyle style,
    RotationGame game,
    int courts,
    int rounds,
    List<RotationPlayer> players,
    Set<Pairing> apart,
    Set<Pairing> together,
    long seed) {

  /** Keeps the lists as they are. */
  public DayWish {
    players = List.copyOf(players);
    apart = Set.copyOf(apart);
    together = Set.copyOf(together);
  }

  /**
   * The same wish with other players.
   *
   * @param next everybody, in order
   * @return the wish
   */
  public DayWish withPlayers(List<RotationPlayer> next) {
    return new DayWish(style, game, courts, rounds, next, apart, together, seed);
  }

  /** The same wish with one more at the end. */
  DayWish with(RotationPlayer player) {
    List<RotationPlayer> all = new ArrayList<>(players);
    all.add(player);
    return withPlayers(all);
  }

  /** The same wish where somebody leaves after a round. */
  DayWish leaving(PlayerId who, int lastRound) {
    return withPlayers(
        players.stream()
            .map(each -> each.id().equals(who) ? each.until(lastRound) : each)
            .toList());
  }

  /** The same wish with no more courts than those who are there in some round can fill. */
  DayWish onCourtsThatAreFilled() {
    int most = 0;
    for (int round = 1; round <= rounds; round++) {
      most = Math.max(most, present(round).size());
    }
    int filled = Math.min(courts, game.courtsFilledBy(most));
    return new DayWish(style, game, filled, rounds, players, apart, together, seed);
  }

  /** What the rotation of new partners is asked for, some rounds being kept. */
  RotationWish rotation(List<RotationRound> kept) {
    RotationWish wish =
        RotationWish.of(game, courts, rounds, players).withSeed(seed).withPlayed(kept);
    for (Pairing pair : apart) {
      wish = wish.keepingApart(pair);
    }
    for (Pairing pair : together) {
      wish = wish.keepingTogether(pair);
    }
    return wish;
  }

  /**
   * Who is there in a round, in order.
   *
   * @param round from 1
   * @return their ids
   */
  public List<PlayerId> present(int round) {
    return players.stream().filter(each -> each.isThere(round)).map(RotationPlayer::id).toList();
  }
}
