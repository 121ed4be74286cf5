package rallywright.acceptance;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.WaitForSelectorState;
import java.util.List;

/** The real page in a browser, tapped on a lane of its own, and what it was told is home. */
final class CourtTapper {

  /** Notes the ids that the server said it has. */
  private static final String LISTEN =
      """
      globalThis.acknowledged = [];
      const fetched = globalThis.fetch;
      globalThis.fetch = async (...asked) => {
        const response = await fetched(...asked);
        if (String(asked[0]).endsWith('/events') && response.ok) {
          const told = await response.clone().json().catch(() => ({ answers: [] }));
          told.answers.forEach(({ id }) => globalThis.acknowledged.push(id));
        }
        return response;
      };
      """;

  private static final List<String> TAPS =
      List.of("rally:A", "rally:B", "undo", "rally:B", "undo", "undo");
  private static final double PATIENCE_MS = 120_000;

  private final Page page;
  private final int lane;
  private int taps;
  private int made;

  CourtTapper(BrowserContext context, int lane) {
    context.addInitScript(LISTEN);
    page = context.newPage();
    this.lane = lane;
  }

  /** Opens a session with its key and the page's own lane in it. */
  void open(String address, String session, String key) {
    page.navigate(address + "/court#key=" + key);
    page.waitForURL("**/court/" + session);
    page.locator(".bar").waitFor();
    taps = 0;
    made = 0;
    putAway();
    page.locator("[data-act=sheet][data-sheet=place]").tap();
    page.locator("[data-act=choose-game][data-game=" + LaneClub.game(1, lane) + "]").tap();
    putAway();
    page.locator("[data-act=mode][data-mode=rallies]").tap();
  }

  /** What says who stands where. */
  private void putAway() {
    Locator ready = page.locator("[data-act=ready]");
    if (ready.count() > 0) {
      ready.tap();
    }
  }

  /** One entry more. */
  void score() {
    String next = TAPS.get(taps++ % TAPS.size());
    page.waitForTimeout(350);
    String[] parts = next.split(":", 2);
    Locator button =
        page.locator(
            "[data-act="
                + parts[0]
                + "]"
                + (parts.length > 1 ? "[data-side=" + parts[1] + "]" : ""));
    button.first().tap();
    page.locator("body:not([data-keeping])")
        .waitFor(new Locator.WaitForOptions().setState(WaitForSelectorState.ATTACHED));
    made++;
  }

  /** How many entries were made in this session. */
  int made() {
    return made;
  }

  /** What the page calls itself. */
  String name() {
    return String.valueOf(page.evaluate("localStorage.getItem('rallywright-phone')"));
  }

  /** The ids that the server said it has, since the page was loaded. */
  List<String> acknowledged() {
    List<?> ids = (List<?>) page.evaluate("globalThis.acknowledged");
    return ids.stream().map(String::valueOf).toList();
  }

  /** Waits until every entry is home. */
  void waitUntilHome() {
    page.evaluate("dispatchEvent(new Event('online'))");
    page.locator(".bar-way[data-unsent='0']")
        .waitFor(
            new Locator.WaitForOptions()
                .setState(WaitForSelectorState.ATTACHED)
                .setTimeout(PATIENCE_MS));
  }
}
