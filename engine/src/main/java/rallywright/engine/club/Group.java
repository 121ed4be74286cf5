package rallywright.engine.club;

import java.util.Set;

/**
 * A group of players that trains together; a player may be in several.
 *
 * @param id the group's id
 * @param name the name as the coach writes it; 1 to 80 characters
 * @param members who is in it
 */
public record Group(GroupId id, String name, Set<PlayerId> members) {

  /** Checks the name and copies the members. */
  public Group {
    if (name.isBlank() || name.length() > Player.LONGEST_NAME) {
      throw new IllegalArgumentException(
          "The group's name \""
              + name
              + "\" must have 1 to "
              + Player.LONGEST_NAME
              + " characters.");
    }
    members = Set.copyOf(members);
  }
}
