package rallywright.web.oncourt;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.TimeUnit;
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

  /**
   * A change can be seen on the disk a moment before it is on the trail; who waits this long for it
   * is spared reading everything anew. An assumption of this project.
   */
  private static final long PATIENCE_MS = 5;

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
    notifyAll();
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
    if (before < now) {
      waitFor(now);
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

  private synchronized void waitFor(long revision) {
    long end = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(PATIENCE_MS);
    try {
      for (long left = PATIENCE_MS; left > 0 && !entries.containsKey(revision); ) {
        wait(left);
        left = TimeUnit.NANOSECONDS.toMillis(end - System.nanoTime());
      }
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    }
  }
}
