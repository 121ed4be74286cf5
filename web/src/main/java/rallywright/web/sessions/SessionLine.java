package rallywright.web.sessions;

/**
 * One line of the list of sessions.
 *
 * @param id the session's id
 * @param name what the coach calls it
 * @param when day and time
 * @param state planned, running or done
 */
public record SessionLine(String id, String name, String when, String state) {}
