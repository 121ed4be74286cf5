package rallywright.web.board;

import jakarta.annotation.PreDestroy;
import java.io.IOException;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.event.ContextClosedEvent;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;
import org.springframework.web.servlet.mvc.method.annotation.SseEmitter;
import rallywright.engine.session.SessionId;
import rallywright.store.ClubStore;
import rallywright.store.StoreProblem;
import rallywright.web.oncourt.ChangeTrail;

/**
 * Tells open boards that the club changed, by server-sent events. It looks at the number of changes
 * four times a second, and only while a board is open: so it hears of changes from every page,
 * every phone and every other program on the same database, and costs nothing otherwise. Where only
 * scores came in, the boards of other sessions are left in peace.
 */
@Component
final class BoardStream {

  private static final long LOOK_EVERY_MS = 250;
  private static final int QUIET_LOOKS = 60;

  private final ClubStore store;
  private final ChangeTrail trail;
  private final Map<SseEmitter, SessionId> open = new ConcurrentHashMap<>();
  private final Thread looking = new Thread(this::keepLooking, "boards");
  private volatile boolean closed;
  private long seen = -1;
  private int quiet;

  BoardStream(ClubStore store, ChangeTrail trail) {
    this.store = store;
    this.trail = trail;
    looking.setDaemon(true);
  }

  /** The first look is due once the program is whole. */
  @EventListener(ApplicationReadyEvent.class)
  void start() {
    looking.start();
  }

  private void keepLooking() {
    while (!closed) {
      try {
        Thread.sleep(LOOK_EVERY_MS);
        look();
      } catch (StoreProblem unreachable) {
        seen = -1;
      } catch (InterruptedException end) {
        return;
      }
    }
  }

  /**
   * A stream for one more board of a session; it begins with the present state, so that a gap is
   * caught up.
   */
  SseEmitter join(SessionId session) {
    SseEmitter emitter = new SseEmitter(0L);
    emitter.onCompletion(() -> open.remove(emitter));
    emitter.onTimeout(emitter::complete);
    emitter.onError(problem -> open.remove(emitter));
    open.put(emitter, session);
    send(emitter, SseEmitter.event().name("changed").data(String.valueOf(store.revision())));
    return emitter;
  }

  private void look() {
    if (open.isEmpty()) {
      seen = -1;
      return;
    }
    long now = store.revision();
    if (now != seen) {
      Optional<Set<SessionId>> scored = seen < 0 ? Optional.empty() : trail.addedBetween(seen, now);
      seen = now;
      quiet = 0;
      open.forEach(
          (each, session) -> {
            if (scored.isEmpty() || scored.get().contains(session)) {
              send(each, SseEmitter.event().name("changed").data(String.valueOf(now)));
            }
          });
    } else if (++quiet >= QUIET_LOOKS) {
      // A comment now and then finds out who has gone.
      quiet = 0;
      open.keySet().forEach(each -> send(each, SseEmitter.event().comment("still here")));
    }
  }

  private void send(SseEmitter emitter, SseEmitter.SseEventBuilder event) {
    try {
      emitter.send(event);
    } catch (IOException | IllegalStateException gone) {
      open.remove(emitter);
    }
  }

  /** An open stream would delay the end of the program. */
  @EventListener(ContextClosedEvent.class)
  void close() {
    closed = true;
    looking.interrupt();
    open.keySet().forEach(SseEmitter::complete);
    open.clear();
  }

  @PreDestroy
  void end() {
    close();
  }
}
