package rallywright.engine.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rallywright.engine.plan.SearchModel.Option;
import rallywright.engine.plan.SearchModel.Part;

/**
 * What a plan can do with one drill: all numbers of stints along its lines, each with what it
 * brings and costs. A plan is one choice for each drill.
 *
 * @param drill the drill's place in the list of drills
 * @param options its options' places in the model, one or two
 * @param choices all choices that keep to the rules of a single drill, "not at all" first
 */
record DrillChoices(int drill, List<Integer> options, List<Choice> choices) {

  /**
   * So many stints of a drill.
   *
   * @param stints along each of its lines
   * @param seconds mean time, change-overs included
   * @param variance of the time in s², the drill's own pace aside
   * @param shared seconds by which the drill's unsure pace spreads: one standard deviation
   * @param benefit what it brings
   * @param price the small prices of long blocks
   */
  @SuppressWarnings("ArrayRecordComponent") // read in an inner loop, never compared or shared
  record Choice(
      int[] stints, double seconds, double variance, double shared, double benefit, double price) {

    boolean isNothing() {
      return seconds == 0;
    }

    double value() {
      return benefit - price;
    }
  }

  /** Whether a plan has rounds of this drill. */
  boolean isIn(int[] stints) {
    return options.stream().anyMatch(option -> stints[option] > 0);
  }

  /** A plan with another choice for this drill. */
  int[] with(int[] stints, Choice choice) {
    int[] next = stints.clone();
    for (int i = 0; i < options.size(); i++) {
      next[options.get(i)] = choice.stints()[i];
    }
    return next;
  }

  static List<DrillChoices> of(SearchModel model, SearchRules rules) {
    Map<Integer, List<Integer>> byDrill = new LinkedHashMap<>();
    for (int i = 0; i < model.options().size(); i++) {
      byDrill.computeIfAbsent(model.options().get(i).drill(), key -> new ArrayList<>()).add(i);
    }
    List<DrillChoices> all = new ArrayList<>();
    byDrill.forEach((drill, options) -> all.add(of(model, rules, drill, options)));
    return all;
  }

  private static DrillChoices of(
      SearchModel model, SearchRules rules, int drill, List<Integer> options) {
    List<Choice> choices = new ArrayList<>();
    int[] most =
        options.stream().mapToInt(option -> model.options().get(option).mostStints()).toArray();
    int second = options.size() == 2 ? most[1] : 0;
    List<Part> parts =
        options.stream().map(option -> model.atBest(model.options().get(option))).toList();
    for (int one = 0; one <= most[0]; one++) {
      for (int other = 0; other <= second; other++) {
        int[] stints = options.size() == 2 ? new int[] {one, other} : new int[] {one};
        if (rules.allows(options, stints)) {
          choices.add(choice(new AtBest(model, options, parts), rules, stints));
        }
      }
    }
    return new DrillChoices(drill, options, choices);
  }

  /** A drill's options, each with the least that a stint takes and the most that it brings. */
  private record AtBest(SearchModel model, List<Integer> options, List<Part> parts) {

    Option option(int line) {
      return model.options().get(options.get(line));
    }
  }

  /** What it costs and brings; with people who come and go, at most and for as little time. */
  private static Choice choice(AtBest drill, SearchRules rules, int[] stints) {
    double seconds = 0;
    double variance = 0;
    double shared = 0;
    double minutes = 0;
    double price = 0;
    for (int i = 0; i < stints.length; i++) {
      Option option = drill.option(i);
      if (stints[i] > 0) {
        Part part = drill.parts().get(i);
        seconds +=
            option.blockSeconds(stints[i]) - stints[i] * (option.part().seconds() - part.seconds());
        variance += stints[i] * part.variance();
        shared += stints[i] * part.shared();
        minutes += stints[i] * part.minutes();
        price += rules.longBlock(stints[i]);
      }
    }
    double[] all = new double[drill.model().context().presence().companies()];
    Arrays.fill(all, minutes);
    double benefit = drill.model().benefit(drill.option(0).drill(), all);
    return new Choice(stints, seconds, variance, shared, benefit, price);
  }
}
