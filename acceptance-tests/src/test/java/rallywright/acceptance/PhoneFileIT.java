package rallywright.acceptance;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Download;
import com.microsoft.playwright.Page;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rallywright.engine.session.CourtEvent;
import rallywright.store.ClubStore;
import rallywright.store.KeyBook;
import rallywright.store.StoreAddress;

/** Scores of a phone that reaches the server no more, carried to the desk as a file. */
class PhoneFileIT {

  private static final long FAR_AWAY = 4_000_000_000_000L;

  @Test
  void unsentScores_savedWithoutNetwork_areTakenInAtTheDeskOnce(@TempDir Path folder)
      throws IOException {
    Path data = folder.resolve("club");
    String key = seed(data);
    try (StartedProgram program = StartedProgram.serve(data);
        Browsers browsers = new Browsers()) {
      BrowserContext context = browsers.phone();
      CourtPhone phone = new CourtPhone(context, program, key);
      phone.start("b2");
      phone.mode("rallies");
      phone.waitUntilHome();
      phone.tap("sheet", "[data-sheet=more]");
      assertThat(phone.page.locator("[data-act=save-file]").count()).isZero();
      phone.tap("close", "");
      int before = stored(data).size();

      Path file = savedOffline(context, phone, folder);
      assertThat(Files.readString(file)).contains("\"rally\"").doesNotContain(key);
      assertThat(stored(data)).hasSize(before);

      Page desk = desk(browsers, program);
      takeIn(desk, file);
      assertThat(desk.locator("[role=status]").textContent()).contains("3 entries were stored.");
      assertThat(stored(data)).hasSize(before + 3);
      takeIn(desk, file);
      assertThat(desk.locator("[role=status]").textContent())
          .contains("0 entries were stored, 3 had arrived before.");

      context.setOffline(false);
      phone.waitUntilHome();
      assertThat(phone.score()).isEqualTo("2-1");
      assertThat(stored(data)).hasSize(before + 3);
    }
  }

  @Test
  void wrongFiles_areAnsweredWithWhatIsWrong_andOnlyRightEntriesAreKept(@TempDir Path folder)
      throws IOException {
    Path data = folder.resolve("club");
    seed(data);
    try (StartedProgram program = StartedProgram.serve(data);
        Browsers browsers = new Browsers()) {
      Page desk = desk(browsers, program);
      Browsers.toNextPage(desk, () -> desk.locator("button.now").click());
      assertThat(desk.locator("#file-error").textContent()).contains("No file was chosen");
      takeIn(desk, Files.writeString(folder.resolve("a.json"), "Ilse won, I think"));
      assertThat(desk.locator("#file-error").textContent()).contains("is not JSON");
      takeIn(desk, Files.writeString(folder.resolve("b.json"), "{\"events\":[]}"));
      assertThat(desk.locator("#file-error").textContent()).contains("must be a list of events");
      assertThat(stored(data)).isEmpty();

      String mixed =
          "[" + rally(1, "b2-t1-l1") + "," + rally(2, "nowhere") + "," + rally(3, "b2-t1-l1") + "]";
      takeIn(desk, Files.writeString(folder.resolve("c.json"), mixed));
      assertThat(desk.locator("[role=status]").textContent()).contains("2 entries were stored.");
      assertThat(desk.locator(".form-problem").textContent())
          .contains("One entry was not stored", "Entry 2: The game (nowhere)");
      assertThat(stored(data)).hasSize(2);
    }
  }

  private static Path savedOffline(BrowserContext context, CourtPhone phone, Path folder) {
    context.setOffline(true);
    phone.rallies("AAB");
    assertThat(phone.text(".bar-way")).isEqualTo("3 unsent");
    phone.tap("sheet", "[data-sheet=more]");
    Download saved = phone.page.waitForDownload(() -> phone.tap("save-file", ""));
    assertThat(saved.suggestedFilename()).matches("rallywright-scores-phone-[0-9a-f]{8}\\.json");
    Path file = folder.resolve(saved.suggestedFilename());
    saved.saveAs(file);
    phone.tap("close", "");
    return file;
  }

  private static Page desk(Browsers browsers, StartedProgram program) {
    Page page = browsers.laptop().newPage();
    page.navigate(program.signInAddress());
    page.waitForURL(program.address() + "/");
    page.navigate(program.address() + "/sessions/" + CourtSample.SESSION.value());
    page.locator("a:text(\"Scores from a phone's file\")").click();
    page.waitForURL("**/phone-file");
    return page;
  }

  private static void takeIn(Page desk, Path file) {
    desk.setInputFiles("#file", file);
    Browsers.toNextPage(desk, () -> desk.locator("button.now").click());
  }

  private static String rally(int number, String game) {
    return """
        {"v":1,"type":"rally","id":"01890000-0000-7000-8000-%012d","session":"%s",\
        "at":1772557200000,"by":"phone","game":"%s","winner":"A","bonus":"NONE"}"""
        .formatted(number, CourtSample.SESSION.value(), game);
  }

  private static String seed(Path data) {
    try (ClubStore store = ClubStore.open(StoreAddress.file(data))) {
      CourtSample.addTo(store);
      return store.keys().issue(KeyBook.Kind.ON_COURT, CourtSample.SESSION.value(), FAR_AWAY);
    }
  }

  private static List<CourtEvent> stored(Path data) {
    try (ClubStore store = ClubStore.open(StoreAddress.file(data))) {
      return store.events().of(CourtSample.SESSION);
    }
  }
}
