package rallywright.acceptance;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import java.util.List;
import java.util.Map;

/**
 * The page's own sync, store and messages in a real browser, without the taps: entries are given to
 * it one by one as fast as its rounds allow.
 */
final class PageSync {

  /** Starts to score; the answer is left in the page because the driver waits for one at a time. */
  private static final String SCORE =
      """
      ([session, by, game, winners]) => {
        const rest = (pause) => new Promise((resolve) => { setTimeout(resolve, pause); });
        const work = async () => {
          const { Sync } = await import('/js/oncourt/sync.js');
          const { stamped } = await import('/js/oncourt/actions.js');
          const sync = new Sync(session, { by, build: '' }, () => {});
          await sync.start();
          const round = async () => {
            while (sync.busy) {
              await rest(1);
            }
            await sync.round();
          };
          const rallies = [];
          for (const winner of winners) {
            const made = winner === 'U'
              ? { type: 'undone', undone: rallies.pop() }
              : { type: 'rally', game, winner, bonus: 'NONE' };
            const [event] = stamped([made], session, by, sync.now());
            if (winner !== 'U') {
              rallies.push(event.id);
            }
            await sync.add([event]);
            await round();
          }
          let rounds = 0;
          while (sync.unsent.size > 0 || sync.own.length > 0 || !sync.met) {
            await round();
            if (++rounds > 2000) {
              throw new Error(`${sync.unsent.size} entries do not come home`);
            }
          }
          // The last look, over a good network, shows what the server has.
          globalThis.finish = async () => {
            await round();
            clearTimeout(sync.timer);
            return { seen: sync.home.map(({ id }) => id), kept: (await sync.queue.all()).length,
              refused: sync.refused.length };
          };
        };
        globalThis.scored = null;
        work().then(() => { globalThis.scored = ''; },
          (problem) => { globalThis.scored = String(problem); });
      }
      """;

  private static final double PATIENCE_MS = 900_000;

  private final Page page;

  PageSync(BrowserContext context) {
    page = context.newPage();
  }

  /** Lets the phone in. */
  void open(String address, String session, String key) {
    page.navigate(address + "/court#key=" + key);
    page.waitForURL("**/court/" + session);
  }

  /** Begins to make entries: a letter for the winner of each rally, U where one is taken back. */
  void begin(String session, String by, String game, String winners) {
    page.evaluate(SCORE, List.of(session, by, game, winners));
  }

  /** Waits until all is home, as far as the phone knows. */
  void waitUntilHome() {
    page.waitForFunction(
        "() => globalThis.scored !== null",
        null,
        new Page.WaitForFunctionOptions().setTimeout(PATIENCE_MS));
    Object problem = page.evaluate("globalThis.scored");
    if (!problem.equals("")) {
      throw new IllegalStateException("The phone said: " + problem);
    }
  }

  /** What the phone has seen in the end. */
  Seen seen() {
    Map<?, ?> end = (Map<?, ?>) page.evaluate("globalThis.finish()");
    List<String> ids = ((List<?>) end.get("seen")).stream().map(String::valueOf).toList();
    return new Seen(
        ids, ((Number) end.get("kept")).intValue(), ((Number) end.get("refused")).intValue());
  }

  /**
   * What a phone has in the end.
   *
   * @param home the ids of the events of the session, in the server's order as the phone knows it
   * @param kept how many are still in its store of what is not home
   * @param refused how many the server did not take
   */
  record Seen(List<String> home, int kept, int refused) {}
}
