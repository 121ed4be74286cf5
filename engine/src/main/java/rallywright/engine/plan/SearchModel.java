package rallywright.engine.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
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

  private final PlanContext context;
  private final List<Option> options = new ArrayList<>();
  private final double fixedSeconds;
  private final double[] rates;
  private final int[] equipment;
  private final int[] groupBits;
  private final double restEveryMinutes;
  private final double restMinutes;

  /**
   * One drill along one line.
   *
   * @param line the drill and line
   * @param drill the drill's place in the list of drills
   * @param stint the time of one stint
   * @param drillCv how unsure the drill's pace is
   * @param share the share of those present who play it that is on court at once
   * @param groups the skill groups that it touches
   */
  record Option(
      DrillLine line,
      int drill,
      StintTime stint,
      double drillCv,
      double share,
      Set<SkillGroup> groups) {

    boolean isHard() {
      return line.drill().intensity() == Intensity.HARD;
    }

    boolean isFullGame() {
      return line.drill().kind() == DrillKind.FULL_GAME;
    }

    int mostStints() {
      return line.isScored() ? PlanSearch.MOST_STINTS : 1;
    }

    double blockSeconds(int stints) {
      return BlockClock.BLOCK_SECONDS
          + stints * stint.seconds().mean()
          + (stints - 1) * BlockClock.STINT_SECONDS;
    }

    /** Minutes that one player plays in one stint, sit-outs shared evenly. */
    double minutesPerStint() {
      return share * stint.playedSeconds() / 60;
    }
  }

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
    rates = new double[drills.size()];
    Availability availability = new Availability(context);
    for (DrillLine line : DrillLine.allOf(drills)) {
      if (availability.obstacle(line).isEmpty()) {
        int drill = drills.indexOf(line.drill());
        rates[drill] = rate(line.drill());
        options.add(option(line, drill));
      }
    }
    options.sort(
        Comparator.comparing((Option each) -> each.line().drill().progression())
            .thenComparing(Option::drill)
            .thenComparing(each -> each.line().line()));
    equipment = equipment();
    groupBits = options.stream().mapToInt(each -> bits(each.groups())).toArray();
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
    double cv = line.isScored() ? context.lengths().pace(line.drill()).drillCv() : 0;
    double share = (double) usual.onCourt() / context.eligible(line.drill()).size();
    return new Option(line, drill, usual.time(), cv, Math.min(1, share), groups(line.drill()));
  }

  /** What an effective minute brings those present, each with the weight the coach gives. */
  private double rate(Drill drill) {
    Map<Skill, Double> load = Reasons.load(drill);
    double gain = context.problem().knowledge().gains().of(drill.key());
    double sum = 0;
    for (int place : context.eligible(drill)) {
      Needs needs = context.needs().get(place);
      sum += context.attendees().get(place).weight() * needs.rate(load, gain);
    }
    double weights = context.attendees().stream().mapToDouble(Attendee::weight).sum();
    return weights > 0 ? sum / weights : 0;
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

  double restEveryMinutes() {
    return restEveryMinutes;
  }

  double restMinutes() {
    return restMinutes;
  }

  double rate(int drill) {
    return rates[drill];
  }

  int drills() {
    return rates.length;
  }

  /** The practice benefit per player, if each drill brings each player so many minutes. */
  double benefit(double[] minutesByDrill) {
    double sum = 0;
    for (int drill = 0; drill < rates.length; drill++) {
      if (minutesByDrill[drill] > 0) {
        sum += rates[drill] * PracticeMinutes.effective(minutesByDrill[drill]);
      }
    }
    return sum;
  }
}
