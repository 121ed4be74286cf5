package rallywright.web.oncourt;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.servlet.http.HttpSession;
import java.time.Duration;
import java.time.InstantSource;
import java.time.ZoneId;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Component;
import org.springframework.web.server.ResponseStatusException;
import rallywright.engine.session.Session;
import rallywright.engine.session.SessionId;
import rallywright.store.ClubStore;
import rallywright.store.KeyBook;
import rallywright.web.page.NotHere;
import rallywright.web.signin.SignedIn;
import rallywright.web.signin.Visitor;

/**
 * Who may score a session: the coach, and whoever holds a key of that very session that has neither
 * run out nor been taken back. The key is looked up again at every message.
 */
@Component
public final class CourtAccess {

  /** How long a key is good after the end of its session; assumption of this project. */
  public static final Duration AFTER_THE_END = Duration.ofHours(12);

  private static final String KEY = "rallywright.court-key";
  private static final int LONGEST_KEY = 200;

  private final ClubStore store;
  private final SignedIn signedIn;
  private final InstantSource clock = InstantSource.system();

  CourtAccess(ClubStore store, SignedIn signedIn) {
    this.store = store;
    this.signedIn = signedIn;
  }

  /** Makes a key for the phones of a session. Earlier ones stay good until they are taken back. */
  public String issue(Session session) {
    return store.keys().issue(KeyBook.Kind.ON_COURT, session.id().value(), expiry(session));
  }

  /** Takes back every key of a session: phones that were let in are turned away at once. */
  public void takeBackAll(SessionId session) {
    store.keys().revokeAll(KeyBook.Kind.ON_COURT, session.value());
  }

  /** The end as planned, or if it is late already the end if it began now, and the hours after. */
  private long expiry(Session session) {
    Duration booked = Duration.ofMinutes(session.plan().minutes());
    long planned =
        session
            .date()
            .atTime(session.start())
            .atZone(ZoneId.systemDefault())
            .toInstant()
            .toEpochMilli();
    return Math.max(planned, clock.millis()) + booked.plus(AFTER_THE_END).toMillis();
  }

  /** Lets a phone in with a key. */
  Optional<SessionId> enter(String key, HttpServletRequest request, HttpServletResponse response) {
    Optional<SessionId> session = sessionOf(key);
    session.ifPresent(
        id -> {
          if (!(Visitor.of(request.getUserPrincipal()) instanceof Visitor.Coach)) {
            signedIn.enter(new Visitor.Court(id), request, response);
            request.getSession().setAttribute(KEY, key);
          }
        });
    return session;
  }

  private Optional<SessionId> sessionOf(@Nullable String key) {
    return key == null || key.isBlank() || key.length() > LONGEST_KEY
        ? Optional.empty()
        : store.keys().check(KeyBook.Kind.ON_COURT, key, clock.millis()).map(SessionId::new);
  }

  /**
   * The session of an address, if the visitor may score it.
   *
   * @throws ResponseStatusException 403 for a key of another session, 401 for one that has run out
   * @throws NotHere if the address cannot name a session
   */
  public SessionId allowed(String session, HttpServletRequest request) {
    if (session.isBlank() || session.length() > SessionId.LONGEST) {
      throw notHere(session);
    }
    SessionId id = new SessionId(session);
    Visitor visitor = Visitor.of(request.getUserPrincipal());
    if (visitor instanceof Visitor.Coach) {
      return id;
    }
    if (!(visitor instanceof Visitor.Court court) || !court.session().equals(id)) {
      throw new ResponseStatusException(HttpStatus.FORBIDDEN);
    }
    HttpSession visit = request.getSession(false);
    Object key = visit == null ? null : visit.getAttribute(KEY);
    if (!(key instanceof String text) || sessionOf(text).filter(id::equals).isEmpty()) {
      throw new ResponseStatusException(HttpStatus.UNAUTHORIZED);
    }
    return id;
  }

  static NotHere notHere(String session) {
    String seen = session.length() <= 40 ? session : session.substring(0, 40) + "…";
    return new NotHere(
        "There is no session (%s) in this club. Maybe it was removed; look under Sessions."
            .formatted(seen));
  }
}
