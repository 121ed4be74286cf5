package rallywright.web.oncourt;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.springframework.stereotype.Component;
import rallywright.engine.session.SessionId;

/**
 * Which of the club's last changes only added entries to the log of one session. Every change
 * raises the club's revision by one; a number that is not on this trail may have changed anything,
 * also by another program on the same database.
 */
@Component
public final class ChangeTrail {

  /** So many changes are remembered: a minute and more of a full house. */
  private static final int LONGEST = 4096;

  private final Map<Long, SessionId> entries =
      new LinkedHashMap<>() {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Long, SessionId> eldest) {
          return size() > LONGEST;
        }
      };

  /** A change that is on the disk has only added entries to a session. */
  synchronized void added(long revision, SessionId session) {
    entries.put(revision, session);
  }

  /**
   * The sessions that entries were added to between two revisions.
   *
   * @param before the revision already known
   * @param now the revision now
   * @return the sessions; empty if anything else may have changed as well
   */
  public synchronized Optional<Set<SessionId>> addedBetween(long before, long now) {
    if (before > now || now - before > LONGEST) {
      return Optional.empty();
    }
    Set<SessionId> sessions = new HashSet<>();
    for (long revision = before + 1; revision <= now; revision++) {
      SessionId session = entries.get(revision);
      if (session == null) {
        return Optional.empty();
      }
      sessions.add(session);
    }
    return Optional.of(sessions);
  }
}
