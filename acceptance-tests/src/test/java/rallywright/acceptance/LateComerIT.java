package rallywright.acceptance;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.SelectOption;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rallywright.engine.club.Player;
import rallywright.engine.plan.PlannedGame;
import rallywright.engine.session.Session;
import rallywright.engine.session.SessionId;
import rallywright.store.ClubStore;
import rallywright.store.StoreAddress;

/** Somebody turns up while the session runs, plays, and later is found to be on the list. */
class LateComerIT {

  @Test
  void lateComer_addedInThreeTaps_playsIsScoredAndMerged(@TempDir Path data) {
    try (StartedProgram program = StartedProgram.serve(data);
        Browsers browsers = new Browsers()) {
      Page page = browsers.phone().newPage();
      page.navigate(program.signInAddress());
      page.waitForURL(program.address() + "/");
      addPlayers(page, program);
      String session = plan(page, program);
      CourtPhone phone = new CourtPhone(page, program.address(), session);
      PlannedGame game = lastGame(data, session);
      phone.start(game.id().value().replaceAll("-t\\d.*", ""));

      addZed(phone);
      phone.tap("sheet", "[data-sheet=place]");
      phone.tap("choose-game", "[data-game='" + game.id() + "']");
      phone.tap("sheet", "[data-sheet=drill]");
      phone.tap("sheet", "[data-sheet=seats]");
      phone.tap("swap", "[data-name=Zed]");
      Locator results = page.locator(".results", new Page.LocatorOptions().setHasText("Zed"));
      results.waitFor();
      phone.tap(results.locator("[data-act=final]").first());
      phone.waitUntilHome();

      page.navigate(program.address() + "/players");
      page.locator("a:text('Who is Zed?')").click();
      page.selectOption("#into", new SelectOption().setLabel("Zora Pike"));
      Browsers.toNextPage(page, () -> page.locator("main button.now").click());
      Player zora = player(data, "Zora Pike");
      assertThat(sessionOf(data, session).plan().present()).contains(zora.id());
      page.navigate(program.address() + "/progress/" + zora.id());
      assertThat(page.locator("main").textContent()).contains("against ", "Expected");
    }
  }

  private static void addPlayers(Page page, StartedProgram program) {
    for (String name : List.of("Ada Quell", "Bela Rook", "Zora Pike")) {
      page.navigate(program.address() + "/players/new");
      page.fill("#name", name);
      page.locator("button[type=submit]").first().click();
      page.waitForURL(program.address() + "/players");
    }
  }

  private static void addZed(CourtPhone phone) {
    phone.tap("sheet", "[data-sheet=more]");
    phone.page.locator("#arrival").tap();
    phone.page.fill("#arrival", "Zed");
    phone.tap("arrive", "");
    phone.page.locator(".sheet-body", new Page.LocatorOptions().setHasText("Zed.")).waitFor();
    phone.tap("close", "");
  }

  /** Plans for the first two; answers the id of the session. */
  private static String plan(Page page, StartedProgram program) {
    page.navigate(program.address() + "/sessions/new");
    page.locator("input[name=who]").nth(0).check();
    page.locator("input[name=who]").nth(1).check();
    page.fill("#minutes", "45");
    page.locator("button.now").click();
    page.waitForURL("**/plan");
    return page.url().replaceAll(".*/sessions/|/plan.*", "");
  }

  private static PlannedGame lastGame(Path data, String session) {
    return sessionOf(data, session).plan().blocks().stream()
        .flatMap(block -> block.games().stream())
        .reduce((first, second) -> second)
        .orElseThrow();
  }

  private static Session sessionOf(Path data, String session) {
    try (ClubStore store = ClubStore.open(StoreAddress.file(data))) {
      return store.sessions().find(new SessionId(session)).orElseThrow();
    }
  }

  private static Player player(Path data, String name) {
    try (ClubStore store = ClubStore.open(StoreAddress.file(data))) {
      return store.players().all().stream()
          .filter(each -> each.name().equals(name))
          .findFirst()
          .orElseThrow();
    }
  }
}
