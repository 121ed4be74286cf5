package rallywright.web.signin;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.net.URI;
import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;
import rallywright.web.ServerSettings;

/**
 * Answers only under the names that are this server's own. A foreign page whose name was made to
 * point here (DNS rebinding) carries its own name and is turned away; so is a posted form that
 * comes from a foreign page.
 */
@Component
@Order(Ordered.HIGHEST_PRECEDENCE)
final class KnownHosts extends OncePerRequestFilter {

  private static final Set<String> SAFE_METHODS = Set.of("GET", "HEAD", "OPTIONS");
  private static final Set<String> OWN_SITES = Set.of("same-origin", "none");
  private static final int MISDIRECTED = 421;

  private final Set<String> names = new LinkedHashSet<>(Set.of("127.0.0.1", "localhost", "::1"));
  private final boolean everyAddress;

  KnownHosts(ServerSettings settings) {
    everyAddress = settings.reach().listensEverywhere();
    if (!everyAddress) {
      names.add(bare(settings.host()));
    }
    String publicName = settings.reach().publicName();
    if (publicName != null) {
      names.add(bare(publicName));
    }
  }

  @Override
  protected void doFilterInternal(
      HttpServletRequest request, HttpServletResponse response, FilterChain rest)
      throws ServletException, IOException {
    if (!isOwn(request.getServerName(), request)) {
      refuse(
          response,
          MISDIRECTED,
          "Rallywright does not answer under this name. Open the address that it printed when it"
              + " started, or start it with --public-address and this name.");
    } else if (!SAFE_METHODS.contains(request.getMethod()) && comesFromElsewhere(request)) {
      refuse(
          response,
          HttpServletResponse.SC_FORBIDDEN,
          "This request comes from a page of somebody else, so nothing was stored. Open"
              + " Rallywright itself and try again.");
    } else {
      rest.doFilter(request, response);
    }
  }

  /** Under 0.0.0.0 also the very address at which the request arrived, which is never a name. */
  private boolean isOwn(String name, HttpServletRequest request) {
    String host = bare(name);
    return names.contains(host) || (everyAddress && host.equals(bare(request.getLocalAddr())));
  }

  /**
   * Pages send no referrer, so browsers name the origin of a form as "null"; then their own word on
   * the site decides where they give it, and the token against forged requests always.
   */
  private boolean comesFromElsewhere(HttpServletRequest request) {
    String site = request.getHeader("Sec-Fetch-Site");
    if (site != null && !OWN_SITES.contains(site)) {
      return true;
    }
    String origin = request.getHeader("Origin");
    if (origin == null || origin.equals("null")) {
      return false;
    }
    String name = nameIn(origin);
    return name == null || !isOwn(name, request);
  }

  private static @Nullable String nameIn(String origin) {
    try {
      return URI.create(origin).getHost();
    } catch (IllegalArgumentException notAnAddress) {
      return null;
    }
  }

  private static String bare(String name) {
    String host = name.toLowerCase(Locale.ROOT);
    if (host.startsWith("[") && host.endsWith("]")) {
      host = host.substring(1, host.length() - 1);
    }
    return host.equals("0:0:0:0:0:0:0:1") ? "::1" : host;
  }

  private static void refuse(HttpServletResponse response, int status, String sentence)
      throws IOException {
    response.setStatus(status);
    response.setContentType("text/plain;charset=UTF-8");
    response.setHeader("X-Content-Type-Options", "nosniff");
    response.setHeader("Cache-Control", "no-store");
    response.getWriter().println(sentence);
  }
}
