package rallywright.web.progress;

import java.time.Clock;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneId;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;
import rallywright.catalogue.Catalogue;
import rallywright.engine.reading.ClubHistory;
import rallywright.engine.reading.ClubReading;
import rallywright.engine.reading.PointReading;
import rallywright.engine.session.Session;
import rallywright.store.ClubStore;
import rallywright.web.oncourt.OpenSession;
import rallywright.web.oncourt.SessionDesk;
import rallywright.web.page.Later;

/**
 * What the club's scores say today; read anew only when something was stored since. Inside a change
 * that is not stored yet it is worked out, and not kept.
 */
@Component
public final class ClubReadings {

  private final ClubStore store;
  private final SessionDesk desk;
  private final Later later;
  private final Clock clock;
  private final Catalogue catalogue = Catalogue.shipped();
  private @Nullable Kept kept;
  private @Nullable PointReading points;
  private @Nullable ClubReading pointsOf;

  private record Kept(long revision, LocalDate day, ClubHistory history, ClubReading reading) {}

  @Autowired
  ClubReadings(ClubStore store, SessionDesk desk, Later later) {
    this.store = store;
    this.desk = desk;
    this.later = later;
    this.clock = Clock.system(ZoneId.systemDefault());
  }

  /** The first reading of a club takes a second; read beside the first page it is there in time. */
  @EventListener(ApplicationReadyEvent.class)
  void readAhead() {
    later.run("first reading", Duration.ZERO, this::now);
  }

  /** The reading of this moment. */
  public ClubReading now() {
    return kept().reading();
  }

  /** What the reading of this moment rests on. */
  ClubHistory history() {
    return kept().history();
  }

  /** What this reading says of whole points; worked out once. */
  public synchronized PointReading points() {
    Kept now = kept();
    PointReading found = points;
    if (found == null || pointsOf != now.reading()) {
      found = now.reading().points();
      points = found;
      pointsOf = now.reading();
    }
    return found;
  }

  /**
   * Hears of a change that the reading does not rest on: another plan for a session of which
   * nothing was played, or a new one that is still to come. Saves reading everything anew after
   * each plan and each change by hand.
   *
   * @param revision the revision that this change alone made
   */
  public synchronized void onlyAPlanChanged(long revision) {
    Kept last = kept;
    if (last != null && last.revision() == revision - 1) {
      kept = new Kept(revision, last.day(), last.history(), last.reading());
    }
  }

  private synchronized Kept kept() {
    LocalDate today = LocalDate.now(clock);
    long revision = store.revision();
    Kept last = kept;
    if (store.isChanging()
        || last == null
        || last.revision() != revision
        || !last.day().equals(today)) {
      Kept read = kept(revision, today, last);
      kept = store.isChanging() ? last : read;
      return read;
    }
    return last;
  }

  /** Goes on from the last reading where there is one, so that a session costs little. */
  private Kept kept(long revision, LocalDate today, @Nullable Kept last) {
    ClubHistory history =
        new ClubHistory(
            store.players().all(),
            catalogue.drills(),
            catalogue.yardsticks(),
            desk.all().stream()
                .filter(session -> !session.date().isAfter(today))
                .map(Session::id)
                .flatMap(id -> desk.find(id).stream())
                .map(OpenSession::progress)
                .toList(),
            today);
    ClubReading reading = last == null ? ClubReading.of(history) : last.reading().after(history);
    return new Kept(revision, today, history, reading);
  }
}
