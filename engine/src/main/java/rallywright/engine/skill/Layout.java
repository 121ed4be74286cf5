package rallywright.engine.skill;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;

/**
 * Where each skill of each player of a group in each week stands among the latents of that group,
 * in the order of elimination, with what all groups share at the end.
 *
 * <p>A player has a node (a block of all skills) in the first week, in each week with evidence and
 * in each week that is asked for; what lies between follows exactly. First come the nodes that
 * touch nobody else (no game: the player's own chain), then those with games by week, last the
 * border. So a front never holds more than about one node of each player of a group.
 */
final class Layout {
  private record Node(int player, int week, boolean hasGame) {}

  private static final Comparator<Node> ORDER =
      Comparator.comparing(Node::hasGame)
          .thenComparingInt(node -> node.hasGame ? node.week : node.player)
          .thenComparingInt(node -> node.hasGame ? node.player : node.week);

  /** An update rarely reaches further back. */
  private static final int LATE_WEEKS = 4;

  private final Club club;
  private final Border border;
  private final List<Integer> players;
  private final Map<Integer, TreeMap<Integer, Integer>> nodes = new HashMap<>();
  private final BlockGraph graph;
  private final Drift drift;
  private final int[] playerOf;
  private final int lateNode;

  private Layout(Club club, Border border, List<Integer> players, Pieces pieces) {
    this.club = club;
    this.border = border;
    this.players = List.copyOf(players);
    this.drift = pieces.drift;
    List<Node> ordered = pieces.ordered();
    players.forEach(player -> nodes.put(player, new TreeMap<>()));
    for (int i = 0; i < ordered.size(); i++) {
      chain(ordered.get(i).player).put(ordered.get(i).week, i);
    }
    playerOf = ordered.stream().mapToInt(Node::player).toArray();
    int[] sizes = new int[ordered.size() + (border.size() > 0 ? 1 : 0)];
    Arrays.fill(sizes, club.skills().skills());
    if (border.size() > 0) {
      sizes[ordered.size()] = border.size();
    }
    graph = new BlockGraph(sizes);
    players.forEach(this::connectChain);
    startSections(ordered);
    lateNode = lateNode(ordered);
  }

  /** Each week with games and the border, so that an update may take up where a week starts. */
  private void startSections(List<Node> ordered) {
    for (int node = 0; node < ordered.size(); node++) {
      if (ordered.get(node).hasGame && (node == 0 || !sameWeek(ordered, node))) {
        graph.startSection(node);
      }
    }
    if (border.size() > 0) {
      graph.startSection(ordered.size());
    }
  }

  /**
   * The first node with a game of a week, about {@link #LATE_WEEKS} weeks of nodes from the end.
   */
  private int lateNode(List<Node> ordered) {
    int node = ordered.size() - LATE_WEEKS * players.size();
    while (node > 0 && sameWeek(ordered, node)) {
      node--;
    }
    return node > 0 && ordered.get(node).hasGame ? node : 0;
  }

  private static boolean sameWeek(List<Node> ordered, int node) {
    return ordered.get(node - 1).hasGame && ordered.get(node - 1).week == ordered.get(node).week;
  }

  /** Which weeks of which players need a node. */
  private static final class Pieces {
    private final Map<Integer, BitSet> asked = new HashMap<>();
    private final Map<Integer, BitSet> games = new HashMap<>();
    private final Drift drift;

    private Pieces(Drift drift) {
      this.drift = drift;
    }

    private void add(Evidence piece) {
      if (piece instanceof Game game) {
        for (int player : game.sides().a()) {
          add(games, player, game.week());
        }
        for (int player : game.sides().b()) {
          add(games, player, game.week());
        }
      } else if (piece instanceof YardstickResult result) {
        add(asked, result.test().player(), result.week());
      }
    }

    /** Players of other groups, who may be guests in a game, have no node here. */
    private static void add(Map<Integer, BitSet> weeks, int player, int week) {
      BitSet own = weeks.get(player);
      if (own != null) {
        own.set(week);
      }
    }

    private List<Node> ordered() {
      List<Node> ordered = new ArrayList<>();
      asked.forEach(
          (player, own) -> {
            BitSet played = games.getOrDefault(player, new BitSet());
            own.or(played);
            own.stream().forEach(week -> ordered.add(new Node(player, week, played.get(week))));
          });
      ordered.sort(ORDER);
      return ordered;
    }
  }

  /** Nodes for the evidence and, from their first week on, for all players in the asked weeks. */
  static Layout of(GroupRecord group, Border border) {
    Club club = group.club();
    Pieces pieces = new Pieces(Drift.of(club, group.evidence()));
    for (int player : group.players()) {
      int first = club.entrants().get(player).firstWeek();
      BitSet own = new BitSet();
      own.set(first);
      for (int week : group.weeks()) {
        if (week > first) {
          own.set(week);
        }
      }
      pieces.asked.put(player, own);
      pieces.games.put(player, new BitSet());
    }
    group.evidence().forEach(pieces::add);
    return new Layout(club, border, group.players(), pieces);
  }

  /** Steps tie a node to the next, and practice ties both to the gains. */
  private void connectChain(int player) {
    int before = -1;
    int weekBefore = club.entrants().get(player).firstWeek();
    for (Map.Entry<Integer, Integer> entry : chain(player).entrySet()) {
      int node = entry.getValue();
      if (before >= 0) {
        graph.connect(before, node);
      }
      boolean learned =
          drift.between(player, weekBefore, entry.getKey()).keySet().stream()
              .anyMatch(gain -> border.gain(gain) >= 0);
      if (learned) {
        graph.connect(node, graph.nodes() - 1);
        if (before >= 0) {
          graph.connect(before, graph.nodes() - 1);
        }
      }
      before = node;
      weekBefore = entry.getKey();
    }
  }

  Club club() {
    return club;
  }

  Border border() {
    return border;
  }

  List<Integer> players() {
    return players;
  }

  BlockGraph graph() {
    return graph;
  }

  /** The first node of the late weeks, or 0 in a short history. */
  int lateNode() {
    return lateNode;
  }

  /** How many latents are the group's own; those of the border follow. */
  int own() {
    return graph.latents() - border.size();
  }

  /** The nodes of a player by week. */
  NavigableMap<Integer, Integer> chain(int player) {
    TreeMap<Integer, Integer> chain = nodes.get(player);
    if (chain == null) {
      throw new IllegalArgumentException("Player " + player + " is not of this group.");
    }
    return chain;
  }

  /** The player of whose chain a latent is part. */
  Entrant entrantOf(int latent) {
    return club.entrants().get(playerOf[graph.nodeOf(latent)]);
  }

  /** The latent of a gain, or −1 where its value is known. */
  int gainLatent(int gain) {
    return border.gain(gain) < 0 ? -1 : own() + border.gain(gain);
  }

  Drift drift() {
    return drift;
  }

  /** Where the week of a skill lies on the chain of its player. */
  Place place(SkillSum.Key key) {
    NavigableMap<Integer, Integer> chain = chain(key.player());
    Map.Entry<Integer, Integer> before = chain.floorEntry(key.week());
    if (before == null) {
      throw new IllegalArgumentException(
          "Week "
              + key.week()
              + " lies before the first week ("
              + chain.firstKey()
              + ") of player "
              + key.player()
              + ". Maybe the player joined earlier.");
    }
    Map.Entry<Integer, Integer> after = chain.higherEntry(key.week());
    if (before.getKey() == key.week()) {
      return Place.at(before.getValue(), key.week());
    }
    return after == null
        ? Place.afterLast(before.getValue(), before.getKey(), key.week())
        : new Place(
            before.getValue(), before.getKey(), after.getValue(), after.getKey(), key.week());
  }

  /** Adds a weighted skill of a player of this group; see {@link Place#freeWeeksWith}. */
  void addSkill(SparseRow row, SkillSum.Key key, double weight) {
    Integer node = chain(key.player()).get(key.week());
    if (node != null) {
      row.plus(graph.start(node) + key.skill(), weight);
      return;
    }
    Place place = place(key);
    double share = place.share();
    row.plus(graph.start(place.before()) + key.skill(), weight * (1 - share));
    if (place.isBetween()) {
      row.plus(graph.start(place.after()) + key.skill(), weight * share);
    }
    addDrift(row, key, place.weekBefore(), key.week(), weight);
    if (place.isBetween()) {
      addDrift(row, key, place.weekBefore(), place.weekAfter(), -weight * share);
    }
  }

  private void addDrift(SparseRow row, SkillSum.Key key, int from, int until, double weight) {
    drift
        .between(key.player(), from, until)
        .forEach((gain, minutes) -> addGain(row, gain, weight * minutes[key.skill()]));
  }

  /** Adds a weighted gain; a known one goes into the offset. */
  void addGain(SparseRow row, int gain, double weight) {
    addShared(row, border.gain(gain), club.gains().get(gain), weight);
  }

  /** Adds a weighted effect; a known one goes into the offset. */
  void addEffect(SparseRow row, int effect, double weight) {
    addShared(row, border.effect(effect), club.effects().get(effect), weight);
  }

  private void addShared(SparseRow row, int number, SharedEffect shared, double weight) {
    if (number < 0) {
      row.plusOffset(weight * shared.mean());
    } else {
      row.plus(own() + number, weight);
    }
  }
}
