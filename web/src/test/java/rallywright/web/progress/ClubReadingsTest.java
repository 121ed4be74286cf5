package rallywright.web.progress;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;

import java.nio.file.Path;
import java.time.Duration;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.annotation.AnnotationConfigApplicationContext;
import rallywright.catalogue.Catalogue;
import rallywright.engine.club.AgeGroup;
import rallywright.engine.club.Hand;
import rallywright.engine.club.Player;
import rallywright.engine.club.PlayerId;
import rallywright.engine.club.Standing;
import rallywright.paper.DrillBook;
import rallywright.store.ClubStore;
import rallywright.store.StoreAddress;
import rallywright.web.oncourt.ChangeTrail;
import rallywright.web.oncourt.SessionDesk;
import rallywright.web.page.Later;
import rallywright.web.weather.WeatherBook;

/** What is kept of a reading, and that nothing half done ever is. */
class ClubReadingsTest {

  private static final Player ADA = player("ada");
  private static final Player BO = player("bo");

  @TempDir Path data;
  private ClubStore store;
  private AnnotationConfigApplicationContext context;
  private ClubReadings readings;

  @BeforeEach
  void open() {
    store = ClubStore.open(StoreAddress.file(data));
    Catalogue shipped = Catalogue.shipped();
    context = new AnnotationConfigApplicationContext();
    context.registerBean(ClubStore.class, () -> store);
    context.registerBean(DrillBook.class, () -> new DrillBook(shipped::drill, shipped::yardstick));
    context.register(
        ChangeTrail.class, WeatherBook.class, SessionDesk.class, Later.class, ClubReadings.class);
    context.refresh();
    readings = context.getBean(ClubReadings.class);
    store.players().save(ADA);
  }

  @AfterEach
  void close() {
    context.close();
  }

  private static Player player(String id) {
    return new Player(
        new PlayerId(id), id, null, Hand.RIGHT, Set.of(), "", AgeGroup.ADULT, Standing.ACTIVE);
  }

  private boolean knows(Player player) {
    return catchThrowable(() -> readings.now().standing(player.id())) == null;
  }

  @Test
  void unchangedClub_isReadOnce_andAnewAfterAChange() {
    assertThat(readings.now()).isSameAs(readings.now());
    assertThat(knows(BO)).isFalse();
    store.players().save(BO);
    assertThat(knows(BO)).isTrue();
  }

  @Test
  void readInTheMiddleOfAChange_isNotTakenForTheEndOfIt() {
    store.inOneStep(
        () -> {
          assertThat(knows(BO)).isFalse();
          store.players().save(BO);
          assertThat(knows(BO)).isTrue();
          return BO;
        });
    assertThat(knows(BO)).isTrue();
  }

  @Test
  void readInAChangeThatIsTakenBack_isForgotten() {
    Throwable broken =
        catchThrowable(
            () ->
                store.inOneStep(
                    () -> {
                      store.players().save(BO);
                      assertThat(knows(BO)).isTrue();
                      throw new IllegalStateException("taken back");
                    }));
    assertThat(broken).hasMessage("taken back");
    store.players().save(player("cyrus"));
    assertThat(knows(BO)).isFalse();
    assertThat(knows(player("cyrus"))).isTrue();
  }

  @Test
  void afterAChangeOfAPlanAlone_theReadingStays_butNotAfterAnother() {
    var before = readings.now();
    store.settings().put("plan.note", "one");
    readings.onlyAPlanChanged(store.revision());
    assertThat(readings.now()).isSameAs(before);

    store.players().save(BO);
    store.settings().put("plan.note", "two");
    readings.onlyAPlanChanged(store.revision());
    assertThat(knows(BO)).isTrue();
  }

  /** While the test holds the readings, who asks for one waits. */
  @Test
  void readyProgram_readsTheClubBesideTheFirstPages() throws Exception {
    Thread ahead;
    ClubReadings held = readings;
    synchronized (held) {
      context.publishEvent(
          new ApplicationReadyEvent(
              new SpringApplication(), new String[0], context, Duration.ZERO));
      ahead = thread("first reading");
      for (int look = 0; look < 2000 && ahead.getState() != Thread.State.BLOCKED; look++) {
        Thread.sleep(5);
      }
      assertThat(ahead.getState()).isEqualTo(Thread.State.BLOCKED);
      assertThat(ahead.isDaemon()).isTrue();
    }
    ahead.join(20_000);
    assertThat(ahead.isAlive()).isFalse();
    assertThat(knows(ADA)).isTrue();
  }

  private static Thread thread(String name) {
    return Thread.getAllStackTraces().keySet().stream()
        .filter(thread -> thread.getName().equals(name))
        .findFirst()
        .orElseThrow();
  }
}
