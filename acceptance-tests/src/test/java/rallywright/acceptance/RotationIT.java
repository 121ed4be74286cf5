package rallywright.acceptance;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.SelectOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An evening of games with rotating partners, run from a phone: people come and go. */
class RotationIT {

  private static final List<String> NAMES =
      List.of(
          "Arn", "Bea", "Cal", "Dot", "Eli", "Fay", "Gus", "Hal", "Ivy", "Jon", "Kim", "Lou",
          "Max");

  @Test
  void thirteenOnThreeCourts_oneLeavesInRoundFour_oneComesLate_theEveningGoesOn(
      @TempDir Path data) {
    try (StartedProgram program = StartedProgram.serve(data);
        Browsers browsers = new Browsers()) {
      BrowserContext phone = browsers.phone();
      Page page = phone.newPage();
      page.navigate(program.signInAddress());
      page.waitForURL(program.address() + "/");
      page.navigate(program.address() + "/rotations/new");
      page.fill("#walkIns", String.join(", ", NAMES));
      page.fill("#courts", "3");
      page.fill("#minutes", "100");
      Browsers.toNextPage(page, () -> page.locator("main button.now").tap());
      assertThat(page.locator("main .lede").textContent())
          .contains("13 players, 3 courts, 8 rounds");
      assertThat(timeToCome(page))
          .matches("8 rounds to 11 without a horn take about .*nine times in ten at most.*");
      Page wall = phone.newPage();
      wall.navigate(page.url() + "/wall");
      for (int round = 1; round <= 4; round++) {
        Browsers.toNextPage(page, () -> page.locator("main button.now").tap());
      }
      List<List<String>> before = rounds(page).subList(0, 4);

      page.selectOption("#leaves", new SelectOption().setLabel("Gus"));
      Browsers.toNextPage(page, () -> page.locator("text=Leaves after this round").tap());
      page.fill("#arrives", "Zoe");
      Browsers.toNextPage(page, () -> page.locator("text=Plays from the next round").tap());

      List<List<String>> after = rounds(page);
      assertThat(after).hasSize(8);
      assertThat(after.subList(0, 4)).isEqualTo(before);
      assertThat(timeToCome(page)).startsWith("Still to come: 4 rounds to 11");
      checkRounds(after);
      assertThat(sidewaysScroll(page)).isZero();
      Browsers.toNextPage(page, () -> page.locator("main button.now").tap());
      wall.locator("h2", new Page.LocatorOptions().setHasText("Now: round 5")).waitFor();
      assertThat(wall.locator("#wall").textContent()).contains("Zoe").doesNotContain("Gus");
    }
  }

  private static int sidewaysScroll(Page page) {
    return (int) page.evaluate("() => document.documentElement.scrollWidth - innerWidth");
  }

  private static String timeToCome(Page page) {
    return page.locator("#time-to-come").textContent().strip().replaceAll("\\s+", " ");
  }

  /** The cells of each round: its number, a cell for each court, who sits out. */
  private static List<List<String>> rounds(Page page) {
    List<List<String>> rounds = new ArrayList<>();
    for (Locator row : page.locator("#rounds tbody tr").all()) {
      rounds.add(row.locator("th, td").allTextContents().stream().map(String::strip).toList());
    }
    return rounds;
  }

  /** Everybody who is there stands in each round once, and sit-outs stay even. */
  private static void checkRounds(List<List<String>> rounds) {
    Map<String, Integer> sits = new HashMap<>();
    for (int round = 1; round <= rounds.size(); round++) {
      List<String> cells = rounds.get(round - 1);
      List<String> expected = new ArrayList<>(NAMES);
      if (round > 4) {
        expected.set(expected.indexOf("Gus"), "Zoe");
      }
      List<String> named = new ArrayList<>();
      cells.subList(1, cells.size()).forEach(cell -> named.addAll(List.of(cell.split("\\W+", -1))));
      named.removeIf(word -> word.isEmpty() || word.equals("v"));
      assertThat(named).as("round " + round).containsExactlyInAnyOrderElementsOf(expected);
      sits.merge(cells.get(cells.size() - 1), 1, Integer::sum);
    }
    List<Integer> throughout =
        NAMES.stream()
            .filter(name -> !name.equals("Gus"))
            .map(name -> sits.getOrDefault(name, 0))
            .toList();
    assertThat(Collections.max(throughout) - Collections.min(throughout)).isLessThanOrEqualTo(1);
  }
}
