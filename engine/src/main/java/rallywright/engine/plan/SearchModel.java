package rallywright.engine.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.DrillKind;
import rallywright.engine.drill.Intensity;
import rallywright.engine.drill.Skill;
import rallywright.engine.drill.SkillGroup;
import rallywright.engine.plan.BlockClock.StintTime;
import rallywright.engine.practice.Needs;
import rallywright.engine.practice.PracticeMinutes;

/**
 * A problem as numbers: one option for each drill and line that those present can play, in the
 * order of a session. A choice is one number of stints for each option.
 */
final class SearchModel {

  /** A group counts as touched by a drill if this share of its work goes to the group. */
  static final double TOUCHES = 1.0 / 3;

  private static final int ROW = PlanSearch.MOST_STINTS + 1;

  private final PlanContext context;
  private final List<Option> options = new ArrayList<>();
  private final OptionNumbers numbers;
  private final double fixedSeconds;
  private final double[][] rates;
  private final int[] equipment;
  private final int[] groupBits;
  private final List<Map<Long, Part>> parts = new ArrayList<>();
  private final boolean[] rowOfTable;
  private final double[][] table;
  private final double maxHardMinutes;
  private final double restEveryMinutes;
  private final double restMinutes;

  /**
   * One drill along one line.
   *
   * @param line the drill and line
   * @param drill the drill's place in the list of drills
   * @param stint the time of one stint
   * @param part a stint for everybody
   * @param groups the skill groups that it touches
   * @param isHard whether its minutes are hard ones
   */
  record Option(
      DrillLine line,
      int drill,
      StintTime stint,
      Part part,
      Set<SkillGroup> groups,
      boolean isHard) {

    boolean isFullGame() {
      return line.drill().kind() == DrillKind.FULL_GAME;
    }

    int mostStints() {
      return line.isScored() ? PlanSearch.MOST_STINTS : 1;
    }

    double blockSeconds(int stints) {
      return blockSeconds(stints, part.seconds());
    }

    static double blockSeconds(int stints, double seconds) {
      return BlockClock.BLOCK_SECONDS + stints * seconds + (stints - 1) * BlockClock.STINT_SECONDS;
    }

    double variance() {
      return part.variance();
    }

    double shared() {
      return part.shared();
    }

    /** Minutes that one player plays in one stint, sit-outs shared evenly. */
    double minutes() {
      return part.minutes();
    }
  }

  /**
   * One stint for some of those present.
   *
   * @param enough whether they are enough to play
   * @param seconds its mean time
   * @param variance of the time in s², the drill's own pace aside
   * @param shared seconds by which the drill's unsure pace spreads: one standard deviation
   * @param minutes that one of them plays, sit-outs shared evenly
   */
  record Part(boolean enough, double seconds, double variance, double shared, double minutes) {}

  /**
   * A problem as numbers.
   *
   * @param context the problem
   * @param fixedSeconds the time of warm-ups and tests
   */
  SearchModel(PlanContext context, double fixedSeconds) {
    this.context = context;
    this.fixedSeconds = fixedSeconds;
    List<Drill> drills = context.problem().drills();
    rates = new double[drills.size()][context.presence().companies()];
    Availability availability = new Availability(context);
    for (DrillLine line : DrillLine.allOf(drills)) {
      if (availability.obstacle(line).isEmpty()) {
        int drill = drills.indexOf(line.drill());
        rates[drill] = rates(line.drill());
        options.add(option(line, drill));
      }
    }
    options.sort(
        Comparator.comparing((Option each) -> each.line().drill().progression())
            .thenComparing(Option::drill)
            .thenComparing(each -> each.line().line()));
    options.forEach(option -> parts.add(new HashMap<>()));
    numbers = new OptionNumbers(options);
    equipment = equipment();
    groupBits = options.stream().mapToInt(each -> bits(each.groups())).toArray();
    rowOfTable = rowsOfTable();
    table = context.presence().isThroughout() ? table() : new double[0][0];
    maxHardMinutes = context.wish().maxHardMinutes();
    restEveryMinutes = Walk.restEvery(context.wish());
    restMinutes = BlockBuilder.restMinutes(context.wish());
  }

  /** For each option the number of its list of equipment: the same number, the same things. */
  private int[] equipment() {
    List<List<String>> lists = new ArrayList<>();
    lists.add(List.of());
    int[] numbers = new int[options.size()];
    for (int i = 0; i < numbers.length; i++) {
      List<String> needed = options.get(i).line().drill().advice().equipment();
      if (!lists.contains(needed)) {
        lists.add(needed);
      }
      numbers[i] = lists.indexOf(needed);
    }
    return numbers;
  }

  /** Groups of skills as bits, for the search. */
  static int bits(Set<SkillGroup> groups) {
    List<SkillGroup> all = List.of(SkillGroup.values());
    return groups.stream().mapToInt(group -> 1 << all.indexOf(group)).sum();
  }

  private Option option(DrillLine line, int drill) {
    UsualStint usual = context.usualStint(line);
    Part part = part(line, context.eligible(line.drill()).size(), usual);
    boolean hard = line.drill().intensity() == Intensity.HARD;
    return new Option(line, drill, usual.time(), part, groups(line.drill()), hard);
  }

  private Part part(DrillLine line, int eligible, UsualStint usual) {
    StintTime time = usual.time();
    double cv = line.isScored() ? context.lengths().pace(line.drill()).drillCv() : 0;
    double share = eligible == 0 ? 0 : Math.min(1, (double) usual.onCourt() / eligible);
    return new Part(
        usual.onCourt() > 0,
        time.seconds().mean(),
        time.seconds().variance(),
        time.pacedSeconds() * cv,
        share * time.playedSeconds() / 60);
  }

  /**
   * What an effective minute brings those of each company, each with the weight the coach gives, as
   * a share of all weights.
   */
  private double[] rates(Drill drill) {
    Map<Skill, Double> load = Reasons.load(drill);
    double gain = context.problem().knowledge().gains().of(drill.key());
    double[] sums = new double[context.presence().companies()];
    for (int place : context.eligible(drill)) {
      Needs needs = context.needs().get(place);
      double rate = context.attendees().get(place).weight() * needs.rate(load, gain);
      sums[context.presence().companyOf(place)] += rate;
    }
    double weights = context.attendees().stream().mapToDouble(Attendee::weight).sum();
    for (int company = 0; company < sums.length; company++) {
      sums[company] = weights > 0 ? sums[company] / weights : 0;
    }
    return sums;
  }

  static Set<SkillGroup> groups(Drill drill) {
    Map<SkillGroup, Double> shares = new EnumMap<>(SkillGroup.class);
    Reasons.load(drill).forEach((skill, share) -> shares.merge(skill.group(), share, Double::sum));
    Set<SkillGroup> groups = EnumSet.noneOf(SkillGroup.class);
    shares.forEach(
        (group, share) -> {
          if (share >= TOUCHES) {
            groups.add(group);
          }
        });
    return groups;
  }

  PlanContext context() {
    return context;
  }

  List<Option> options() {
    return options;
  }

  /** What a walk asks of the options. */
  OptionNumbers numbers() {
    return numbers;
  }

  /** The time of warm-ups and tests. */
  double fixedSeconds() {
    return fixedSeconds;
  }

  /** The number of an option's list of equipment; 0 where nothing is needed. */
  int equipment(int option) {
    return equipment[option];
  }

  /** The groups that an option touches, as bits. */
  int groupBits(int option) {
    return groupBits[option];
  }

  /** How many hard minutes may follow one another. */
  double maxHardMinutes() {
    return maxHardMinutes;
  }

  double restEveryMinutes() {
    return restEveryMinutes;
  }

  double restMinutes() {
    return restMinutes;
  }

  /** What an effective minute of a drill brings a company. */
  double rate(int drill, int company) {
    return rates[drill][company];
  }

  int drills() {
    return rates.length;
  }

  /** What a drill brings, if it brings each company so many minutes. */
  double benefit(int drill, double[] minutesByCompany) {
    double sum = 0;
    for (int company = 0; company < minutesByCompany.length; company++) {
      double minutes = minutesByCompany[company];
      sum += minutes > 0 ? rates[drill][company] * PracticeMinutes.effective(minutes) : 0;
    }
    return sum;
  }

  /**
   * Where so many stints of an option stand in the table of what its drill brings: the first line
   * of a drill counts single places, the second one whole rows.
   */
  int inTable(int option, int stints) {
    return rowOfTable[option] ? ROW * stints : stints;
  }

  /** What a drill brings everybody who is there throughout, by its place in the table. */
  double benefitOf(int drill, int place) {
    return table[drill][place];
  }

  private boolean[] rowsOfTable() {
    boolean[] rows = new boolean[options.size()];
    for (int i = 1; i < rows.length; i++) {
      rows[i] = options.get(i).drill() == options.get(i - 1).drill();
    }
    return rows;
  }

  private double[][] table() {
    double[][] all = new double[rates.length][0];
    for (int i = 0; i < options.size(); i++) {
      if (!rowOfTable[i]) {
        boolean two = i + 1 < options.size() && rowOfTable[i + 1];
        double other = two ? options.get(i + 1).minutes() : 0;
        all[options.get(i).drill()] = table(options.get(i), other);
      }
    }
    return all;
  }

  private double[] table(Option option, double minutesOfOther) {
    double[] table = new double[ROW * ROW];
    for (int place = 0; place < table.length; place++) {
      int ofOther = place / ROW;
      double minutes = (place % ROW) * option.minutes() + ofOther * minutesOfOther;
      table[place] = benefit(option.drill(), new double[] {minutes});
    }
    return table;
  }

  /** A stint of an option for those of some companies; kept once it was asked for. */
  Part part(int option, long companies) {
    Map<Long, Part> known = parts.get(option);
    Part part = known.get(companies);
    if (part == null) {
      part = partOf(options.get(option), companies);
      known.put(companies, part);
    }
    return part;
  }

  private Part partOf(Option option, long companies) {
    List<Integer> there = context.presence().places(companies);
    return partFor(option, context.eligible(option.line().drill(), there).size());
  }

  private Part partFor(Option option, int eligible) {
    Shape shape = Shape.of(option.line(), eligible, context.wish());
    UsualStint usual = context.usualStint(option.line()).forFewer(shape, context);
    return part(option.line(), eligible, usual);
  }

  /**
   * What no stint of an option can be shorter than, nor bring anybody more than, whoever of those
   * who come late or leave early is there.
   */
  Part atBest(Option option) {
    if (context.presence().isThroughout()) {
      return option.part();
    }
    Part best = option.part();
    Drill drill = option.line().drill();
    int most = context.eligible(drill).size();
    int least = Math.max(1, context.eligible(drill, context.presence().throughout()).size());
    for (int eligible = least; eligible < most; eligible++) {
      Part part = partFor(option, eligible);
      if (part.enough()) {
        best =
            new Part(
                true,
                Math.min(best.seconds(), part.seconds()),
                Math.min(best.variance(), part.variance()),
                Math.min(best.shared(), part.shared()),
                Math.max(best.minutes(), part.minutes()));
      }
    }
    return best;
  }
}
