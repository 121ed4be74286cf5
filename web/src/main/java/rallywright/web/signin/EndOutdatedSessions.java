package rallywright.web.signin;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.servlet.http.HttpSession;
import java.io.IOException;
import org.springframework.web.filter.OncePerRequestFilter;

/** Ends the sessions of devices that signed in before the coach changed the password. */
final class EndOutdatedSessions extends OncePerRequestFilter {

  private final SignedIn signedIn;

  EndOutdatedSessions(SignedIn signedIn) {
    this.signedIn = signedIn;
  }

  @Override
  protected void doFilterInternal(
      HttpServletRequest request, HttpServletResponse response, FilterChain rest)
      throws ServletException, IOException {
    HttpSession session = request.getSession(false);
    if (session != null && signedIn.isOutdated(session)) {
      session.invalidate();
    }
    rest.doFilter(request, response);
  }
}
