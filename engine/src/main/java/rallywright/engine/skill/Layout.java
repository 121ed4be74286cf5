package rallywright.engine.skill;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;

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
  private final int[] gainLatents;
  private final BlockGraph graph;
  private final Drift drift;

  private Layout(Club club, List<Node> ordered, Drift drift) {
    this.club = club;
    this.drift = drift;
    club.entrants().forEach(entrant -> nodes.add(new TreeMap<>()));
    for (int i = 0; i < ordered.size(); i++) {
      nodes.get(ordered.get(i).player).put(ordered.get(i).week, i);
    }
    int learned =
        (int)
            Stream.concat(club.effects().stream(), club.gains().stream())
                .filter(SharedEffect::isLearned)
                .count();
    int[] sizes = new int[ordered.size() + (learned > 0 ? 1 : 0)];
    Arrays.fill(sizes, club.skills().skills());
    if (learned > 0) {
      sizes[ordered.size()] = learned;
    }
    graph = new BlockGraph(sizes);
    int border = graph.latents() - learned;
    effectLatents = latents(club.effects(), border);
    int learnedEffects = (int) club.effects().stream().filter(SharedEffect::isLearned).count();
    gainLatents = latents(club.gains(), border + learnedEffects);
    nodes.forEach(Layout.this::connectChain);
    for (int player = 0; player < nodes.size(); player++) {
      connectPractice(player);
    }
  }

  private static int[] latents(List<SharedEffect> shared, int first) {
    int[] latents = new int[shared.size()];
    int next = first;
    for (int i = 0; i < latents.length; i++) {
      latents[i] = shared.get(i).isLearned() ? next++ : -1;
    }
    return latents;
  }

  /** Nodes for all evidence and, from their first week on, for all players in the asked weeks. */
  static Layout of(Club club, List<? extends Evidence> evidence, Set<Integer> weeks) {
    List<Set<Integer>> asked = new ArrayList<>();
    List<Set<Integer>> games = new ArrayList<>();
    for (Entrant entrant : club.entrants()) {
      Set<Integer> own = new HashSet<>(weeks);
      own.removeIf(week -> week < entrant.firstWeek());
      own.add(entrant.firstWeek());
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
    return new Layout(club, ordered, Drift.of(club, evidence));
  }

  /** Practice ties the nodes before and after it to the gains. */
  private void connectPractice(int player) {
    int before = -1;
    int weekBefore = club.entrants().get(player).firstWeek();
    for (Map.Entry<Integer, Integer> entry : nodes.get(player).entrySet()) {
      int node = entry.getValue();
      boolean learned =
          drift.between(player, weekBefore, entry.getKey()).keySet().stream()
              .anyMatch(gain -> gainLatents[gain] >= 0);
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

  /** The latent of a gain, or −1 where its value is known. */
  int gainLatent(int gain) {
    return gainLatents[gain];
  }

  Drift drift() {
    return drift;
  }

  /** Where the week of a skill lies on the chain of its player. */
  Place place(SkillSum.Key key) {
    NavigableMap<Integer, Integer> chain = nodes.get(key.player());
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

  /**
   * The sum as a row over the latents; known effects go into the offset. What the random walk does
   * between nodes and after the last one is not in it: see {@link Place#freeWeeksWith}.
   */
  SparseRow row(SkillSum sum) {
    SparseRow row = new SparseRow();
    sum.forEachSkill((key, weight) -> addSkill(row, key, weight));
    sum.forEachEffect(
        (effect, weight) ->
            addShared(row, effectLatents[effect], club.effects().get(effect), weight));
    sum.forEachGain((gain, weight) -> addGain(row, gain, weight));
    return row;
  }

  private void addSkill(SparseRow row, SkillSum.Key key, double weight) {
    Place place = place(key);
    double share = place.share();
    row.plus(graph.start(place.before()) + key.skill(), weight * (1 - share));
    if (place.isBetween()) {
      row.plus(graph.start(place.after()) + key.skill(), weight * share);
    }
    addDrift(row, key, place.weekBefore(), key.week(), weight);
    addDrift(row, key, place.weekBefore(), place.weekAfter(), -weight * share);
  }

  private void addDrift(SparseRow row, SkillSum.Key key, int from, int until, double weight) {
    if (weight != 0) {
      drift
          .between(key.player(), from, until)
          .forEach((gain, minutes) -> addGain(row, gain, weight * minutes[key.skill()]));
    }
  }

  private void addGain(SparseRow row, int gain, double weight) {
    addShared(row, gainLatents[gain], club.gains().get(gain), weight);
  }

  private static void addShared(SparseRow row, int latent, SharedEffect shared, double weight) {
    if (latent < 0) {
      row.plusOffset(weight * shared.mean());
    } else {
      row.plus(latent, weight);
    }
  }
}
