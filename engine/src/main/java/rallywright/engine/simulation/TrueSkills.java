package rallywright.engine.simulation;

import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.random.RandomGenerator;
import rallywright.engine.club.Player;
import rallywright.engine.club.PlayerId;
import rallywright.engine.drill.Skill;
import rallywright.engine.drill.SkillGroup;
import rallywright.engine.drill.SkillWeights;
import rallywright.engine.point.SkillProfile;
import rallywright.engine.skill.SkillPrior;

/**
 * What the invented players can really do, in log odds per rally against a player of level 3.5.
 *
 * @param values each player's true skills
 */
public record TrueSkills(Map<PlayerId, Map<Skill, Double>> values) {

  /** Log odds gained per minute of practice of a skill: an assumption of this project. */
  public static final double GAIN_PER_MINUTE = 0.0004;

  /** Keeps a copy. */
  public TrueSkills {
    values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
  }

  /**
   * Draws skills from the model's prior: a level, three groups and eleven skills for each player.
   *
   * @param players the players, with or without a level
   * @param prior the spreads to draw from
   * @param random the seeded source of chance
   * @return their true skills in the first week
   */
  public static TrueSkills drawn(List<Player> players, SkillPrior prior, RandomGenerator random) {
    Map<PlayerId, Map<Skill, Double>> all = new LinkedHashMap<>();
    for (Player player : players) {
      double steps =
          player.level() == null
              ? random.nextGaussian()
              : (player.level().value() - SkillPrior.MIDDLE_LEVEL) / SkillPrior.STEP_OF_LEVEL;
      double common = prior.levelStep() * steps + prior.levelSd() * random.nextGaussian();
      Map<SkillGroup, Double> groups = new EnumMap<>(SkillGroup.class);
      for (SkillGroup group : SkillGroup.values()) {
        groups.put(group, prior.groupSd() * random.nextGaussian());
      }
      Map<Skill, Double> skills = new EnumMap<>(Skill.class);
      for (Skill skill : Skill.values()) {
        double own = prior.skillSd() * random.nextGaussian();
        skills.put(skill, common + groups.getOrDefault(skill.group(), 0.0) + own);
      }
      all.put(player.id(), skills);
    }
    return new TrueSkills(all);
  }

  /**
   * The skills a week later: a random step for every skill, and a little for what was practised.
   *
   * @param prior the model's spread of a week's step
   * @param practised minutes of practice by player and skill; nothing where nothing was practised
   * @param random the seeded source of chance
   * @return the new true skills
   */
  public TrueSkills afterWeek(
      SkillPrior prior, Map<PlayerId, Map<Skill, Double>> practised, RandomGenerator random) {
    Map<PlayerId, Map<Skill, Double>> all = new LinkedHashMap<>();
    values.forEach(
        (player, before) -> {
          Map<Skill, Double> after = new EnumMap<>(before);
          Map<Skill, Double> minutes = practised.getOrDefault(player, Map.of());
          after.replaceAll(
              (skill, value) ->
                  value
                      + prior.weeklySd() * random.nextGaussian()
                      + GAIN_PER_MINUTE * minutes.getOrDefault(skill, 0.0));
          all.put(player, after);
        });
    return new TrueSkills(all);
  }

  /**
   * One true skill.
   *
   * @param player a player of this club
   * @param skill the skill
   * @return log odds per rally
   * @throws IllegalArgumentException for a player who is not of this club
   */
  public double of(PlayerId player, Skill skill) {
    Map<Skill, Double> skills = values.get(player);
    if (skills == null) {
      throw new IllegalArgumentException(
          "The player (%s) must be one of the invented club's %d. Maybe draw skills again."
              .formatted(player, values.size()));
    }
    return skills.getOrDefault(skill, 0.0);
  }

  /** What players can do together: the mean of each skill. */
  SkillProfile profile(List<PlayerId> players) {
    Map<Skill, Double> means = new EnumMap<>(Skill.class);
    for (Skill skill : Skill.values()) {
      means.put(skill, players.stream().mapToDouble(each -> of(each, skill)).average().orElse(0));
    }
    return new SkillProfile(means);
  }

  double strength(List<PlayerId> players, SkillWeights weights) {
    double sum = 0;
    for (PlayerId player : players) {
      for (Map.Entry<Skill, Double> share : weights.shares().entrySet()) {
        sum += share.getValue() * of(player, share.getKey());
      }
    }
    return sum / players.size();
  }
}
