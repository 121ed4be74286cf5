package rallywright.engine.rotation;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rallywright.engine.club.PlayerId;

/** A wish in numbers: players by place from 0, rounds by place from 0. */
final class RotationProblem {

  private static final double MILLI = 1000;

  private final RotationWish wish;
  private final Map<PlayerId, Integer> places = new HashMap<>();
  private final int[] millilogits;
  private final int[][] present;
  private final int[] groups;
  private final long[] closeRepeat;
  private final long[] closeFlat;
  private final long[] acrossFlat;
  private final double[] share;

  RotationProblem(RotationWish wish) {
    this.wish = wish;
    int players = wish.players().size();
    millilogits = new int[players];
    for (int place = 0; place < players; place++) {
      places.put(wish.players().get(place).id(), place);
      millilogits[place] = (int) Math.rint(MILLI * wish.players().get(place).strengthLogits());
    }
    present = new int[wish.rounds()][];
    groups = new int[wish.rounds()];
    share = new double[players];
    for (int round = 0; round < wish.rounds(); round++) {
      fill(round);
    }
    closeRepeat = new long[players * players];
    closeFlat = new long[players * players];
    acrossFlat = new long[players * players];
    boolean pairs = wish.game().form() == RotationGame.Form.PAIRS;
    Arrays.fill(closeRepeat, pairs ? RotationCost.PARTNER_AGAIN : RotationCost.MATE_AGAIN);
    wish.apart().forEach(pair -> addBoth(closeFlat, pair, RotationCost.APART_MET));
    wish.apart().forEach(pair -> addBoth(acrossFlat, pair, RotationCost.APART_MET));
    wish.together().forEach(pair -> addBoth(closeFlat, pair, -RotationCost.TOGETHER_MISSED));
    wish.together().forEach(pair -> addBoth(closeRepeat, pair, -closeRepeat[cell(pair)]));
  }

  private void fill(int round) {
    if (round < kept()) {
      RotationRound played = wish.played().get(round);
      groups[round] = played.matches().size();
      present[round] =
          java.util.stream.Stream.concat(
                  played.matches().stream().flatMap(match -> match.players().stream()),
                  played.sitting().stream())
              .mapToInt(this::placeOf)
              .toArray();
    } else {
      int number = round + 1;
      present[round] =
          wish.players().stream()
              .filter(player -> player.isThere(number))
              .mapToInt(player -> placeOf(player.id()))
              .toArray();
      groups[round] = wish.game().groups(present[round].length, wish.courts());
    }
    int sitting = present[round].length - groups[round] * wish.game().size();
    for (int player : present[round]) {
      share[player] += (double) sitting / present[round].length;
    }
  }

  private int cell(Pairing pair) {
    return placeOf(pair.one()) * players() + placeOf(pair.other());
  }

  private void addBoth(long[] table, Pairing pair, long cost) {
    int one = placeOf(pair.one());
    int other = placeOf(pair.other());
    table[one * players() + other] += cost;
    table[other * players() + one] += cost;
  }

  RotationWish wish() {
    return wish;
  }

  RotationGame game() {
    return wish.game();
  }

  int players() {
    return millilogits.length;
  }

  int rounds() {
    return groups.length;
  }

  /** Rounds that were played and stay as they are. */
  int kept() {
    return Math.min(wish.played().size(), wish.rounds());
  }

  int placeOf(PlayerId player) {
    Integer place = places.get(player);
    if (place == null) {
      throw new IllegalArgumentException("The player %s is not known.".formatted(player));
    }
    return place;
  }

  PlayerId idOf(int place) {
    return wish.players().get(place).id();
  }

  int[] present(int round) {
    return present[round];
  }

  int groups(int round) {
    return groups[round];
  }

  int seats(int round) {
    return groups[round] * game().size();
  }

  int millilogits(int player) {
    return millilogits[player];
  }

  boolean hasStrengths() {
    return Arrays.stream(millilogits).anyMatch(each -> each != millilogits[0]);
  }

  /** Nobody comes late or leaves, nothing is played, no wish for pairs. */
  boolean isPlain() {
    return kept() == 0
        && wish.apart().isEmpty()
        && wish.together().isEmpty()
        && Arrays.stream(present).allMatch(each -> each.length == players());
  }

  long[] closeRepeat() {
    return closeRepeat;
  }

  long[] closeFlat() {
    return closeFlat;
  }

  long[] acrossFlat() {
    return acrossFlat;
  }

  /** How often a player sits out if all sit out evenly, over all rounds. */
  double fairSitOuts(int player) {
    return share[player];
  }

  /** The cost of sitting out so often. */
  long sittingCost(int player, int times) {
    double off = times - share[player];
    return Math.round(RotationCost.UNEVEN_SIT_OUT * off * off);
  }

  /** What those who keep together cost before any of them is put together. */
  long togetherCost() {
    long cost = 0;
    for (Pairing pair : wish.together()) {
      int one = placeOf(pair.one());
      int other = placeOf(pair.other());
      for (int[] there : present) {
        boolean both = contains(there, one) && contains(there, other);
        cost += both ? RotationCost.TOGETHER_MISSED : 0;
      }
    }
    return cost;
  }

  private static boolean contains(int[] players, int player) {
    return Arrays.stream(players).anyMatch(each -> each == player);
  }

  /**
   * No rotation has partners and opponents that cost less: all meetings spread evenly over all
   * pairs (a counting bound). With pairs that keep together nothing is claimed.
   */
  long leastMeetingCost() {
    if (!wish.together().isEmpty() || players() < 2) {
      return 0;
    }
    boolean pairs = game().form() == RotationGame.Form.PAIRS;
    long closePerGroup = pairs ? 2 : RotationCost.pairsOf(game().size());
    long allGroups = Arrays.stream(groups).asLongStream().sum();
    long pairCount = RotationCost.pairsOf(players());
    long close = RotationCost.leastRepeats(closePerGroup * allGroups, pairCount);
    long across = pairs ? RotationCost.leastRepeats(4 * allGroups, pairCount) : 0;
    return close * closeRepeat[1] + across * RotationCost.OPPONENT_AGAIN;
  }

  /** The rounds that are played already, as places: seats first, then those who sit out. */
  int[][] keptLines() {
    return Arrays.copyOf(present, kept());
  }

  List<RotationRound> keptRounds() {
    return wish.played().subList(0, kept());
  }
}
