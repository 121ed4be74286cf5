package rallywright.engine.rotation;

import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import rallywright.engine.club.PlayerId;

/**
 * What a rotation comes to, counted from its rounds.
 *
 * @param partnerRepeats meetings of partners, or mates of a lane or group, after their first
 * @param opponentExcess meetings of opponents beyond the even share, rounded up: with every meeting
 *     spread evenly over all pairs it is 0; in lanes and groups all are mates, and it is 0 too
 * @param worstDifference the largest difference between two sides of a match in logits, of partners
 *     the mean; in a group of mates between its strongest and weakest
 * @param mostSitOuts the most times that anybody sits out
 * @param fewestSitOuts the fewest times that anybody who is there throughout sits out
 * @param twiceRunning sit-outs that follow one of the same player at once
 * @param apartMeetings meetings of pairs that were to keep apart
 * @param togetherMisses rounds in which a pair that was to keep together is there but not so
 */
public record RotationMeasures(
    int partnerRepeats,
    int opponentExcess,
    double worstDifference,
    int mostSitOuts,
    int fewestSitOuts,
    int twiceRunning,
    int apartMeetings,
    int togetherMisses) {

  /**
   * Counts what rounds come to.
   *
   * @param wish the wish, for strengths and pairs
   * @param rounds the rounds
   * @return the counts
   * @throws IllegalArgumentException if a round names a player that the wish does not
   */
  public static RotationMeasures of(RotationWish wish, List<RotationRound> rounds) {
    return new Count(wish, rounds).measures();
  }

  /** The counts on the way. */
  private static final class Count {
    private final RotationWish wish;
    private final List<RotationRound> rounds;
    private final RotationProblem problem;
    private final Map<Pairing, Integer> close = new HashMap<>();
    private final Map<Pairing, Integer> across = new HashMap<>();
    private final Map<PlayerId, Integer> sits = new HashMap<>();
    private double worst;
    private int twice;

    Count(RotationWish wish, List<RotationRound> rounds) {
      this.wish = wish;
      this.rounds = rounds;
      problem = new RotationProblem(wish);
      wish.players().stream()
          .filter(player -> rounds.stream().allMatch(round -> player.isThere(round.number())))
          .forEach(player -> sits.put(player.id(), 0));
      Set<PlayerId> satLast = new HashSet<>();
      for (RotationRound round : rounds) {
        round.matches().forEach(this::count);
        round.sitting().forEach(player -> sits.merge(player, 1, Integer::sum));
        twice += (int) round.sitting().stream().filter(satLast::contains).count();
        satLast = new HashSet<>(round.sitting());
      }
    }

    private void count(RotationMatch match) {
      List<PlayerId> all = match.players();
      for (int seat = 0; seat < all.size(); seat++) {
        for (int mate = seat + 1; mate < all.size(); mate++) {
          boolean isClose = wish.game().relation(seat, mate) == RotationGame.Relation.CLOSE;
          (isClose ? close : across)
              .merge(new Pairing(all.get(seat), all.get(mate)), 1, Integer::sum);
        }
      }
      worst = Math.max(worst, difference(match));
    }

    private double difference(RotationMatch match) {
      if (wish.game().form() == RotationGame.Form.PAIRS) {
        return Math.abs(UnevenMatches.difference(strengths(match.a()), strengths(match.b())));
      }
      List<Double> all = strengths(match.players());
      double most = all.stream().mapToDouble(Double::doubleValue).max().orElse(0);
      double least = all.stream().mapToDouble(Double::doubleValue).min().orElse(0);
      return most - least;
    }

    private List<Double> strengths(List<PlayerId> players) {
      Function<PlayerId, Double> strength =
          player -> wish.players().get(problem.placeOf(player)).strengthLogits();
      return players.stream().map(strength).collect(Collectors.toList());
    }

    RotationMeasures measures() {
      return new RotationMeasures(
          close.values().stream().mapToInt(times -> times - 1).sum(),
          opponentExcess(),
          worst,
          most(sits.values()),
          fewest(),
          twice,
          apartMeetings(),
          togetherMisses());
    }

    private int opponentExcess() {
      long meetings = across.values().stream().mapToLong(Integer::longValue).sum();
      long pairs = Math.max(1, RotationCost.pairsOf(wish.players().size()));
      long share = (meetings + pairs - 1) / pairs;
      return (int) across.values().stream().mapToLong(times -> Math.max(0, times - share)).sum();
    }

    private int fewest() {
      return sits.entrySet().stream()
          .filter(entry -> thereThroughout(entry.getKey()))
          .mapToInt(Map.Entry::getValue)
          .min()
          .orElse(0);
    }

    private boolean thereThroughout(PlayerId id) {
      RotationPlayer player = wish.players().get(problem.placeOf(id));
      return rounds.stream().allMatch(round -> player.isThere(round.number()));
    }

    private static int most(Collection<Integer> counts) {
      return counts.stream().mapToInt(Integer::intValue).max().orElse(0);
    }

    private int apartMeetings() {
      return wish.apart().stream()
          .mapToInt(pair -> close.getOrDefault(pair, 0) + across.getOrDefault(pair, 0))
          .sum();
    }

    private int togetherMisses() {
      int misses = 0;
      for (Pairing pair : wish.together()) {
        long both =
            rounds.stream()
                .filter(round -> names(round, pair.one()) && names(round, pair.other()))
                .count();
        misses += (int) both - close.getOrDefault(pair, 0);
      }
      return misses;
    }

    private static boolean names(RotationRound round, PlayerId player) {
      return round.sitting().contains(player)
          || round.matches().stream().anyMatch(match -> match.players().contains(player));
    }
  }
}
