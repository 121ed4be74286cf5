package rallywright.engine.rotation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import rallywright.engine.club.PlayerId;
import rallywright.engine.score.Side;

/**
 * Winners move up a rung, losers move down; a rung is a court in doubles and a lane on lanes.
 *
 * <p>So that nobody is stuck at an end, nobody plays more than {@value #MOST_RUNNING} rounds
 * running on the top rung or on the bottom rung: who would, changes places with somebody from the
 * next rung. Those who sit out keep their place in the order; sit-outs are even. Partners change:
 * of the three ways to split four players the one with the fewest repeated partners is taken.
 */
public final class Ladder {

  /** Rounds running on an end rung after which a player moves in any case (our assumption). */
  public static final int MOST_RUNNING = 3;

  private static final int[][] SPLITS = {{0, 3, 1, 2}, {0, 2, 1, 3}, {0, 1, 2, 3}};

  private final RotationGame game;
  private final int courts;
  private final Map<PlayerId, Climber> climbers;
  private final RotationRound round;

  /**
   * What is kept of a player.
   *
   * @param rung the rung of their latest round, from 0; -1 before their first
   * @param running rounds running on that rung
   * @param sits times they sat out
   * @param lastSat the round of their latest sit-out, 0 if none
   * @param partners how often each other player was their partner
   */
  private record Climber(
      int rung, int running, int sits, int lastSat, Map<PlayerId, Integer> partners) {

    static final Climber NEW = new Climber(-1, 0, 0, 0, Map.of());

    Climber sitting(int round) {
      return new Climber(-1, 0, sits + 1, round, partners);
    }

    Climber on(int next, List<PlayerId> side, PlayerId self) {
      Map<PlayerId, Integer> met = new HashMap<>(partners);
      side.stream().filter(mate -> !mate.equals(self)).forEach(m -> met.merge(m, 1, Integer::sum));
      return new Climber(next, next == rung ? running + 1 : 1, sits, lastSat, met);
    }

    static Climber late(int sits) {
      return new Climber(-1, 0, sits, 0, Map.of());
    }

    boolean wouldBeStuckOn(int next) {
      return rung == next && running >= MOST_RUNNING;
    }
  }

  private final List<PlayerId> order;

  private Ladder(
      RotationGame game,
      int courts,
      List<PlayerId> order,
      Map<PlayerId, Climber> climbers,
      int number) {
    this.game = game;
    this.courts = courts;
    this.climbers = new HashMap<>(climbers);
    this.order = new ArrayList<>(order);
    round = next(number);
  }

  /**
   * The first round.
   *
   * @param game doubles or lanes
   * @param courts courts at hand
   * @param order the players, who starts at the top first
   * @return the ladder
   * @throws IllegalArgumentException if there are too few players, too many courts, or groups that
   *     have no two sides
   */
  public static Ladder start(RotationGame game, int courts, List<PlayerId> order) {
    List<RotationPlayer> players =
        order.stream().map(player -> RotationPlayer.of(player, 0)).toList();
    List<String> problems = RotationCheck.problems(RotationWish.of(game, courts, 1, players));
    if (!problems.isEmpty()) {
      throw new IllegalArgumentException(problems.get(0));
    }
    if (game.size() > 2 && game.form() == RotationGame.Form.MATES) {
      throw new IllegalArgumentException(
          "A ladder (%s) must have two sides that play each other. Maybe doubles."
              .formatted(game.words()));
    }
    Map<PlayerId, Climber> climbers = new HashMap<>();
    order.forEach(player -> climbers.put(player, Climber.NEW));
    return new Ladder(game, courts, order, climbers, 1);
  }

  /**
   * The round to play now: the first match is the top rung.
   *
   * @return the round
   */
  public RotationRound round() {
    return round;
  }

  /**
   * The order of the ladder, those who sit out included.
   *
   * @return the players, the top first
   */
  public List<PlayerId> order() {
    return List.copyOf(order);
  }

  /**
   * The ladder after a round.
   *
   * @param winners the winning side of each match, in the order of the round
   * @return the ladder with its next round
   * @throws IllegalArgumentException unless there is one winner for each match
   */
  public Ladder after(List<Side> winners) {
    return after(winners, order);
  }

  /**
   * The ladder after a round, when players have left or come. Who comes starts at the foot and
   * counts as having sat out as often as others, so that they play at once.
   *
   * @param winners the winning side of each match, in the order of the round
   * @param present who is there in the next round
   * @return the ladder with its next round
   * @throws IllegalArgumentException unless there is one winner for each match
   */
  public Ladder after(List<Side> winners, List<PlayerId> present) {
    if (winners.size() != round.matches().size()) {
      throw new IllegalArgumentException(
          "The number of winners (%d) must be that of the matches (%d). Maybe one is missing."
              .formatted(winners.size(), round.matches().size()));
    }
    List<PlayerId> moved = new ArrayList<>();
    for (int rung = 0; rung <= winners.size(); rung++) {
      // Before the first rung its winners; between two rungs who comes up, then who goes down.
      if (rung < winners.size()) {
        moved.addAll(side(rung, winners.get(rung)));
      }
      if (rung > 0) {
        moved.addAll(side(rung - 1, winners.get(rung - 1).opponent()));
      }
    }
    List<PlayerId> next = moved(moved);
    int sits = climbers.values().stream().mapToInt(Climber::sits).max().orElse(0);
    next.retainAll(present);
    for (PlayerId player : present) {
      if (!next.contains(player)) {
        next.add(player);
        climbers.put(player, Climber.late(sits));
      }
    }
    return new Ladder(game, courts, next, climbers, round.number() + 1);
  }

  /** The order in which those who played have changed places; who sat out stays where they were. */
  private List<PlayerId> moved(List<PlayerId> moved) {
    List<PlayerId> next = new ArrayList<>(order);
    Set<PlayerId> playing = new HashSet<>(moved);
    int from = 0;
    for (int place = 0; place < next.size(); place++) {
      if (playing.contains(next.get(place))) {
        next.set(place, moved.get(from++));
      }
    }
    return next;
  }

  private List<PlayerId> side(int rung, Side side) {
    RotationMatch match = round.matches().get(rung);
    return side == Side.A ? match.a() : match.b();
  }

  private RotationRound next(int number) {
    int rungs = game.groups(order.size(), courts);
    List<PlayerId> sitting = sitting(order.size() - rungs * game.size(), number);
    List<PlayerId> playing = new ArrayList<>(order);
    playing.removeAll(sitting);
    if (rungs > 1) {
      release(playing, 0, 1);
      release(playing, rungs - 1, rungs - 2);
    }
    List<RotationMatch> matches = new ArrayList<>();
    for (int rung = 0; rung < rungs; rung++) {
      matches.add(match(rung, playing.subList(rung * game.size(), (rung + 1) * game.size())));
    }
    sitting.forEach(player -> climbers.computeIfPresent(player, (id, c) -> c.sitting(number)));
    return new RotationRound(number, matches, sitting);
  }

  private List<PlayerId> sitting(int count, int number) {
    return order.stream()
        .sorted(
            Comparator.comparing((PlayerId player) -> number > 1 && satIn(player, number - 1))
                .thenComparing(player -> climber(player).sits())
                .thenComparing(player -> climber(player).lastSat())
                .thenComparing(player -> -order.indexOf(player)))
        .limit(count)
        .toList();
  }

  private boolean satIn(PlayerId player, int number) {
    return climber(player).lastSat() == number;
  }

  private Climber climber(PlayerId player) {
    return climbers.getOrDefault(player, Climber.NEW);
  }

  /** Who would be stuck on a rung changes places with somebody from the next one. */
  private void release(List<PlayerId> playing, int rung, int neighbour) {
    int size = game.size();
    for (int place = rung * size; place < (rung + 1) * size; place++) {
      if (climber(playing.get(place)).wouldBeStuckOn(rung)) {
        int with = substitute(playing, rung, neighbour);
        PlayerId stuck = playing.get(place);
        playing.set(place, playing.get(with));
        playing.set(with, stuck);
      }
    }
  }

  /** Somebody who would not be stuck here, first of all one who would be stuck there. */
  private int substitute(List<PlayerId> playing, int rung, int neighbour) {
    int size = game.size();
    int found = -1;
    for (int place = neighbour * size; place < (neighbour + 1) * size; place++) {
      Climber climber = climber(playing.get(place));
      if (!climber.wouldBeStuckOn(rung) && (found < 0 || climber.wouldBeStuckOn(neighbour))) {
        found = place;
      }
    }
    if (found < 0) {
      throw new IllegalStateException("Nobody can change places on the ladder.");
    }
    return found;
  }

  private RotationMatch match(int rung, List<PlayerId> group) {
    List<PlayerId> sides = game.size() == 2 ? group : split(group);
    List<PlayerId> a = List.copyOf(sides.subList(0, game.size() / 2));
    List<PlayerId> b = List.copyOf(sides.subList(game.size() / 2, game.size()));
    a.forEach(player -> climbers.computeIfPresent(player, (id, c) -> c.on(rung, a, id)));
    b.forEach(player -> climbers.computeIfPresent(player, (id, c) -> c.on(rung, b, id)));
    return new RotationMatch(
        rung / game.perCourt() + 1, rung % game.perCourt() + 1, a, b, RotationMatch.EVEN);
  }

  private List<PlayerId> split(List<PlayerId> four) {
    List<PlayerId> best = List.of();
    int fewest = Integer.MAX_VALUE;
    for (int[] split : SPLITS) {
      List<PlayerId> sides = java.util.Arrays.stream(split).mapToObj(four::get).toList();
      int repeats = met(sides.get(0), sides.get(1)) + met(sides.get(2), sides.get(3));
      if (repeats < fewest) {
        fewest = repeats;
        best = sides;
      }
    }
    return best;
  }

  private int met(PlayerId one, PlayerId other) {
    return climber(one).partners().getOrDefault(other, 0);
  }
}
