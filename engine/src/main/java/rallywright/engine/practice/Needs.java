package rallywright.engine.practice;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import rallywright.engine.drill.Skill;
import rallywright.engine.practice.Need.Cause;
import rallywright.engine.quantity.StandardNormal;
import rallywright.engine.skill.RallyCounts;

/**
 * The needs of one player, one for each skill.
 *
 * <p><b>Card.</b> need = worth × (room × urgency + information), the worths of a player's skills
 * scaled to sum to 1. <em>Room</em> runs from 0 to 2 and is 1 where a skill stands as expected: 2 /
 * (1 + e^(-gap / 0.5)), gap = expected less estimate, in logits. <em>Urgency</em> runs from 1
 * (fresh) to 1.5 (all faded). <em>Information</em> is at most 0.5, for a skill with fewer than 30
 * rallies that is still unsure. The form and the numbers are assumptions of this project. Limits:
 * worth is what the given {@link SkillWorth} says; a need is a ranking, not a forecast.
 */
public final class Needs {

  /** Fewer rallies than this are too early to tell, as {@link RallyCounts} says. */
  public static final int ENOUGH_RALLIES = (int) RallyCounts.ENOUGH;

  private static final double ROOM_SCALE_LOGITS = 0.5;
  private static final double MOST_URGENCY = 0.5;
  private static final double MOST_INFORMATION = 0.5;
  private static final double SURE_ENOUGH = 0.8;
  private static final int LONG_WEEKS = 2;

  private final String name;
  private final Map<Skill, Need> needs;

  private Needs(String name, Map<Skill, Need> needs) {
    this.name = name;
    this.needs = needs;
  }

  /**
   * The needs of a player with the usual half-life of practice.
   *
   * @param player what is known of the player
   * @param worth what each skill is worth
   * @return the needs
   */
  public static Needs of(PlayerStanding player, SkillWorth worth) {
    return of(player, worth, PracticeMinutes.HALF_LIFE_WEEKS);
  }

  /**
   * The needs of a player.
   *
   * @param player what is known of the player
   * @param worth what each skill is worth
   * @param halfLifeWeeks after how many weeks half of a practice has faded, above 0
   * @return the needs
   * @throws IllegalArgumentException if the half-life is not above 0
   */
  public static Needs of(PlayerStanding player, SkillWorth worth, double halfLifeWeeks) {
    Map<Skill, Double> worths = new EnumMap<>(worth.of(player));
    double sum = 0;
    for (Skill skill : Skill.values()) {
      double each = worths.getOrDefault(skill, 0.0);
      if (!(each >= 0 && each < Double.POSITIVE_INFINITY)) {
        throw new IllegalArgumentException(
            "The worth of %s (%s) must be 0 or more.".formatted(skill.words(), each));
      }
      sum += each;
    }
    Map<Skill, Need> needs = new EnumMap<>(Skill.class);
    for (Skill skill : Skill.values()) {
      double share = sum > 0 ? worths.getOrDefault(skill, 0.0) / sum : 0;
      needs.put(skill, need(player, skill, share, halfLifeWeeks));
    }
    return new Needs(player.name(), needs);
  }

  private static Need need(PlayerStanding player, Skill skill, double worth, double halfLifeWeeks) {
    SkillStanding standing = player.in(skill);
    double gap = player.expectedIn(skill) - standing.mean();
    double fresh = PracticeMinutes.freshness(standing.minutesByWeek(), halfLifeWeeks);
    double room = 2 * logistic(gap / ROOM_SCALE_LOGITS);
    double urgency = 1 + MOST_URGENCY * (1 - fresh);
    double value = worth * (room * urgency + information(standing));
    Cause cause = cause(standing, gap);
    return new Need(skill, value, cause, () -> sentence(player, standing, gap, cause));
  }

  private static double information(SkillStanding standing) {
    double missing = Math.max(0, 1 - (double) standing.rallies() / ENOUGH_RALLIES);
    double unsure = Math.min(1, standing.sd() / PlayerStanding.FIRST_SD);
    return MOST_INFORMATION * missing * unsure;
  }

  private static Cause cause(SkillStanding standing, double gap) {
    if (standing.rallies() < ENOUGH_RALLIES) {
      return Cause.TOO_EARLY_TO_TELL;
    }
    if (StandardNormal.below(gap / standing.sd()) >= SURE_ENOUGH) {
      return Cause.BEHIND;
    }
    return standing.weeksSincePractice() >= LONG_WEEKS ? Cause.NOT_PRACTISED : Cause.MATTERS;
  }

  private static String sentence(
      PlayerStanding player, SkillStanding standing, double gap, Cause cause) {
    String name = player.name();
    String skill = standing.skill().words();
    return switch (cause) {
      case TOO_EARLY_TO_TELL ->
          "Too early to tell about %s's %s (%d of about %d rallies): %s."
              .formatted(
                  name, skill, standing.rallies(), ENOUGH_RALLIES, findOut(player, standing));
      case BEHIND ->
          "%s loses %s that turn on the %s, against players of the same standard%s."
              .formatted(name, outOfTen(logistic(gap)), skill, pause(standing));
      case NOT_PRACTISED ->
          "%s's %s keeps up with the other skills, but%s."
              .formatted(name, skill, pause(standing).substring(1));
      case MATTERS ->
          "%s's %s keeps up with the other skills and counts in doubles.".formatted(name, skill);
    };
  }

  private static String findOut(PlayerStanding player, SkillStanding standing) {
    return player
        .telling()
        .about(standing.skill())
        .map(best -> best + " tells most for its time")
        .orElse("play it to find out");
  }

  private static String outOfTen(double chance) {
    return "about %d rallies in 10".formatted(Math.round(10 * chance));
  }

  private static String pause(SkillStanding standing) {
    int weeks = standing.weeksSincePractice();
    return weeks >= LONG_WEEKS ? "; nothing practised for %d weeks".formatted(weeks) : "";
  }

  private static double logistic(double logits) {
    return 1 / (1 + Math.exp(-logits));
  }

  /**
   * The player's name as it stands in the sentences.
   *
   * @return the name
   */
  public String name() {
    return name;
  }

  /**
   * The need of one skill.
   *
   * @param skill the skill
   * @return its need
   */
  public Need of(Skill skill) {
    return Objects.requireNonNull(needs.get(skill));
  }

  /**
   * All needs, the largest first.
   *
   * @return one for each skill
   */
  public List<Need> byUrgency() {
    return needs.values().stream()
        .sorted(Comparator.comparingDouble(Need::value).reversed())
        .toList();
  }

  /**
   * What an effective minute of a drill brings this player.
   *
   * @param load how much of the drill's work goes to each skill; the shares sum to 1
   * @param gain how much an effective minute of the drill brings, beside other drills; 1 where
   *     nothing is known
   * @return 0 or more
   */
  public double rate(Map<Skill, Double> load, double gain) {
    double sum = 0;
    for (Map.Entry<Skill, Double> share : load.entrySet()) {
      sum += of(share.getKey()).value() * share.getValue();
    }
    return gain * sum;
  }
}
