package rallywright.acceptance;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.WaitForSelectorState;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rallywright.engine.score.Rally;
import rallywright.engine.session.CourtEvent;
import rallywright.engine.session.GameProgress;

/** The phone without a network: from the second visit on everything is on it. */
class OfflineIT {

  private static final String KEPT =
      """
      async () => {
        await navigator.serviceWorker.ready;
        const names = await caches.keys();
        const found = await Promise.all(names.map(async (name) =>
          (await (await caches.open(name)).keys()).map((each) => new URL(each.url).pathname)));
        return found.flat();
      }
      """;

  private static final String FORGOTTEN =
      """
      async () => {
        const { queueOf } = await import('/js/oncourt/queue.js');
        const known = { plan: {}, planMark: '', home: [], visitor: 'phone', ahead: 0, at: 1 };
        const [old, waits, here] = await Promise.all(['old', 'waits', 'here'].map(queueOf));
        await Promise.all([old, waits, here].map((each) => each.know(known)));
        await waits.add([{ id: 'e', type: 'rally', at: 1 }]);
        const gone = await here.forget(2);
        return [gone.join(), (await old.known()) === undefined,
          (await waits.known()) !== undefined, (await here.known()) !== undefined];
      }
      """;

  /** Records the pauses before each new attempt of a phone that reaches nobody. */
  private static final String PAUSES =
      """
      async () => {
        const { Sync } = await import('/js/oncourt/sync.js');
        const fetched = globalThis.fetch;
        const timed = globalThis.setTimeout;
        const pauses = [];
        globalThis.fetch = () => Promise.reject(new Error('no network'));
        globalThis.setTimeout = (_, pause) => pauses.push(pause);
        const sync = new Sync('nowhere', { by: 'phone', build: '' }, () => {});
        for (let i = 0; i < 12; i++) {
          await sync.round();
        }
        globalThis.fetch = fetched;
        globalThis.setTimeout = timed;
        return pauses;
      }
      """;

  @ParameterizedTest
  @CsvSource({"390, 844", "320, 568"})
  void airplaneMode_inTheMiddleOfAGame_withAReload_losesNothing(
      int width, int height, @TempDir Path data) {
    try (RunningCourt court = new RunningCourt(data)) {
      BrowserContext context = court.browsers.phone();
      CourtPhone phone = court.phone(context);
      phone.page.setViewportSize(width, height);
      waitUntilKept(phone.page);
      phone.start("b2");
      phone.mode("rallies");
      phone.rallies("AAB");
      phone.waitUntilHome();

      context.setOffline(true);
      phone.rallies("A");
      assertThat(phone.text(".bar-way")).isEqualTo("1 unsent");
      phone.page.reload();
      phone.page.locator(".areas").waitFor();
      assertThat(phone.score()).isEqualTo("3-1");
      phone.rallies("AA");
      assertThat(phone.text(".area-a .area-note")).isEqualTo("wins");
      playOnWithoutTheCoach(phone);
      assertThat(phone.text(".bar-way")).isEqualTo("6 unsent");

      context.setOffline(false);
      phone.waitUntilHome();
      GameProgress game = court.stored("b2-t1-l1");
      assertThat(game.score()).hasToString("5-1");
      assertThat(game.rallies()).extracting(Rally::winner).hasSize(6);
      assertThat(court.stored("b2-t2-l1").score()).hasToString("5-3");
      assertThat(court.stored("b3-t1-l1").status()).isEqualTo(GameProgress.Status.NOT_BEGUN);
      assertThat(court.progress().current())
          .hasValueSatisfying(block -> assertThat(block.value()).isEqualTo("b3"));
      assertThat(court.events()).extracting(event -> event.stamp().id()).doesNotHaveDuplicates();
    }
  }

  /** The next game, its result, and the next block, all from the phone's own store. */
  private static void playOnWithoutTheCoach(CourtPhone phone) {
    phone.mode("result");
    phone.tap("next-game", "");
    assertThat(phone.text(".sheet-body")).contains("Game 2 of 2", "near side", "far side");
    assertThat(phone.page.locator(".guide-court svg").count()).isEqualTo(1);
    OnCourtIT.check(phone, "who stands where");
    phone.ready();
    phone.tap("final", "[data-a='5'][data-b='3']");
    phone.tap("next-block", "");
    phone.tap("next-block-now", "");
    assertThat(phone.text(".sheet-head h2")).isEqualTo("Drop and follow");
    phone.ready();
  }

  @Test
  void code_scannedAgainWhileTheLaptopIsOff_opensWhatThePhoneKnows(@TempDir Path data) {
    try (RunningCourt court = new RunningCourt(data)) {
      BrowserContext context = court.browsers.phone();
      CourtPhone phone = court.phone(context);
      waitUntilKept(phone.page);
      phone.start("b5");
      phone.waitUntilHome();
      court.stop();
      phone.page.close();

      Page again = context.newPage();
      again.navigate(court.address() + "/court#key=" + court.key);
      again.waitForURL("**/court/" + CourtSample.SESSION.value());
      again.locator(".results").waitFor();
      assertThat(again.locator(".bar-title").textContent())
          .isEqualTo("Half-court singles by score");
      again.locator("[data-act=final][data-a='5'][data-b='2']").tap();
      again.locator(".bar-way[data-unsent='1']").waitFor();
      again.navigate(court.address() + "/court?resume");
      again.waitForURL("**/court/" + CourtSample.SESSION.value());
      again.locator(".bar-way[data-unsent='1']").waitFor();

      court.startAgain();
      again
          .locator(".bar-way[data-unsent='0']")
          .waitFor(
              new Locator.WaitForOptions()
                  .setState(WaitForSelectorState.ATTACHED)
                  .setTimeout(90_000));
      assertThat(court.stored("b5-t1-l1").score()).hasToString("5-2");
    }
  }

  @Test
  void timer_keepsTimeWhileThePageSleeps_andOnAPhoneWithAWrongClock() {
    try (RunningCourt court = RunningCourt.shared()) {
      BrowserContext wrong = court.browsers.phone();
      wrong.addInitScript("{ const real = Date.now; Date.now = () => real() - 3 * 3600000; }");
      CourtPhone other = court.phone(wrong);
      BrowserContext context = court.browsers.phone();
      CourtPhone phone = court.phone(context);
      phone.start("b1");
      phone.waitUntilHome();
      other.page.locator(".clock-words:text('left')").waitFor();
      assertThat(other.text(".clock-time")).matches("7:\\d\\d|8:00");
      other.tap("next-block", "");
      other.waitUntilHome();
      long first = court.events().get(0).stamp().atMillis();
      CourtEvent last = court.events().get(court.events().size() - 1);
      assertThat(last.stamp().atMillis() - first).isBetween(0L, 120_000L);

      phone.tap("sheet", "[data-sheet=blocks]");
      phone.tap("show-block", "[data-block=b1]");
      phone.tap("sheet", "[data-sheet=blocks]");
      phone.tap("sheet", "[data-sheet=back]");
      phone.tap("start-back", "");
      phone.waitUntilHome();
      context.setOffline(true);
      phone.page.evaluate("() => { const real = Date.now; Date.now = () => real() + 300000; }");
      phone.page.evaluate("() => document.dispatchEvent(new Event('visibilitychange'))");
      assertThat(phone.text(".clock-time")).matches("2:\\d\\d|3:00");
    }
  }

  @Test
  void phone_thatReachesNobody_waitsLongerAndLonger() {
    try (RunningCourt court = RunningCourt.shared()) {
      List<?> pauses = (List<?>) court.phone().page.evaluate(PAUSES);
      double before = 0;
      for (Object each : pauses.subList(0, 6)) {
        double pause = ((Number) each).doubleValue();
        assertThat(pause).isGreaterThan(before);
        before = pause * 0.75 / 1.25;
      }
      assertThat(((Number) pauses.get(0)).doubleValue()).isBetween(750.0, 1250.0);
      assertThat(((Number) pauses.get(11)).doubleValue()).isBetween(45_000.0, 75_000.0);
    }
  }

  @Test
  void oldSessions_areForgotten_unlessSomethingOfTheirsWaits() {
    try (RunningCourt court = RunningCourt.shared()) {
      Object left = court.phone().page.evaluate(FORGOTTEN);
      assertThat(left).isEqualTo(List.of("old", true, true, true));
    }
  }

  /** The end of the first visit: the page and all that belongs to it lie in the browser's store. */
  static void waitUntilKept(Page page) {
    List<?> kept = (List<?>) page.evaluate(KEPT);
    assertThat(kept)
        .map(String::valueOf)
        .contains(
            "/court",
            "/court/shell",
            "/js/oncourt/page.js",
            "/css/oncourt.css",
            "/fonts/source-sans-3-latin-400-normal.woff2");
  }
}
