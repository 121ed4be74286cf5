package rallywright.engine.plan;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;
import rallywright.engine.club.Limit;
import rallywright.engine.club.PlayerId;
import rallywright.engine.practice.PlayerStanding;

/**
 * One player who will be there.
 *
 * @param id the player's id
 * @param standing what is known of the player's skills
 * @param limits what the player should not be asked to do
 */
public record Attendee(PlayerId id, PlayerStanding standing, Set<Limit> limits) {

  /** Copies the limits. */
  public Attendee {
    EnumSet<Limit> copy = EnumSet.noneOf(Limit.class);
    copy.addAll(limits);
    limits = Collections.unmodifiableSet(copy);
  }

  /**
   * The name used in sentences.
   *
   * @return the name
   */
  public String name() {
    return standing.name();
  }
}
