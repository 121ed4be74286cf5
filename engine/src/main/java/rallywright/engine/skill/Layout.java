package rallywright.engine.skill;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.NavigableMap;
import java.util.Set;
import java.util.TreeMap;

/**
 * Where each skill of each player in each week, and each learned effect, stands among the latents,
 * in the order of elimination.
 *
 * <p>A player has a node (a block of all skills) in each week with evidence and each week that is
 * asked for. First come the nodes that touch nobody else (no game: the player's own chain), then
 * those with games by week, last the effects that all share. So a front never holds more than about
 * one node of each player of a group.
 */
final class Layout {
  private record Node(int player, int week, boolean hasGame) {}

  private static final Comparator<Node> ORDER =
      Comparator.comparing(Node::hasGame)
          .thenComparingInt(node -> node.hasGame ? node.week : node.player)
          .thenComparingInt(node -> node.hasGame ? node.player : node.week);

  private final Club club;
  private final List<TreeMap<Integer, Integer>> nodes = new ArrayList<>();
  private final int[] effectLatents;
  private final BlockGraph graph;

  private Layout(Club club, List<Node> ordered) {
    this.club = club;
    club.entrants().forEach(entrant -> nodes.add(new TreeMap<>()));
    for (int i = 0; i < ordered.size(); i++) {
      nodes.get(ordered.get(i).player).put(ordered.get(i).week, i);
    }
    int learned = (int) club.effects().stream().filter(SharedEffect::isLearned).count();
    int[] sizes = new int[ordered.size() + (learned > 0 ? 1 : 0)];
    Arrays.fill(sizes, club.skills().skills());
    if (learned > 0) {
      sizes[ordered.size()] = learned;
    }
    graph = new BlockGraph(sizes);
    effectLatents = new int[club.effects().size()];
    int next = graph.latents() - learned;
    for (int effect = 0; effect < effectLatents.length; effect++) {
      effectLatents[effect] = club.effects().get(effect).isLearned() ? next++ : -1;
    }
    nodes.forEach(Layout.this::connectChain);
  }

  /** Nodes for all evidence and, from their first week on, for all players in the asked weeks. */
  static Layout of(Club club, List<? extends Evidence> evidence, Set<Integer> weeks) {
    List<Set<Integer>> asked = new ArrayList<>();
    List<Set<Integer>> games = new ArrayList<>();
    for (Entrant entrant : club.entrants()) {
      Set<Integer> own = new HashSet<>(weeks);
      own.removeIf(week -> week < entrant.firstWeek());
      if (own.isEmpty()) {
        own.add(entrant.firstWeek());
      }
      asked.add(own);
      games.add(new HashSet<>());
    }
    for (Evidence piece : evidence) {
      if (piece instanceof Game game) {
        game.sides().a().forEach(player -> games.get(player).add(game.week()));
        game.sides().b().forEach(player -> games.get(player).add(game.week()));
      } else if (piece instanceof YardstickResult result) {
        asked.get(result.test().player()).add(result.week());
      }
    }
    List<Node> ordered = new ArrayList<>();
    for (int player = 0; player < asked.size(); player++) {
      asked.get(player).addAll(games.get(player));
      for (int week : asked.get(player)) {
        ordered.add(new Node(player, week, games.get(player).contains(week)));
      }
    }
    ordered.sort(ORDER);
    return new Layout(club, ordered);
  }

  private void connectChain(NavigableMap<Integer, Integer> chain) {
    int before = -1;
    for (int node : chain.values()) {
      if (before >= 0) {
        graph.connect(before, node);
      }
      before = node;
    }
  }

  BlockGraph graph() {
    return graph;
  }

  /** The nodes of a player by week. */
  NavigableMap<Integer, Integer> chain(int player) {
    return nodes.get(player);
  }

  /** The latent of an effect, or −1 where its value is known. */
  int effectLatent(int effect) {
    return effectLatents[effect];
  }

  /** The latest node of the player that is not after the week. */
  int nodeAt(SkillSum.Key key) {
    NavigableMap<Integer, Integer> chain = nodes.get(key.player());
    Integer exact = chain.get(key.week());
    if (exact != null) {
      return exact;
    }
    if (key.week() < chain.lastKey()) {
      throw new IllegalArgumentException(
          "Week "
              + key.week()
              + " of player "
              + key.player()
              + " was not asked for; there are "
              + chain.keySet()
              + ". Maybe add the week when the model is fitted.");
    }
    return chain.lastEntry().getValue();
  }

  /** The sum as a row over the latents; known effects go into the offset. */
  SparseRow row(SkillSum sum) {
    SparseRow row = new SparseRow();
    sum.forEachSkill((key, weight) -> row.plus(graph.start(nodeAt(key)) + key.skill(), weight));
    sum.forEachEffect(
        (effect, weight) -> {
          if (effectLatents[effect] < 0) {
            row.plusOffset(weight * club.effects().get(effect).mean());
          } else {
            row.plus(effectLatents[effect], weight);
          }
        });
    return row;
  }
}
