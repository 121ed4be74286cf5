package rallywright.engine.skill;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;
import rallywright.engine.score.Side;

/** A club's groups with what is known of each, ready to be solved. */
final class ClubSystem {
  private final Club club;
  private final Border border;
  private final Partition partition;
  private final List<Group> groups;
  private final List<CrossTerm> cross;
  private final List<Game> crossGames;

  /** A group: its record, where its latents stand, and its share of the system. */
  record Group(GroupRecord record, Layout layout, WalkPrior prior, Part part) {}

  private ClubSystem(Club club, Partition partition, List<Group> groups, Guests guests) {
    this.club = club;
    this.partition = partition;
    this.groups = groups;
    this.cross = guests.terms;
    this.crossGames = guests.games;
    this.border = Border.of(club);
  }

  /** What was worked out before and still holds. */
  static final class Known {
    private final Map<Integer, Group> groups = new TreeMap<>();
    private final Map<Game, CrossTerm> terms = new HashMap<>();

    /** A group of which nothing changed, under its number now. */
    void put(int number, Group group) {
      groups.put(number, group);
    }

    /** The games that span groups; the numbers of the groups must be those of before. */
    void putGames(ClubSystem before) {
      for (int i = 0; i < before.cross.size(); i++) {
        terms.put(before.crossGames.get(i), before.cross.get(i));
      }
    }

    Optional<Group> group(int number) {
      return Optional.ofNullable(groups.get(number));
    }

    private Optional<CrossTerm> termOf(Game game, Set<Integer> touched) {
      return groups.keySet().containsAll(touched)
          ? Optional.ofNullable(terms.get(game))
          : Optional.empty();
    }
  }

  /** Games that span groups, and what they say. */
  private record Guests(List<Game> games, List<CrossTerm> terms) {
    private static Guests of(
        Partition partition, List<GroupRecord> records, List<Layout> layouts, Known known) {
      Layout[] all = layouts.toArray(Layout[]::new);
      int[] own = layouts.stream().mapToInt(Layout::own).toArray();
      List<Game> games = new ArrayList<>();
      List<CrossTerm> terms = new ArrayList<>();
      for (int i = 0; i < all.length; i++) {
        for (Evidence piece : records.get(i).evidence()) {
          if (piece instanceof Game game && onlyGroupOf(game, partition) < 0) {
            Set<Integer> touched = groupsOf(game, partition);
            if (touched.iterator().next() == i) {
              games.add(game);
              terms.add(
                  known
                      .termOf(game, touched)
                      .orElseGet(() -> crossTerm(game, partition, all, own)));
            }
          }
        }
      }
      return new Guests(games, terms);
    }
  }

  /** What each group is known by; games with guests stand in the record of each group in them. */
  static List<GroupRecord> records(
      Club club, Partition partition, List<Evidence> evidence, Set<Integer> weeks) {
    List<List<Evidence>> byGroup = new ArrayList<>();
    for (int group = 0; group < partition.groups(); group++) {
      byGroup.add(new ArrayList<>());
    }
    for (Evidence piece : evidence) {
      int only = onlyGroupOf(piece, partition);
      if (only >= 0) {
        byGroup.get(only).add(piece);
      } else {
        groupsOf(piece, partition).forEach(group -> byGroup.get(group).add(piece));
      }
    }
    List<List<Integer>> players = partition.players();
    List<GroupRecord> records = new ArrayList<>();
    for (int group = 0; group < byGroup.size(); group++) {
      records.add(new GroupRecord(club, players.get(group), byGroup.get(group), Set.copyOf(weeks)));
    }
    return records;
  }

  /** The group of all players of a piece of evidence, or −1 where it spans groups. */
  static int onlyGroupOf(Evidence piece, Partition partition) {
    if (piece instanceof Game game) {
      int group = partition.of(game.sides().a().get(0));
      return allOf(game.sides().a(), group, partition) && allOf(game.sides().b(), group, partition)
          ? group
          : -1;
    }
    return partition.of(playersOf(piece).get(0));
  }

  private static boolean allOf(List<Integer> players, int group, Partition partition) {
    for (int player : players) {
      if (partition.of(player) != group) {
        return false;
      }
    }
    return true;
  }

  static Set<Integer> groupsOf(Evidence piece, Partition partition) {
    Set<Integer> groups = new TreeSet<>();
    playersOf(piece).forEach(player -> groups.add(partition.of(player)));
    return groups;
  }

  /** The players of whom a piece of evidence speaks. */
  static List<Integer> playersOf(Evidence piece) {
    if (piece instanceof Game game) {
      List<Integer> players = new ArrayList<>(game.sides().a());
      players.addAll(game.sides().b());
      return players;
    }
    return List.of(
        piece instanceof YardstickResult result
            ? result.test().player()
            : ((Practice) piece).player());
  }

  /**
   * The system of a club.
   *
   * @param known what was worked out before and still holds
   */
  static ClubSystem of(
      Club club, SkillPrior prior, Partition partition, List<GroupRecord> records, Known known) {
    Border border = Border.of(club);
    Layout[] layouts = new Layout[records.size()];
    IntStream.range(0, layouts.length)
        .parallel()
        .forEach(
            i ->
                layouts[i] =
                    known
                        .group(i)
                        .map(Group::layout)
                        .orElseGet(() -> Layout.of(records.get(i), border)));
    Guests guests = Guests.of(partition, records, List.of(layouts), known);
    List<List<Term>> cuts = cuts(guests.terms, layouts.length);
    Group[] groups = new Group[layouts.length];
    IntStream.range(0, groups.length)
        .parallel()
        .forEach(
            i ->
                groups[i] =
                    known
                        .group(i)
                        .orElseGet(
                            () ->
                                group(records.get(i), layouts[i], prior, cuts.get(i), partition)));
    return new ClubSystem(club, partition, List.of(groups), guests);
  }

  /** The system of some groups of a club, without evidence that spans groups. */
  static ClubSystem ofSome(
      Club club, SkillPrior prior, Partition partition, List<GroupRecord> records) {
    Border border = Border.of(club);
    Group[] groups = new Group[records.size()];
    IntStream.range(0, groups.length)
        .parallel()
        .forEach(
            i ->
                groups[i] =
                    group(
                        records.get(i),
                        Layout.of(records.get(i), border),
                        prior,
                        List.of(),
                        partition));
    return new ClubSystem(club, partition, List.of(groups), new Guests(List.of(), List.of()));
  }

  /** The same evidence under another prior; the club may differ in the SDs of what all share. */
  ClubSystem with(Club scaled, SkillPrior prior) {
    List<Group> others = new ArrayList<>();
    for (Group group : groups) {
      WalkPrior walk = new WalkPrior(group.layout, prior);
      others.add(new Group(group.record, group.layout, walk, group.part.with(walk)));
    }
    return new ClubSystem(scaled, partition, others, new Guests(crossGames, cross));
  }

  private static List<List<Term>> cuts(List<CrossTerm> cross, int groups) {
    List<List<Term>> cuts = new ArrayList<>();
    for (int group = 0; group < groups; group++) {
      cuts.add(new ArrayList<>());
    }
    cross.forEach(term -> term.cuts().forEach(cut -> cuts.get(cut.part()).add(cut.term())));
    return cuts;
  }

  private static Group group(
      GroupRecord record, Layout layout, SkillPrior prior, List<Term> cuts, Partition partition) {
    List<Term> terms = new ArrayList<>();
    for (Evidence piece : record.evidence()) {
      if (!(piece instanceof Practice) && onlyGroupOf(piece, partition) >= 0) {
        List<SparseRow> rows = new ArrayList<>();
        for (SkillSum sum : predictors(piece)) {
          SparseRow row = new SparseRow();
          sum.forEachSkill((key, weight) -> layout.addSkill(row, key, weight));
          addShared(sum, layout, row);
          rows.add(row);
        }
        terms.add(new Term(likelihood(piece), rows.toArray(SparseRow[]::new)));
      }
    }
    WalkPrior walk = new WalkPrior(layout, prior);
    Part part = new Part(walk, terms, cuts, layout.border().size(), layout.lateNode());
    return new Group(record, layout, walk, part);
  }

  private static void addShared(SkillSum sum, Layout layout, SparseRow row) {
    sum.forEachEffect((effect, weight) -> layout.addEffect(row, effect, weight));
    sum.forEachGain((gain, weight) -> layout.addGain(row, gain, weight));
  }

  private static CrossTerm crossTerm(Game game, Partition partition, Layout[] layouts, int[] own) {
    List<Map<Integer, SparseRow>> rows = new ArrayList<>();
    for (SkillSum sum : predictors(game)) {
      rows.add(rows(sum, partition, layouts));
    }
    return new CrossTerm(likelihood(game), rows, own);
  }

  private static Map<Integer, SparseRow> rows(SkillSum sum, Partition partition, Layout[] layouts) {
    Map<Integer, SparseRow> rows = new TreeMap<>();
    sum.forEachSkill(
        (key, weight) -> {
          int group = partition.of(key.player());
          SparseRow row = rows.computeIfAbsent(group, each -> new SparseRow());
          layouts[group].addSkill(row, key, weight);
        });
    int first = rows.isEmpty() ? 0 : rows.keySet().iterator().next();
    if (layouts.length > 0) {
      addShared(sum, layouts[first], rows.computeIfAbsent(first, each -> new SparseRow()));
    }
    return rows;
  }

  /** A sum as rows over the latents of the groups that it touches. */
  Map<Integer, SparseRow> rows(SkillSum sum) {
    return rows(sum, partition, groups.stream().map(Group::layout).toArray(Layout[]::new));
  }

  static List<SkillSum> predictors(Evidence evidence) {
    if (evidence instanceof YardstickResult result) {
      return List.of(result.predictor());
    }
    Game game = (Game) evidence;
    return game.result() instanceof RalliesWon
        ? List.of(game.serverEdge(Side.A))
        : List.of(game.serverEdge(Side.A), game.serverEdge(Side.B));
  }

  private static Likelihood likelihood(Evidence evidence) {
    if (evidence instanceof YardstickResult result) {
      return new BinomialLikelihood(result.hits(), result.balls() - result.hits());
    }
    Result result = ((Game) evidence).result();
    if (result instanceof RalliesWon won) {
      return new BinomialLikelihood(won.a(), won.b());
    }
    return result instanceof ScorePath path
        ? new ChainLikelihood(path)
        : ServeLikelihood.of((RalliesByServer) result);
  }

  Club club() {
    return club;
  }

  Border border() {
    return border;
  }

  Partition partition() {
    return partition;
  }

  List<Group> groups() {
    return groups;
  }

  Group group(int number) {
    return groups.get(number);
  }

  List<CrossTerm> cross() {
    return cross;
  }

  /** The games that {@link #cross} speaks of, in the same order. */
  List<Game> crossGames() {
    return crossGames;
  }

  /** The parts of all groups. */
  List<Part> parts() {
    return groups.stream().map(Group::part).toList();
  }
}
