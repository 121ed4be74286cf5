package rallywright.web.sessions;

import java.time.Duration;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;
import rallywright.paper.CourtSheet;
import rallywright.web.page.Later;

/**
 * Sets a first court sheet before anybody asks for one: the first of a run takes seconds, those
 * after it do not. The first pages go before it.
 */
@Component
final class FirstSheet {

  private static final Duration FIRST_PAGES = Duration.ofSeconds(8);

  private final Later later;
  private final Duration pause;
  private final Runnable sheet;

  @Autowired
  FirstSheet(Later later) {
    this(later, FIRST_PAGES, CourtSheet::warmUp);
  }

  FirstSheet(Later later, Duration pause, Runnable sheet) {
    this.later = later;
    this.pause = pause;
    this.sheet = sheet;
  }

  @EventListener(ApplicationReadyEvent.class)
  void setLater() {
    later.run("first sheet", pause, sheet);
  }
}
