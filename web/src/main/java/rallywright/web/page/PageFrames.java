package rallywright.web.page;

import jakarta.servlet.http.HttpServletRequest;
import org.springframework.security.web.csrf.CsrfToken;
import org.springframework.stereotype.Component;
import rallywright.web.ServerSettings;

/** Makes the frame of a page from the request. */
@Component
public final class PageFrames {

  private final ServerSettings settings;

  PageFrames(ServerSettings settings) {
    this.settings = settings;
  }

  /** The frame for a page of one part. */
  public PageFrame frame(String title, PageFrame.Part part, HttpServletRequest request) {
    CsrfToken token = (CsrfToken) request.getAttribute(CsrfToken.class.getName());
    PageFrame.Show show =
        settings.mode() == ServerSettings.Mode.DEMO ? PageFrame.Show.DEMO : PageFrame.Show.CLUB;
    return new PageFrame(title, part, token.getParameterName(), token.getToken(), show);
  }
}
