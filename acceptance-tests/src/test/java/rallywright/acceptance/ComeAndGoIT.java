package rallywright.acceptance;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.LoadState;
import com.microsoft.playwright.options.ViewportSize;
import java.nio.file.Path;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A session planned on a phone for thirteen: one leaves half way, one comes late. */
class ComeAndGoIT {

  private static final List<String> NAMES =
      List.of(
          "Arn", "Bea", "Cal", "Dot", "Eli", "Fay", "Gus", "Hal", "Ivy", "Jon", "Kim", "Lou",
          "Zoe");

  private static final LocalTime GUS_LEAVES = LocalTime.of(18, 50);
  private static final LocalTime ZOE_IS_WARM = LocalTime.of(18, 35);

  /** One turn of a block: when the block is played, and who plays, sits out or is not there. */
  private record Turn(LocalTime from, LocalTime until, List<String> playing, List<String> beside) {}

  @Test
  void thirteenOnThreeCourts_oneLeavesHalfWay_oneComesLate_everybodyIsPlacedWhileThere(
      @TempDir Path data) {
    try (StartedProgram program = StartedProgram.serve(data);
        Browsers browsers = new Browsers()) {
      Page page = browsers.phone().newPage();
      page.navigate(program.signInAddress());
      page.waitForURL(program.address() + "/");
      page.navigate(program.address() + "/sessions/new");
      page.fill("#walkIns", String.join(", ", NAMES));
      page.fill("#minutes", "100");
      page.fill("#courts", "3");
      page.fill("#start", "18:00");
      page.locator("#single-players summary").tap();
      page.fill("#one-who-1", "Gus");
      page.fill("#one-leaves-1", "18:50");
      page.fill("#one-who-2", "Zoe");
      page.fill("#one-comes-2", "18:30");
      assertNoSidewaysScroll(page);
      assertSearchShutsNobodyOut(page, () -> page.locator("main button.now").tap());
      page.waitForURL("**/plan");
      page.waitForLoadState(LoadState.LOAD);

      assertThat(page.locator(".plan-note").allTextContents())
          .hasSize(2)
          .anySatisfy(note -> assertThat(note).startsWith("Gus leaves at 18:50; the last game"))
          .anySatisfy(
              note ->
                  assertThat(note)
                      .startsWith("Zoe comes at 18:30 and first warms up alone for 5 minutes"));
      assertThat(page.locator("#board .caution").count()).isZero();
      assertThat(page.locator("#plan-clock").textContent()).doesNotContain("Too long");
      checkTurns(turns(page));
      assertNoSidewaysScroll(page);
    }
  }

  /** The page of a running search; it is kept as it is first shown while it is looked at. */
  private static void assertSearchShutsNobodyOut(Page page, Runnable start) {
    Predicate<String> search = address -> address.contains("/planning/");
    page.route(
        search,
        route -> {
          if (route.request().headers().containsKey("hx-request")) {
            route.abort();
          } else {
            route.resume();
          }
        });
    start.run();
    page.waitForURL("**/planning/*");
    assertThat(page.locator("main progress").count()).isEqualTo(1);
    ViewportSize phone = page.viewportSize();
    for (ViewportSize size : List.of(new ViewportSize(390, 844), new ViewportSize(1366, 768))) {
      page.setViewportSize(size.width, size.height);
      assertNoSidewaysScroll(page);
      assertThat(Accessibility.faults(page)).isEmpty();
    }
    page.setViewportSize(phone.width, phone.height);
    page.unroute(search);
    page.reload();
  }

  private static void assertNoSidewaysScroll(Page page) {
    assertThat((int) page.evaluate("() => document.documentElement.scrollWidth - innerWidth"))
        .as("sideways scroll")
        .isZero();
  }

  private static List<Turn> turns(Page page) {
    List<Turn> turns = new ArrayList<>();
    for (Locator block : page.locator(".plan-block").all()) {
      String[] times = block.locator(".plan-time").textContent().strip().split("–", -1);
      for (Locator turn : block.locator("details ol > li").all()) {
        List<String> playing = new ArrayList<>();
        List<String> beside = new ArrayList<>();
        for (String line : turn.locator(".plan-game").allTextContents()) {
          boolean away = line.startsWith("sits out") || line.startsWith("not there");
          NAMES.stream()
              .filter(name -> line.matches(".*\\b" + name + "\\b.*"))
              .forEach((away ? beside : playing)::add);
        }
        turns.add(new Turn(LocalTime.parse(times[0]), LocalTime.parse(times[1]), playing, beside));
      }
    }
    return turns;
  }

  private static void checkTurns(List<Turn> turns) {
    assertThat(turns).hasSizeGreaterThan(8);
    assertThat(turns)
        .allSatisfy(
            turn -> {
              List<String> all = new ArrayList<>(turn.playing());
              all.addAll(turn.beside());
              assertThat(all).containsExactlyInAnyOrderElementsOf(NAMES);
            });
    assertThat(turns)
        .filteredOn(turn -> !turn.from().isBefore(GUS_LEAVES))
        .isNotEmpty()
        .noneMatch(turn -> turn.playing().contains("Gus"));
    assertThat(turns)
        .filteredOn(turn -> turn.until().isBefore(ZOE_IS_WARM))
        .isNotEmpty()
        .noneMatch(turn -> turn.playing().contains("Zoe"));
    assertThat(turns).anyMatch(turn -> turn.playing().contains("Gus"));
    assertThat(turns).anyMatch(turn -> turn.playing().contains("Zoe"));
  }
}
