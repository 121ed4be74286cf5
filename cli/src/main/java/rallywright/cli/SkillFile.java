package rallywright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import rallywright.engine.skill.Club;
import rallywright.engine.skill.Entrant;
import rallywright.engine.skill.Evidence;
import rallywright.engine.skill.SharedEffect;
import rallywright.engine.skill.SkillGroups;
import rallywright.engine.skill.SkillModel;
import rallywright.engine.skill.SkillPrior;

/**
 * A club with its results as a JSON file: hyper-parameters, levels, drills, yardsticks, games.
 *
 * @param club players, skills and effects (drills first, then yardsticks)
 * @param prior the hyper-parameters
 * @param skills names of the skills
 * @param evidence games and yardstick results
 * @param weeks how many weeks, counted from 0
 */
record SkillFile(
    Club club, SkillPrior prior, List<String> skills, List<Evidence> evidence, int weeks) {

  /**
   * Bounds that no sensible file reaches; they keep a slip of the finger from running for hours.
   */
  static final int MOST_PLAYERS = 2000;

  private static final int MOST_WEEKS = 2000;
  private static final int MOST_SKILLS = 100;
  private static final int MOST_GROUPS = 1000;
  private static final double LARGEST_LOGIT = 20;
  private static final double SMALLEST_SD = 1e-6;

  /** The set of weeks for which estimates are wanted: all. */
  Set<Integer> allWeeks() {
    return IntStream.range(0, weeks).boxed().collect(Collectors.toSet());
  }

  SkillModel model() {
    return SkillModel.of(club, prior);
  }

  static SkillFile read(JsonField root) {
    List<String> skills = skills(root);
    List<Integer> groups = new ArrayList<>();
    for (JsonField group : root.field("group").elements(skills.size())) {
      groups.add(group.integer(0, MOST_GROUPS));
    }
    int weeks = root.field("weeks").integer(1, MOST_WEEKS);
    boolean learn = root.optional("learnDrillEffects").map(JsonField::flag).orElse(false);
    List<SharedEffect> effects = new ArrayList<>();
    for (JsonField drill : root.list("drills")) {
      effects.add(effect(drill, "alpha", learn));
    }
    for (JsonField yardstick : root.list("yardsticks")) {
      effects.add(effect(yardstick, "b", learn));
    }
    Club club = new Club(new SkillGroups(groups), entrants(root), effects);
    List<Evidence> evidence = SkillFileGames.of(root, club, weeks).evidence();
    return new SkillFile(club, prior(root), skills, evidence, weeks);
  }

  private static List<String> skills(JsonField root) {
    List<String> skills = root.field("skills").elements().stream().map(JsonField::text).toList();
    if (skills.isEmpty() || skills.size() > MOST_SKILLS) {
      throw root.field("skills")
          .wrong("a list of 1 to %d names".formatted(MOST_SKILLS), "[\"drop\", \"dink\"]");
    }
    return skills;
  }

  private static SkillPrior prior(JsonField root) {
    return new SkillPrior(
        root.field("sigmaL").number(0, LARGEST_LOGIT),
        root.field("sigmaG").number(0, LARGEST_LOGIT),
        root.field("sigmaS").number(SMALLEST_SD, LARGEST_LOGIT),
        root.field("tau").number(SMALLEST_SD, LARGEST_LOGIT),
        root.field("beta").number(-LARGEST_LOGIT, LARGEST_LOGIT),
        SkillPrior.DEFAULT.effectSd());
  }

  /**
   * The advantage of a drill or the difficulty of a yardstick; known unless it is to be learned.
   */
  private static SharedEffect effect(JsonField field, String mean, boolean learn) {
    return new SharedEffect(
        field.field("name").text(),
        field.field(mean).number(-LARGEST_LOGIT, LARGEST_LOGIT),
        learn ? field.field(mean + "Sd").number(0, LARGEST_LOGIT) : 0);
  }

  /** One entrant for each level; where no levels are given, one for each player who is named. */
  private static List<Entrant> entrants(JsonField root) {
    List<Entrant> entrants = new ArrayList<>();
    if (root.optional("levels").isEmpty()) {
      int players = SkillFileGames.largestPlayer(root) + 1;
      for (int player = 0; player < players; player++) {
        entrants.add(Entrant.unknown());
      }
      return entrants;
    }
    for (JsonField level : root.list("levels")) {
      try {
        entrants.add(
            level.isNull()
                ? Entrant.unknown()
                : new Entrant(OptionalDouble.of(level.number(-MOST_WEEKS, MOST_WEEKS)), 0));
      } catch (IllegalArgumentException refusal) {
        throw level.refused(refusal);
      }
    }
    return entrants;
  }
}
