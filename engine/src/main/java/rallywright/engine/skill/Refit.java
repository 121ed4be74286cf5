package rallywright.engine.skill;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Set;

/**
 * One update of a posterior. Groups of which nothing changed rest: they keep their factor, and
 * follow the border by a quadratic. Those that changed are sought from where they stood.
 *
 * <p>Accuracy: the border moves little by one session, and a group is taken up again once it has
 * moved by more than {@value #FAR} of its SDs since the group came to rest. Evidence that spans
 * groups sees a resting group where it came to rest.
 */
final class Refit {
  /** In SDs of the border: so little bends the logistic curves by less than one in a hundred. */
  private static final double FAR = 0.2;

  private final Club club;
  private final SkillPrior prior;
  private final Posterior before;

  Refit(Club club, SkillPrior prior, Posterior before) {
    this.club = club;
    this.prior = prior;
    this.before = before;
  }

  /** The posterior of all evidence, old and new. */
  Posterior of(List<Evidence> evidence, Set<Integer> weeks) {
    Partition partition = before.system().partition().grown(club.entrants().size(), evidence);
    List<GroupRecord> records = ClubSystem.records(club, partition, evidence, weeks);
    int[] numberBefore = records.stream().mapToInt(this::numberBefore).toArray();
    return solved(partition, records, numberBefore, List.of());
  }

  /** The posterior of the evidence so far and some more, of the same players. */
  Posterior plus(List<Evidence> more) {
    Partition partition = before.system().partition();
    List<GroupRecord> added = ClubSystem.records(club, partition, more, Set.of());
    List<GroupRecord> records = new ArrayList<>();
    int[] numberBefore = new int[added.size()];
    for (int i = 0; i < numberBefore.length; i++) {
      GroupRecord record = before.system().group(i).record();
      boolean same = added.get(i).evidence().isEmpty();
      numberBefore[i] = same ? i : -1;
      records.add(same ? record : record.plus(added.get(i).evidence()));
    }
    return solved(partition, records, numberBefore, added);
  }

  private Posterior solved(
      Partition partition, List<GroupRecord> records, int[] numberBefore, List<GroupRecord> added) {
    ClubSystem.Known known = new ClubSystem.Known();
    boolean sameNumbers = true;
    for (int i = 0; i < numberBefore.length; i++) {
      if (numberBefore[i] >= 0) {
        known.put(i, before.system().group(numberBefore[i]));
        sameNumbers &= numberBefore[i] == i;
      }
    }
    if (sameNumbers) {
      known.putGames(before.system());
    }
    ClubSystem system = ClubSystem.of(club, prior, partition, records, known);
    BlockCholesky[] earlier = new BlockCholesky[numberBefore.length];
    for (int i = 0; i < added.size(); i++) {
      if (numberBefore[i] < 0) {
        BlockCholesky factor = before.fit().curvature().factor(i);
        int place = factor.checkpoint().node();
        boolean late = firstTouched(system.group(i).layout(), added.get(i)) >= place;
        earlier[i] = late && factor.checkpoint().isSet() ? factor : null;
      }
    }
    LaplaceFit fit = fit(system, numberBefore, earlier);
    while (wakeThoseLeftFar(fit, numberBefore)) {
      fit = fit(system, numberBefore, earlier);
    }
    fit = fit.yielded();
    return new Posterior(prior, system, fit, Moments.after(before.moments(), fit, numberBefore));
  }

  /** The number before of a group of which nothing changed, or −1. */
  private int numberBefore(GroupRecord record) {
    if (record.players().isEmpty()
        || record.players().get(0) >= before.system().club().entrants().size()) {
      return -1;
    }
    int number = before.system().partition().of(record.players().get(0));
    return record.saysTheSameAs(before.system().group(number).record()) ? number : -1;
  }

  /** The first node of which new evidence changes the rows: where the walk's step to it starts. */
  private static int firstTouched(Layout layout, GroupRecord added) {
    int first = Integer.MAX_VALUE;
    for (Evidence piece : added.evidence()) {
      for (int player : ClubSystem.playersOf(piece)) {
        if (layout.players().contains(player)) {
          NavigableMap<Integer, Integer> chain = layout.chain(player);
          Map.Entry<Integer, Integer> start = chain.lowerEntry(piece.week());
          Map.Entry<Integer, Integer> at = chain.floorEntry(piece.week());
          first = Math.min(first, start == null ? 0 : start.getValue());
          first = Math.min(first, at == null ? 0 : at.getValue());
        }
      }
    }
    return first;
  }

  private LaplaceFit fit(ClubSystem system, int[] numberBefore, BlockCholesky[] earlier) {
    Summary[] resting = new Summary[numberBefore.length];
    BlockCholesky[] kept = new BlockCholesky[numberBefore.length];
    double[][] own = new double[numberBefore.length][];
    Summary[] summaries = before.fit().summaries();
    for (int i = 0; i < resting.length; i++) {
      if (numberBefore[i] >= 0) {
        resting[i] = summaries[numberBefore[i]];
        kept[i] = before.fit().curvature().factor(numberBefore[i]);
        own[i] = before.fit().point().own(numberBefore[i]);
      } else {
        kept[i] = earlier[i];
        own[i] = start(system.group(i));
      }
    }
    Assembly assembly = new Assembly(system.parts(), system.border(), system.cross(), resting);
    Point start = new Point(own, before.fit().point().border().clone());
    return LaplaceFit.from(assembly, start, kept, outside(system));
  }

  /** Where the group stood; new weeks start where the player stood last. */
  private double[] start(ClubSystem.Group group) {
    double[] start = Arrays.copyOf(group.prior().mean(), group.layout().own());
    int skills = club.skills().skills();
    Map<Integer, double[]> settled = new HashMap<>();
    for (int player : group.layout().players()) {
      if (player < before.system().club().entrants().size()) {
        int number = before.system().partition().of(player);
        Layout layout = before.system().group(number).layout();
        double[] values = settled.computeIfAbsent(number, before.fit()::settled);
        NavigableMap<Integer, Integer> chain = layout.chain(player);
        group
            .layout()
            .chain(player)
            .forEach(
                (week, node) -> {
                  Map.Entry<Integer, Integer> stood = chain.floorEntry(week);
                  if (stood != null) {
                    int from = layout.graph().start(stood.getValue());
                    int to = group.layout().graph().start(node);
                    System.arraycopy(values, from, start, to, skills);
                  }
                });
      }
    }
    return start;
  }

  /** What groups knew of each other's share before the new evidence. */
  private Outside outside(ClubSystem system) {
    Map<Game, Integer> numbers = new HashMap<>();
    before.system().crossGames().forEach(game -> numbers.put(game, numbers.size()));
    double[][][] others = new double[system.cross().size()][][];
    for (int i = 0; i < others.length; i++) {
      Integer number = numbers.get(system.crossGames().get(i));
      List<CrossTerm.Cut> cuts = system.cross().get(i).cuts();
      others[i] = new double[cuts.size()][];
      for (int j = 0; j < others[i].length; j++) {
        int group = cuts.get(j).part();
        others[i][j] =
            number != null
                ? before.fit().outside().of(number, j)
                : outside(system.partition(), system.crossGames().get(i), group);
      }
    }
    return Outside.ofOthers(others);
  }

  private double[] outside(Partition partition, Game game, int group) {
    List<SkillSum> shares =
        ClubSystem.predictors(game).stream()
            .map(
                sum -> sum.onlyOf(player -> partition.of(player) != group && isKnown(player, game)))
            .toList();
    SkillSum first = shares.get(0);
    SkillSum second = shares.get(shares.size() - 1);
    return new double[] {
      before.covariance(first, first),
      before.covariance(first, second),
      before.covariance(second, second)
    };
  }

  private boolean isKnown(int player, Game game) {
    List<Entrant> entrants = before.system().club().entrants();
    return player < entrants.size() && entrants.get(player).firstWeek() <= game.week();
  }

  /** Takes up groups that the border has left far behind; false if there are none. */
  private static boolean wakeThoseLeftFar(LaplaceFit fit, int[] numberBefore) {
    boolean woken = false;
    double[] border = fit.point().border();
    double[][] covariance = fit.curvature().border().inverse();
    for (int part = 0; part < numberBefore.length; part++) {
      if (numberBefore[part] >= 0) {
        double[] at = fit.assembly().resting(part).at();
        for (int i = 0; i < border.length && numberBefore[part] >= 0; i++) {
          if (Math.abs(border[i] - at[i]) > FAR * Math.sqrt(covariance[i][i])) {
            numberBefore[part] = -1;
            woken = true;
          }
        }
      }
    }
    return woken;
  }
}
