package rallywright.acceptance;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.PlaywrightException;
import com.microsoft.playwright.options.WaitForSelectorState;
import java.nio.file.Path;
import java.util.List;
import java.util.LongSummaryStatistics;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import rallywright.engine.session.CourtEvent;

/**
 * The browser of a phone is killed (SIGKILL) in the middle of a tap and opened again with the same
 * profile: what was shown is in the phone's log, the tap under the finger is in it whole or not at
 * all, and everything comes home.
 */
final class KilledBrowser {

  /** Taps after a moment, so that the kill can come before, in or after it. */
  private static final String TAP_SOON =
      """
      (pause) => {
        setTimeout(() => document.querySelector('[data-act=rally][data-side=A]').click(), pause);
      }
      """;

  /** The phone's own log of what is not home. */
  private static final String LOG =
      """
      async (session) => {
        const { queueOf } = await import('/js/oncourt/queue.js');
        return (await (await queueOf(session)).all()).map((event) => JSON.stringify(event));
      }
      """;

  private static final int SHOWN_BEFORE = 2;

  private KilledBrowser() {}

  /**
   * What came of it.
   *
   * @param kills how often the browser was killed
   * @param shown how many entries had been shown before a kill
   * @param lost how many of them were missing afterwards
   * @param broken how many entries were there in part, or did not come home
   * @param kept how often the tap under the finger was in the log
   */
  record Result(int kills, int shown, int lost, int broken, int kept) {}

  /**
   * Runs it.
   *
   * @param folder an empty folder for club and profile
   * @param kills how often the browser is killed
   * @param seed decides the moments
   * @param each is told what came of it so far after every kill
   */
  static Result run(Path folder, int kills, long seed, Consumer<Result> each) throws Exception {
    LaneClub club = new LaneClub(folder.resolve("club"));
    String key = club.add(List.of("evening"), 1, 1).get("evening");
    Random random = new Random(seed);
    Result all = new Result(0, 0, 0, 0, 0);
    try (StartedProgram program = StartedProgram.serve(club.folder());
        Playwright playwright = Playwright.create()) {
      Phone phone = new Phone(playwright, folder.resolve("profile"));
      phone.open(program.address() + "/court#key=" + key);
      for (int kill = 0; kill < kills; kill++) {
        all = phone.tapAndDie(club, all, random.nextInt(60));
        each.accept(all);
      }
      phone.context.close();
    }
    return all;
  }

  /** A browser with a profile on the disk. */
  private static final class Phone {

    private final Playwright playwright;
    private final Path profile;
    private BrowserContext context;
    private Page page;
    private String address = "";

    Phone(Playwright playwright, Path profile) {
      this.playwright = playwright;
      this.profile = profile;
      this.context = launch();
      this.page = context.newPage();
    }

    private BrowserContext launch() {
      BrowserContext launched =
          playwright
              .chromium()
              .launchPersistentContext(
                  profile,
                  new BrowserType.LaunchPersistentContextOptions()
                      .setExecutablePath(
                          Path.of(System.getProperty("chromium", "/usr/bin/chromium")))
                      .setHeadless(true)
                      .setViewportSize(390, 844)
                      .setHasTouch(true)
                      .setIsMobile(true)
                      .setArgs(Browsers.ARGUMENTS));
      launched.setDefaultTimeout(90_000);
      return launched;
    }

    void open(String door) {
      page.navigate(door);
      page.waitForURL("**/court/evening");
      address = page.url();
      page.locator(".bar").waitFor();
      Locator ready = page.locator("[data-act=ready]");
      if (ready.count() > 0) {
        ready.tap();
      }
      page.locator("[data-act=mode][data-mode=rallies]").tap();
      page.evaluate("() => navigator.serviceWorker.ready.then(() => true)");
      // Chromium writes the key of the session, as all small settings, some seconds later.
      context.close();
      open();
    }

    /** The same profile anew, from what lies on the phone. */
    private void open() {
      context = launch();
      page = context.newPage();
      context.setOffline(true);
      page.navigate(address);
      try {
        page.locator("[data-act=mode][data-mode=rallies]").waitFor();
      } catch (PlaywrightException late) {
        throw new IllegalStateException("The phone shows: " + page.innerText("body"), late);
      }
    }

    /** Two entries that are shown, a third under the finger, the end; then everything again. */
    Result tapAndDie(LaneClub club, Result before, int pause) throws Exception {
      int home = club.events("evening").size();
      context.setOffline(true);
      int kept = tap("[data-act=rally][data-side=B]") + tap("[data-act=undo]");
      page.evaluate(TAP_SOON, pause);
      Thread.sleep(pause > 30 ? pause : 0);
      kill();
      open();
      List<?> log = (List<?>) page.evaluate(LOG, "evening");
      int lost = Math.max(0, kept - log.size());
      boolean third = log.size() > SHOWN_BEFORE;
      context.setOffline(false);
      page.evaluate("dispatchEvent(new Event('online'))");
      unsent(0);
      List<CourtEvent> events = club.events("evening");
      int came = events.size() - home;
      if (third) {
        tap("[data-act=undo]");
        unsent(0);
      }
      return new Result(
          before.kills() + 1,
          before.shown() + kept,
          before.lost() + lost,
          before.broken() + Math.abs(came - log.size()) + gaps(events),
          before.kept() + (third ? 1 : 0));
    }

    /** A phone counts its own entries; none may be missing in between. */
    private static int gaps(List<CourtEvent> events) {
      LongSummaryStatistics numbers =
          events.stream()
              .mapToLong(event -> event.stamp().order().number())
              .filter(number -> number > 0)
              .summaryStatistics();
      return (int) (numbers.getMax() - numbers.getCount());
    }

    private int tap(String button) {
      page.waitForTimeout(350);
      page.locator(button).first().tap();
      page.locator("body:not([data-keeping])")
          .waitFor(new Locator.WaitForOptions().setState(WaitForSelectorState.ATTACHED));
      return 1;
    }

    private void unsent(int count) {
      page.locator(".bar-way[data-unsent='" + count + "']")
          .waitFor(new Locator.WaitForOptions().setState(WaitForSelectorState.ATTACHED));
    }

    /** Ends the processes of this profile, and of no other. */
    private void kill() throws InterruptedException {
      List<ProcessHandle> processes =
          ProcessHandle.current()
              .descendants()
              .filter(
                  each ->
                      each.info().commandLine().orElse("").contains("--user-data-dir=" + profile))
              .toList();
      processes.forEach(ProcessHandle::destroyForcibly);
      // One that is still dying would hold the locks of the profile.
      processes.forEach(each -> each.onExit().completeOnTimeout(each, 5, TimeUnit.SECONDS).join());
      try {
        for (int wait = 0; wait < 200 && !page.isClosed(); wait++) {
          page.waitForTimeout(10);
        }
        context.close();
      } catch (PlaywrightException gone) {
        // It is dead, as it must be.
      }
    }
  }
}
