package rallywright.engine.club;

import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A player of the club.
 *
 * @param id the player's id
 * @param name the name as the coach writes it; 1 to 80 characters
 * @param level the coach's estimate, or null where there is none
 * @param hand the paddle hand
 * @param limits what the player should not be asked to do
 * @param notes the coach's notes, also on health; never shown on court pages
 * @param ageGroup adult or junior
 * @param standing active, walk-in, archived or erased
 */
public record Player(
    PlayerId id,
    String name,
    @Nullable Level level,
    Hand hand,
    Set<Limit> limits,
    String notes,
    AgeGroup ageGroup,
    Standing standing) {

  /** The longest name that is taken, in characters. */
  public static final int LONGEST_NAME = 80;

  /** Checks the name and copies the limits. */
  public Player {
    if (name.isBlank() || name.length() > LONGEST_NAME) {
      throw new IllegalArgumentException(
          "The name \"" + name + "\" must have 1 to " + LONGEST_NAME + " characters.");
    }
    limits = Set.copyOf(limits);
  }

  /**
   * The first name, for pages that others can see.
   *
   * @return the name up to the first space
   */
  public String firstName() {
    int space = name.strip().indexOf(' ');
    return space < 0 ? name.strip() : name.strip().substring(0, space);
  }
}
