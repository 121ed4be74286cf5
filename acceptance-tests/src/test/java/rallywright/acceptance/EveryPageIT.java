package rallywright.acceptance;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rallywright.catalogue.Catalogue;
import rallywright.store.ClubStore;
import rallywright.store.StoreAddress;

/** The pages of a club with a history shut nobody out and fit every screen. */
class EveryPageIT {

  private static final int SMALLEST_WIDTH = 320;
  private static final List<Integer> WIDTHS = List.of(390, 1366);

  private static StartedProgram program;
  private static Browsers browsers;
  private static Page page;
  private static String player;
  private static String session;

  @BeforeAll
  static void start(@TempDir Path data) {
    program = StartedProgram.demo(data);
    try (ClubStore store = ClubStore.open(StoreAddress.file(data))) {
      player = store.players().all().get(0).id().value();
      session = store.sessions().all().get(0).id().value();
    }
    browsers = new Browsers();
    page = browsers.laptop().newPage();
    page.navigate(program.signInAddress());
    page.waitForURL(program.address() + "/");
  }

  @AfterAll
  static void stop() {
    browsers.close();
    program.close();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/",
        "/drills",
        "/drills/{drill}",
        "/progress",
        "/progress/{player}",
        "/progress/{player}/rise",
        "/progress/drills",
        "/players",
        "/players/{player}",
        "/players/{player}/erase",
        "/players/import",
        "/players/groups",
        "/players/venues/new",
        "/sessions",
        "/sessions/new",
        "/sessions/{session}",
        "/sessions/{session}/plan",
        "/sessions/{session}/weather",
        "/sessions/{session}/from-paper",
        "/sessions/{session}/phone-file",
        "/settings"
      })
  void page_atEveryWidth_shutsNobodyOutAndFits(String pattern) {
    String path =
        pattern
            .replace("{drill}", Catalogue.shipped().drills().get(3).key().value())
            .replace("{player}", player)
            .replace("{session}", session);
    List<String> wrong = new ArrayList<>();
    page.navigate(program.address() + path);
    assertThat(page.locator("h1").textContent()).isNotBlank().isNotEqualTo("Sign in");
    wrong.addAll(tooWide(SMALLEST_WIDTH));
    for (int width : WIDTHS) {
      wrong.addAll(tooWide(width));
      new AxeBuilder(page)
          .analyze()
          .getViolations()
          .forEach(each -> wrong.add(width + ": " + each.getId() + " " + each.getNodes()));
    }
    assertThat(wrong).isEmpty();
  }

  /** What makes the page wider than the screen, if anything does. */
  private static List<String> tooWide(int width) {
    page.setViewportSize(width, 800);
    Object wide =
        page.evaluate(
            "() => document.documentElement.scrollWidth <= innerWidth ? ''"
                + " : [...document.querySelectorAll('main *')].filter((e) =>"
                + " e.getBoundingClientRect().right > innerWidth + 1 && !e.closest('.scroll'))"
                + ".slice(0, 3).map((e) => e.outerHTML.slice(0, 120)).join(' | ') || 'the frame'");
    return wide.equals("") ? List.of() : List.of(width + " is exceeded by " + wide);
  }
}
