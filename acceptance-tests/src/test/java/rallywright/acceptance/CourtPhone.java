package rallywright.acceptance;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.WaitForSelectorState;
import rallywright.engine.session.SessionId;

/** The on-court page in a browser, with the taps of a person. */
final class CourtPhone {

  /** Longer than the page takes two taps for one. */
  private static final int BETWEEN_RALLIES_MS = 350;

  final Page page;

  CourtPhone(BrowserContext context, StartedProgram program, String key) {
    this(context, program, CourtSample.SESSION, key);
  }

  CourtPhone(BrowserContext context, StartedProgram program, SessionId session, String key) {
    page = context.newPage();
    page.navigate(program.address() + "/court#key=" + key);
    page.waitForURL("**/court/" + session.value());
    page.locator(".bar").waitFor();
    ready();
  }

  /** The phone of a coach who is signed in already. */
  CourtPhone(Page signedIn, String address, String session) {
    page = signedIn;
    page.navigate(address + "/court/" + session);
    page.locator(".bar").waitFor();
  }

  /** Shows a block and starts it. */
  void start(String block) {
    tap("sheet", "[data-sheet=blocks]");
    tap("show-block", "[data-block=" + block + "]");
    tap("start-block", "");
    ready();
  }

  /** Puts away what says who stands where, if it is there. */
  void ready() {
    Locator ready = page.locator("[data-act=ready]");
    if (ready.count() > 0) {
      ready.tap();
    }
  }

  void mode(String mode) {
    tap("mode", "[data-mode=" + mode + "]");
  }

  /** Rallies, one letter for each winner. */
  void rallies(String winners) {
    for (int i = 0; i < winners.length(); i++) {
      page.waitForTimeout(BETWEEN_RALLIES_MS);
      tap("rally", "[data-side=" + winners.charAt(i) + "]");
    }
  }

  void tap(String act, String more) {
    tap(page.locator("[data-act='" + act + "']" + more).first());
  }

  /**
   * Taps and waits until the page has heard of it and has kept what it made; only then does the
   * number of unsent events count it.
   */
  void tap(Locator button) {
    int before = clicks();
    button.tap();
    page.waitForCondition(() -> clicks() != before);
    page.locator("body:not([data-keeping])")
        .waitFor(new Locator.WaitForOptions().setState(WaitForSelectorState.ATTACHED));
  }

  /** How many clicks this page has handled since it was first asked. */
  private int clicks() {
    return (int)
        page.evaluate(
            """
            () => {
              if (window.handledClicks === undefined) {
                window.handledClicks = 0;
                window.addEventListener('click', () => window.handledClicks++);
              }
              return window.handledClicks;
            }
            """);
  }

  String text(String selector) {
    return page.locator(selector).first().textContent();
  }

  /** The two scores as they stand on the areas. */
  String score() {
    return text(".area-a .area-score") + "-" + text(".area-b .area-score");
  }

  /** Waits until every event is home. */
  void waitUntilHome() {
    page.locator(".bar-way[data-unsent='0']")
        .waitFor(new Locator.WaitForOptions().setState(WaitForSelectorState.ATTACHED));
  }
}
