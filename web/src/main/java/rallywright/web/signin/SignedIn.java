package rallywright.web.signin;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.servlet.http.HttpSession;
import java.time.Duration;
import java.util.List;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.authority.SimpleGrantedAuthority;
import org.springframework.security.core.context.SecurityContext;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.web.context.HttpSessionSecurityContextRepository;
import org.springframework.security.web.csrf.HttpSessionCsrfTokenRepository;
import org.springframework.stereotype.Component;

/** Lets a visitor in: a fresh session id, a fresh token against forged requests, one role. */
@Component
public final class SignedIn {

  /** How long a session lasts without a request: a day on court with its breaks. */
  private static final Duration IDLE = Duration.ofHours(12);

  private static final String PASSWORD_ROUND = "rallywright.password-round";

  private final CoachPassword password;
  private final HttpSessionSecurityContextRepository sessions =
      new HttpSessionSecurityContextRepository();
  private final HttpSessionCsrfTokenRepository tokens = new HttpSessionCsrfTokenRepository();

  SignedIn(CoachPassword password) {
    this.password = password;
  }

  /** Signs a visitor in for the requests that follow. */
  public void enter(Visitor visitor, HttpServletRequest request, HttpServletResponse response) {
    HttpSession session = request.getSession(true);
    request.changeSessionId();
    tokens.saveToken(null, request, response);
    session.setMaxInactiveInterval((int) IDLE.toSeconds());
    if (visitor instanceof Visitor.Coach) {
      session.setAttribute(PASSWORD_ROUND, password.round());
    } else {
      session.removeAttribute(PASSWORD_ROUND);
    }
    SecurityContext context = SecurityContextHolder.createEmptyContext();
    context.setAuthentication(
        UsernamePasswordAuthenticationToken.authenticated(
            visitor.name(), null, List.of(new SimpleGrantedAuthority("ROLE_" + visitor.role()))));
    sessions.saveContext(context, request, response);
  }

  /** Whether a coach's session began before the password was changed and so counts no more. */
  boolean isOutdated(HttpSession session) {
    Object round = session.getAttribute(PASSWORD_ROUND);
    return round != null && !round.equals(password.round());
  }
}
