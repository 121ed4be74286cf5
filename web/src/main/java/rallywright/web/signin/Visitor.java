package rallywright.web.signin;

import java.security.Principal;
import org.jspecify.annotations.Nullable;
import rallywright.engine.session.SessionId;

/** Who is signed in: the coach, or somebody whom an on-court key let in to one session. */
public sealed interface Visitor {

  /** The coach, who may open everything. */
  record Coach() implements Visitor {
    @Override
    public String name() {
      return COACH_NAME;
    }

    @Override
    public String role() {
      return "COACH";
    }
  }

  /**
   * A player or coach with the key of one session, who may open nothing else.
   *
   * @param session the session
   */
  record Court(SessionId session) implements Visitor {
    @Override
    public String name() {
      return COURT_PREFIX + session.value();
    }

    @Override
    public String role() {
      return "COURT";
    }
  }

  /** The coach's name in a signed-in request. */
  String COACH_NAME = "coach";

  /** How the name of a visitor of one session begins. */
  String COURT_PREFIX = "court:";

  /** The name that a signed-in request carries. */
  String name();

  /** The role that opens doors. */
  String role();

  /** The visitor of a signed-in request, or null where nobody is signed in. */
  static @Nullable Visitor of(@Nullable Principal signedIn) {
    if (signedIn == null) {
      return null;
    }
    String name = signedIn.getName();
    if (name.startsWith(COURT_PREFIX)) {
      return new Court(new SessionId(name.substring(COURT_PREFIX.length())));
    }
    return name.equals(COACH_NAME) ? new Coach() : null;
  }
}
