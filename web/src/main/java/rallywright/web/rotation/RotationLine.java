package rallywright.web.rotation;

/**
 * One line of the list of rotations.
 *
 * @param id the day's id
 * @param name its name
 * @param when the day in words
 * @param state how far it is
 */
public record RotationLine(String id, String name, String when, String state) {}
