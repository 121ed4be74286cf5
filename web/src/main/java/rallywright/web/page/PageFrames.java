package rallywright.web.page;

import jakarta.servlet.http.HttpServletRequest;
import org.jspecify.annotations.Nullable;
import org.springframework.security.web.csrf.CsrfToken;
import org.springframework.stereotype.Component;
import rallywright.web.ServerSettings;

/** Makes the frame of a page from the request. */
@Component
public final class PageFrames {

  private final ServerSettings settings;
  private final UnitChoice units;

  PageFrames(ServerSettings settings, UnitChoice units) {
    this.settings = settings;
    this.units = units;
  }

  /** The frame for a page of one of the parts, or of none. */
  public PageFrame frame(String title, PageFrame.@Nullable Part part, HttpServletRequest request) {
    PageFrame.Show show =
        settings.mode() == ServerSettings.Mode.DEMO ? PageFrame.Show.DEMO : PageFrame.Show.CLUB;
    return new PageFrame(
        title,
        part,
        csrf(request),
        Confirmation.in(request),
        new PageFrame.Club(show, units.current()));
  }

  /** What goes with every form of a page against forged requests. */
  public static PageFrame.Csrf csrf(HttpServletRequest request) {
    CsrfToken token = (CsrfToken) request.getAttribute(CsrfToken.class.getName());
    return new PageFrame.Csrf(token.getParameterName(), token.getHeaderName(), token.getToken());
  }
}
