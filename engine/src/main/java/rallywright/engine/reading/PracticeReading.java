package rallywright.engine.reading;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.ConcurrentHashMap;
import rallywright.engine.club.Player;
import rallywright.engine.club.PlayerId;
import rallywright.engine.drill.DrillKey;
import rallywright.engine.drill.Skill;
import rallywright.engine.plan.DrillGains;
import rallywright.engine.skill.Posterior;

/**
 * What the scores say about practice: what tells most, which drills bring how much, and how many
 * sessions it takes until a rise would show.
 */
public final class PracticeReading {

  /**
   * The least and the most that a drill counts beside others, whatever the scores say: they do not
   * show a cause, so no drill is dropped or sworn by. Assumption of this project.
   */
  private static final double LEAST_GAIN = 0.5;

  private static final double MOST_GAIN = 2;

  /** From this SD on, in logits, a skill is not well known. Assumption of this project. */
  private static final double WIDE_SD = 0.4;

  private final ClubHistory history;
  private final Gathering gathering;
  private final Posterior posterior;
  private final Map<Wanted, Optional<Measure>> measures = new ConcurrentHashMap<>();

  private record Wanted(PlayerId player, Skill skill) {}

  PracticeReading(ClubHistory history, Gathering gathering, Posterior posterior) {
    this.history = history;
    this.gathering = gathering;
    this.posterior = posterior;
  }

  /**
   * What tells most about a skill of a player for the time it takes.
   *
   * @param player a player of the history
   * @param skill the skill
   * @return the drill or yardstick, or empty where nothing turns on the skill or a limit of the
   *     player forbids it
   */
  public Optional<Measure> measure(PlayerId player, Skill skill) {
    return measures.computeIfAbsent(
        new Wanted(player, skill),
        wanted -> new MeasureSearch(history, gathering, posterior).best(known(player), skill));
  }

  private Player known(PlayerId player) {
    return history.players().stream()
        .filter(each -> each.id().equals(player))
        .findFirst()
        .orElseThrow(
            () -> new IllegalArgumentException("Nothing is known of the player " + player + "."));
  }

  /**
   * Whether so little is known of a skill that it is worth finding out.
   *
   * @param skill what is known
   * @return true below about 30 rallies, or where the SD is 0.4 logits or more
   */
  public static boolean isWide(SkillReading skill) {
    return !skill.enough() || skill.now().sd() >= WIDE_SD;
  }

  /**
   * How many more sessions like the player's last ones it takes until a rise would show.
   *
   * @param player a player of the history
   * @param skill the skill
   * @param since the day from which the rise is counted
   * @param rise its size in logits, above 0
   * @return the number; empty where {@value SessionsToShow#MOST} sessions would not be enough, or
   *     where no session of the player told anything about the skill
   */
  public OptionalInt sessionsToShow(PlayerId player, Skill skill, LocalDate since, double rise) {
    return new SessionsToShow(gathering, posterior).count(player, skill, since, rise);
  }

  /**
   * What an effective minute of each drill brings beside other drills, as far as the scores tell:
   * the learned gain over the gain assumed before any score, between a half and twice.
   *
   * @param gains what the scores say of each drill
   * @return 1 for a drill that was not played
   */
  public static DrillGains beside(List<GainReading> gains) {
    Map<DrillKey, Double> ratios = new HashMap<>();
    for (GainReading gain : gains) {
      double ratio = gain.perMinute().mean() / gain.before().mean();
      ratios.put(gain.drill().key(), Math.max(LEAST_GAIN, Math.min(MOST_GAIN, ratio)));
    }
    return key -> ratios.getOrDefault(key, 1.0);
  }
}
