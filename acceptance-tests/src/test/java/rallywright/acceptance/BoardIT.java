package rallywright.acceptance;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rallywright.store.ClubStore;
import rallywright.store.KeyBook;
import rallywright.store.StoreAddress;

/** The coach's board follows the phones, the phones follow the board. */
class BoardIT {

  private static final long FAR_AWAY = 4_000_000_000_000L;

  @Test
  void board_followsPhones_catchesUpAfterAGap_andLeadsThem(@TempDir Path data) {
    String key = sampleIn(data);
    try (StartedProgram program = StartedProgram.serve(data);
        Browsers browsers = new Browsers()) {
      BrowserContext coach = browsers.laptop();
      Page board = coach.newPage();
      board.navigate(program.signInAddress());
      board.waitForURL(program.address() + "/");
      board.navigate(program.address() + "/sessions/" + CourtSample.SESSION.value() + "/board");
      assertThat(board.locator("#board-state h2").textContent()).isEqualTo("Not begun yet");
      Page wall = coach.newPage();
      wall.navigate(program.address() + "/sessions/" + CourtSample.SESSION.value() + "/wall");

      CourtPhone phone = new CourtPhone(browsers.phone(), program, key);
      phone.start("b2");
      waitForTitle(board, phone.text(".bar-title"));
      phone.mode("rallies");
      phone.rallies("AA");
      score(board, "2–0").waitFor();
      score(wall, "2–0").waitFor();

      coach.setOffline(true);
      phone.rallies("A");
      phone.waitUntilHome();
      coach.setOffline(false);
      score(board, "3–0").waitFor();

      String next = board.locator("#board-actions .button.now").textContent().strip();
      assertThat(next).startsWith("On to: ");
      Browsers.toNextPage(board, () -> board.locator("#board-actions .button.now").click());
      String title = next.replaceFirst("On to: \\d+\\. ", "");
      waitForTitle(board, title);
      phone.page.locator("body", new Page.LocatorOptions().setHasText(title)).waitFor();

      board.locator("summary", new Page.LocatorOptions().setHasText("End the session")).click();
      Browsers.toNextPage(board, () -> board.locator("text=End it for everybody").click());
      waitForTitle(wall, "The session has ended");
    }
  }

  /** Answers a key for phones. */
  private static String sampleIn(Path data) {
    try (ClubStore store = ClubStore.open(StoreAddress.file(data))) {
      CourtSample.addTo(store);
      return store.keys().issue(KeyBook.Kind.ON_COURT, CourtSample.SESSION.value(), FAR_AWAY);
    }
  }

  private static Locator score(Page page, String score) {
    return page.locator(".board-score", new Page.LocatorOptions().setHasText(score));
  }

  private static void waitForTitle(Page page, String title) {
    page.locator("#board-state h2", new Page.LocatorOptions().setHasText(title)).waitFor();
  }
}
