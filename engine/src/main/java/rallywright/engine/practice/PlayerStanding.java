package rallywright.engine.practice;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import rallywright.engine.club.Level;
import rallywright.engine.drill.Skill;
import rallywright.engine.skill.SkillPrior;

/**
 * What is known of a player today, as the plan needs it.
 *
 * @param name the name used in sentences
 * @param level the coach's estimate, if there is one
 * @param skills one standing for each skill
 * @param telling what to play or count in order to learn most about a skill; looked for when asked
 */
public record PlayerStanding(
    String name, Optional<Level> level, Map<Skill, SkillStanding> skills, Telling telling) {

  /** What tells most about a skill for its time. Finding it takes a while, so it is asked late. */
  @FunctionalInterface
  public interface Telling {

    /** Nobody looked. */
    Telling NOT_LOOKED_FOR = skill -> Optional.empty();

    /**
     * The drill or test that tells most.
     *
     * @param skill about which skill
     * @return its name; empty where nothing turns on the skill, or where nobody looked
     */
    Optional<String> about(Skill skill);
  }

  /** Logits that half a step of level is worth. Assumption of this project. */
  public static final double LOGITS_PER_HALF_LEVEL = SkillPrior.DEFAULT.levelStep();

  /** The level whose skills stand at 0 logits. */
  public static final double MIDDLE_LEVEL = SkillPrior.MIDDLE_LEVEL;

  /** How unsure a skill is before any game, in logits. Assumption of this project. */
  public static final double FIRST_SD = 0.6;

  /** Copies the map and asks for every skill. */
  public PlayerStanding {
    for (Skill skill : Skill.values()) {
      if (!skills.containsKey(skill)) {
        throw new IllegalArgumentException(
            "%s has no standing in %s; every skill needs one. Maybe start from the level."
                .formatted(name, skill.words()));
      }
    }
    // In the order of the skills, so that sums over them are the same in every run.
    skills = Collections.unmodifiableMap(new EnumMap<>(skills));
  }

  /**
   * A player for whom nobody looked what tells most.
   *
   * @param name the name used in sentences
   * @param level the coach's estimate, if there is one
   * @param skills one standing for each skill
   */
  public PlayerStanding(String name, Optional<Level> level, Map<Skill, SkillStanding> skills) {
    this(name, level, skills, Telling.NOT_LOOKED_FOR);
  }

  /**
   * This player with what tells most about skills that are not well known.
   *
   * @param other finds it when it is asked for
   * @return the changed player
   */
  public PlayerStanding withTelling(Telling other) {
    return new PlayerStanding(name, level, skills, other);
  }

  /**
   * A player of whom only a level is known, or not even that: every skill stands at the level's
   * mean, rests on no rally and was not practised.
   *
   * @param name the name used in sentences
   * @param level the coach's estimate, if there is one
   * @return the standing
   */
  public static PlayerStanding newcomer(String name, Optional<Level> level) {
    double mean = level.map(PlayerStanding::meanOf).orElse(0.0);
    Map<Skill, SkillStanding> skills = new EnumMap<>(Skill.class);
    for (Skill skill : Skill.values()) {
      skills.put(skill, new SkillStanding(skill, mean, FIRST_SD, 0, List.of()));
    }
    return new PlayerStanding(name, level, skills);
  }

  /**
   * The mean of all skills that a level leads one to expect.
   *
   * @param level the coach's estimate
   * @return in logits
   */
  public static double meanOf(Level level) {
    return LOGITS_PER_HALF_LEVEL * (level.value() - MIDDLE_LEVEL) / 0.5;
  }

  /**
   * The standing in one skill.
   *
   * @param skill the skill
   * @return what is known of it
   */
  public SkillStanding in(Skill skill) {
    return Objects.requireNonNull(skills.get(skill));
  }

  /**
   * This player with another standing in one skill.
   *
   * @param other the new standing
   * @return the changed player
   */
  public PlayerStanding with(SkillStanding other) {
    Map<Skill, SkillStanding> changed = new EnumMap<>(skills);
    changed.put(other.skill(), other);
    return new PlayerStanding(name, level, changed, telling);
  }

  /**
   * Where one would expect a skill to stand: the mean of the player's other skills and, where there
   * is a level, half-way from it to the level's mean.
   *
   * @param skill the skill that is left out
   * @return in logits
   */
  public double expectedIn(Skill skill) {
    double others =
        skills.values().stream()
            .filter(each -> each.skill() != skill)
            .mapToDouble(SkillStanding::mean)
            .average()
            .orElseThrow();
    return level.map(each -> (meanOf(each) + others) / 2).orElse(others);
  }
}
