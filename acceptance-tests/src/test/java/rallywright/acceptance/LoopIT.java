package rallywright.acceptance;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rallywright.catalogue.Catalogue;
import rallywright.engine.plan.GameId;
import rallywright.engine.plan.PlannedBlock;
import rallywright.engine.plan.PlannedGame;
import rallywright.engine.plan.SessionPlan;
import rallywright.engine.session.GameFormats;
import rallywright.engine.session.GameProgress;
import rallywright.engine.session.SessionId;
import rallywright.engine.session.SessionProgress;
import rallywright.store.ClubStore;
import rallywright.store.StoreAddress;

/**
 * The whole loop as a coach walks it in one sitting, on a page the size of a phone: players, plan,
 * sheet, scores, progress, and the next plan, which differs because of what was read.
 */
class LoopIT {

  private static final Pattern PLAN_PAGE = Pattern.compile(".*/sessions/([^/]+)/plan");
  private static final List<String> NAMES =
      List.of("Ada Quell", "Bela Rook", "Cleo Tarn", "Dov Umber");

  @Test
  void coachWhoStartsFromNothing_walksTheWholeLoop(@TempDir Path data) throws IOException {
    try (StartedProgram program = StartedProgram.serve(data);
        Browsers browsers = new Browsers()) {
      Page page = browsers.phone().newPage();
      page.navigate(program.signInAddress());
      page.waitForURL(program.address() + "/");
      NAMES.forEach(name -> addPlayer(page, program, name));

      String first = plan(page, program);
      assertThat(page.locator("#board").textContent()).contains("of 60");
      assertThat(page.locator("#board").textContent()).contains("Too early to tell");
      checkSheet(page, program, first, data);

      page.navigate(program.address() + "/progress");
      assertThat(page.locator("table.ledger").textContent())
          .doesNotContain("–9")
          .contains("too early");
      playEverything(page, program, first, data);
      checkProgress(page, program);

      String second = plan(page, program);
      assertThat(page.locator("#board").textContent()).contains("Beside the session of");
      assertThat(shape(planOf(data, second))).isNotEqualTo(shape(planOf(data, first)));
      assertThat(reasons(planOf(data, second)))
          .isNotEqualTo(reasons(planOf(data, first)))
          .doesNotContain("(0 of about 30 rallies)");
    }
  }

  private static void addPlayer(Page page, StartedProgram program, String name) {
    page.navigate(program.address() + "/players/new");
    page.fill("#name", name);
    page.locator("button[type=submit]").first().click();
    page.waitForURL(program.address() + "/players");
  }

  /** Plans 60 minutes for everybody; answers the id of the session. */
  private static String plan(Page page, StartedProgram program) {
    page.navigate(program.address() + "/sessions/new");
    for (Locator tick : page.locator("input[name=who]").all()) {
      tick.check();
    }
    page.fill("#minutes", "60");
    page.locator("button.now").click();
    page.waitForURL(PLAN_PAGE);
    Matcher found = PLAN_PAGE.matcher(page.url());
    assertThat(found.matches()).isTrue();
    return found.group(1);
  }

  private static void checkSheet(Page page, StartedProgram program, String session, Path data)
      throws IOException {
    byte[] pdf =
        page.request().get(program.address() + "/sessions/" + session + "/sheet.pdf").body();
    try (PDDocument document = Loader.loadPDF(pdf)) {
      assertThat(document.getNumberOfPages()).isEqualTo(1);
      String text = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
      assertThat(text).contains("Ada", "Bela", "Cleo", "Dov").doesNotContain("Quell");
      for (PlannedBlock block : planOf(data, session).blocks()) {
        Catalogue.shipped()
            .drill(block.drill())
            .ifPresent(drill -> assertThat(text).contains(drill.name()));
      }
    }
  }

  private static void playEverything(Page page, StartedProgram program, String session, Path data) {
    CourtPhone phone = new CourtPhone(page, program.address(), session);
    boolean tapped = false;
    for (PlannedBlock block : planOf(data, session).blocks()) {
      phone.start(block.id().value());
      if (!block.games().isEmpty() && !tapped) {
        tapped = true;
        playRallyByRally(phone);
      }
      for (PlannedGame game : block.games()) {
        if (!isOver(data, session, game.id())) {
          phone.mode("lanes");
          phone.tap("result-of", "[data-game='" + game.id() + "']");
          phone.tap("final", winner(game));
        }
        phone.waitUntilHome();
      }
    }
    assertThat(progress(data, session).games())
        .isNotEmpty()
        .allSatisfy(game -> assertThat(game.status()).isEqualTo(GameProgress.Status.PLAYED_OUT));
  }

  /** Five to one with a point taken back and two endings noted. */
  private static void playRallyByRally(CourtPhone phone) {
    phone.mode("rallies");
    phone.rallies("AAB");
    phone.tap("undo", "");
    assertThat(phone.score()).isEqualTo("2-0");
    phone.rallies("B");
    phone.tap("ending-ERROR", "");
    phone.rallies("A");
    phone.tap("ending-BEATEN", "");
    phone.rallies("AA");
    assertThat(phone.score()).isEqualTo("5-1");
    phone.waitUntilHome();
  }

  /** Whoever was added first wins to one, so that the scores have something to say. */
  private static String winner(PlannedGame game) {
    boolean first =
        game.a().players().get(0).value().compareTo(game.b().players().get(0).value()) < 0;
    int startA = game.headStart().a();
    int startB = game.headStart().b();
    return first
        ? "[data-a='5'][data-b='" + Math.max(1, startB) + "']"
        : "[data-a='" + Math.max(1, startA) + "'][data-b='5']";
  }

  private static void checkProgress(Page page, StartedProgram program) {
    page.navigate(program.address() + "/progress");
    page.locator("a.row-link", new Page.LocatorOptions().setHasText("Ada Quell")).click();
    page.waitForURL("**/progress/*");
    String text = page.locator("main").textContent();
    assertThat(text).contains("What to do next", "Expected", "5–1");
    assertThat(text).containsPattern("\\d+ of about 30 rallies so far|rallies in 10");
    assertThat(text).doesNotContain("No game yet");
  }

  private static SessionPlan planOf(Path data, String session) {
    try (ClubStore store = ClubStore.open(StoreAddress.file(data))) {
      return store.sessions().find(new SessionId(session)).orElseThrow().plan();
    }
  }

  private static boolean isOver(Path data, String session, GameId game) {
    return progress(data, session).game(game).orElseThrow().isOver();
  }

  private static SessionProgress progress(Path data, String session) {
    try (ClubStore store = ClubStore.open(StoreAddress.file(data))) {
      return SessionProgress.of(
          store.sessions().find(new SessionId(session)).orElseThrow(),
          (block, game) -> GameFormats.of(Catalogue.shipped().drill(block.drill()), block, game),
          store.events().of(new SessionId(session)));
    }
  }

  /** What is played and for how long, without who. */
  private static List<String> shape(SessionPlan plan) {
    return plan.blocks().stream()
        .map(block -> block.drill() + " " + block.games().size() + " " + lanes(block))
        .toList();
  }

  private static String lanes(PlannedBlock block) {
    return block.games().stream().map(game -> game.place().lane().name()).sorted().toList() + "";
  }

  private static String reasons(SessionPlan plan) {
    return String.join(" ", plan.blocks().stream().map(PlannedBlock::reason).toList());
  }
}
