package rallywright.engine.skill;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * Which players are solved together. Players who never meet, not even through others, need not be.
 * A set of players who do is kept whole up to {@value #WHOLE} of them; a larger one is cut where
 * little is played across, and games across the cut are taken with an approximation (see {@link
 * CrossTerm}).
 */
final class Partition {
  /** A set of this many players is solved exactly; the cost grows with the cube of the number. */
  static final int WHOLE = 40;

  /**
   * So is a larger one that is solved in some hundredths of a second: weeks × (players × skills)³
   * multiplications, such as 200 players of one skill in one week.
   */
  static final double CHEAP = 1e7;

  /** A larger set is cut into groups of at most this many. */
  static final int LARGEST_GROUP = 28;

  /** Two groups join while a pair across meets at least this share as often as one within. */
  private static final double ALIKE = 0.25;

  private final int[] groupOf;
  private final int groups;

  private Partition(int[] groupOf) {
    Map<Integer, Integer> numbers = new HashMap<>();
    this.groupOf =
        Arrays.stream(groupOf)
            .map(group -> numbers.computeIfAbsent(group, each -> numbers.size()))
            .toArray();
    groups = Math.max(1, numbers.size());
  }

  int groups() {
    return groups;
  }

  int of(int player) {
    return groupOf[player];
  }

  /** The players of each group, ascending. */
  List<List<Integer>> players() {
    List<List<Integer>> players = new ArrayList<>();
    for (int group = 0; group < groups; group++) {
      players.add(new ArrayList<>());
    }
    for (int player = 0; player < groupOf.length; player++) {
      players.get(groupOf[player]).add(player);
    }
    return players;
  }

  /** All players in one group. */
  static Partition whole(int players) {
    return new Partition(new int[players]);
  }

  /** Groups that are given, by player. */
  static Partition ofGroups(int[] groupOf) {
    return new Partition(groupOf);
  }

  /** The groups of a club. */
  static Partition of(int players, List<? extends Evidence> evidence) {
    int[] whole = IntStream.range(0, players).toArray();
    for (Evidence piece : evidence) {
      if (piece instanceof Game game) {
        int first = game.sides().a().get(0);
        game.sides().a().forEach(player -> join(whole, first, player));
        game.sides().b().forEach(player -> join(whole, first, player));
      }
    }
    for (int player = 0; player < players; player++) {
      whole[player] = root(whole, player);
    }
    Map<Integer, List<Integer>> sets = new TreeMap<>();
    for (int player = 0; player < players; player++) {
      sets.computeIfAbsent(whole[player], each -> new ArrayList<>()).add(player);
    }
    int[] groupOf = whole.clone();
    List<List<Integer>> large =
        sets.values().stream()
            .filter(set -> set.size() > WHOLE && !(cost(set.size(), evidence) <= CHEAP))
            .toList();
    if (!large.isEmpty()) {
      Meetings meetings = new Meetings(players, evidence);
      large.forEach(set -> new Clusters(set, meetings).writeTo(groupOf));
    }
    return new Partition(groupOf);
  }

  private static double cost(int players, List<? extends Evidence> evidence) {
    Set<Integer> weeks = new HashSet<>();
    int skills = 1;
    for (Evidence piece : evidence) {
      if (piece instanceof Game game) {
        weeks.add(game.week());
        skills = game.contest().first().skills();
      }
    }
    return weeks.size() * Math.pow((double) players * skills, 3);
  }

  /**
   * The groups of a club of which some players are grouped already: they stay, and each new one
   * goes to the group with which they played most; those who met nobody are a group of their own.
   */
  Partition grown(int players, List<? extends Evidence> evidence) {
    if (players == groupOf.length) {
      return this;
    }
    Meetings meetings = new Meetings(players, evidence);
    int[] grown = Arrays.copyOf(groupOf, players);
    for (int player = groupOf.length; player < players; player++) {
      Map<Integer, Double> with = new TreeMap<>();
      int newcomer = player;
      meetings
          .of(player)
          .forEach(
              (other, times) -> {
                if (other < newcomer) {
                  with.merge(grown[other], times, Double::sum);
                }
              });
      grown[player] =
          with.entrySet().stream()
              .max(Map.Entry.comparingByValue())
              .map(Map.Entry::getKey)
              .orElse(groups + player);
    }
    return new Partition(grown);
  }

  private static int root(int[] parent, int player) {
    int at = player;
    while (parent[at] != at) {
      parent[at] = parent[parent[at]];
      at = parent[at];
    }
    return at;
  }

  private static void join(int[] parent, int a, int b) {
    int first = root(parent, a);
    int second = root(parent, b);
    parent[Math.max(first, second)] = Math.min(first, second);
  }

  /** How often two players were in one game. */
  private static final class Meetings {
    private final List<Map<Integer, Double>> times = new ArrayList<>();

    private Meetings(int players, List<? extends Evidence> evidence) {
      for (int player = 0; player < players; player++) {
        times.add(new TreeMap<>());
      }
      for (Evidence piece : evidence) {
        if (piece instanceof Game game) {
          List<Integer> all = new ArrayList<>(game.sides().a());
          all.addAll(game.sides().b());
          for (int a : all) {
            for (int b : all) {
              if (a != b) {
                times.get(a).merge(b, 1.0, Double::sum);
              }
            }
          }
        }
      }
    }

    private Map<Integer, Double> of(int player) {
      return times.get(player);
    }
  }

  /**
   * Clusters of one set of players by average linkage: the two whose players meet most often join,
   * while they are not too large and do not clearly keep to themselves.
   */
  private static final class Clusters {
    private final List<Integer> players;
    private final List<Map<Integer, Double>> between = new ArrayList<>();
    private final double[] within;
    private final int[] sizes;
    private final int[] clusterOf;

    private Clusters(List<Integer> players, Meetings meetings) {
      this.players = players;
      int count = players.size();
      within = new double[count];
      sizes = new int[count];
      Arrays.fill(sizes, 1);
      clusterOf = IntStream.range(0, count).toArray();
      Map<Integer, Integer> places = new HashMap<>();
      players.forEach(player -> places.put(player, places.size()));
      for (int player : players) {
        Map<Integer, Double> own = new HashMap<>();
        meetings.of(player).forEach((other, times) -> own.put(placeOf(places, other), times));
        between.add(own);
      }
      boolean joined = true;
      while (joined) {
        joined = joinClosest();
      }
    }

    private static int placeOf(Map<Integer, Integer> places, int player) {
      Integer place = places.get(player);
      if (place == null) {
        throw new IllegalStateException("Player " + player + " is not of this set.");
      }
      return place;
    }

    private boolean joinClosest() {
      int[] best = {-1, -1};
      double closest = 0;
      for (int a = 0; a < sizes.length; a++) {
        for (Map.Entry<Integer, Double> entry : between.get(a).entrySet()) {
          int b = entry.getKey();
          double rate = entry.getValue() / ((double) sizes[a] * sizes[b]);
          if (a < b && rate > closest && mayJoin(a, b, rate)) {
            closest = rate;
            best = new int[] {a, b};
          }
        }
      }
      if (best[0] >= 0) {
        join(best[0], best[1]);
      }
      return best[0] >= 0;
    }

    private boolean mayJoin(int a, int b, double rate) {
      return sizes[a] + sizes[b] <= LARGEST_GROUP
          && rate >= ALIKE * Math.min(rateWithin(a), rateWithin(b));
    }

    /** How often a pair of the cluster meets; of few players nothing is known yet. */
    private double rateWithin(int cluster) {
      double pairs = sizes[cluster] * (sizes[cluster] - 1) / 2.0;
      return sizes[cluster] < 4 ? 0 : within[cluster] / pairs;
    }

    private void join(int a, int b) {
      within[a] += within[b] + between.get(a).getOrDefault(b, 0.0);
      sizes[a] += sizes[b];
      sizes[b] = 0;
      between
          .get(b)
          .forEach(
              (other, times) -> {
                between.get(other).remove(b);
                if (other != a) {
                  between.get(a).merge(other, times, Double::sum);
                  between.get(other).merge(a, times, Double::sum);
                }
              });
      between.get(b).clear();
      between.get(a).remove(b);
      for (int i = 0; i < clusterOf.length; i++) {
        clusterOf[i] = clusterOf[i] == b ? a : clusterOf[i];
      }
    }

    private void writeTo(int[] groupOf) {
      for (int i = 0; i < clusterOf.length; i++) {
        groupOf[players.get(i)] = players.get(clusterOf[i]);
      }
    }
  }
}
