package rallywright.web.page;

import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ModelAttribute;
import rallywright.web.ServerSettings;

/** Tells pages outside the frame whether the club is invented, so that these say so as well. */
@ControllerAdvice
final class DemoMark {

  private final ServerSettings settings;

  DemoMark(ServerSettings settings) {
    this.settings = settings;
  }

  @ModelAttribute("demo")
  boolean demo() {
    return settings.mode() == ServerSettings.Mode.DEMO;
  }
}
