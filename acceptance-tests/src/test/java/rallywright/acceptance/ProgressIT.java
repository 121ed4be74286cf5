package rallywright.acceptance;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.APIResponse;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rallywright.engine.club.Player;
import rallywright.store.ClubStore;
import rallywright.store.StoreAddress;

/** A player's page in a browser: two dates to compare, methods in place, tables to take away. */
class ProgressIT {

  private static StartedProgram program;
  private static Browsers browsers;
  private static Page page;
  private static Player player;

  @BeforeAll
  static void start(@TempDir Path data) {
    program = StartedProgram.demo(data);
    try (ClubStore store = ClubStore.open(StoreAddress.file(data))) {
      player = store.players().all().get(0);
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

  private static String address() {
    return program.address() + "/progress/" + player.id().value();
  }

  private static LocalDate date(String field) {
    return LocalDate.parse(page.inputValue("#" + field));
  }

  private static String changes() {
    return String.join("|", page.locator(".skill").allTextContents());
  }

  @Test
  void handle_dragged_comparesOtherDates_inEveryPicture() {
    page.navigate(address());
    LocalDate before = date("from");
    String said = changes();
    page.locator(".timeline").scrollIntoViewIfNeeded();
    BoundingBox box = page.locator("#handle-from .handle-block").boundingBox();
    BoundingBox line = page.locator(".timeline").boundingBox();
    double y = box.y + box.height / 2;
    page.mouse().move(box.x + box.width / 2, y);
    page.mouse().down();
    page.mouse().move(line.x + line.width / 2, y);
    page.waitForResponse(response -> response.url().contains("from="), () -> page.mouse().up());
    page.waitForFunction(
        "(text) => [...document.querySelectorAll('.skill')].map((e) => e.textContent).join('|')"
            + " !== text",
        said);
    assertThat(date("from")).isAfter(before.plusWeeks(2)).isBefore(date("to"));
    assertThat(page.locator("#compared").textContent())
        .contains("week of " + date("from").getDayOfMonth() + " ");
    List<?> places =
        (List<?>)
            page.evaluate(
                "() => [...new Set([...document.querySelectorAll('line[data-compare=from]')]"
                    + ".map((line) => line.getAttribute('x1')))]");
    assertThat(places).hasSize(1);
  }

  @Test
  void handle_movedByKey_goesOneWeek_andStaysInFocus() {
    page.navigate(address());
    LocalDate before = date("to");
    page.locator("#handle-to").focus();
    page.waitForResponse(
        response -> response.url().contains("to=" + before.minusWeeks(1)),
        () -> page.keyboard().press("ArrowLeft"));
    page.waitForFunction(
        "(day) => document.querySelector('#to').defaultValue === day",
        before.minusWeeks(1).toString());
    assertThat(date("to")).isEqualTo(before.minusWeeks(1));
    assertThat(page.evaluate("() => document.activeElement.id")).isEqualTo("handle-to");
  }

  @Test
  void finger_onAPicture_movesTheNearestHandle() {
    try (var phone = browsers.phone()) {
      phone.addCookies(page.context().cookies());
      Page small = phone.newPage();
      small.navigate(address());
      LocalDate before = LocalDate.parse(small.inputValue("#from"));
      Locator picture = small.locator("svg.course").first();
      picture.scrollIntoViewIfNeeded();
      BoundingBox box = picture.boundingBox();
      small.waitForResponse(
          response -> response.url().contains("from="),
          () -> small.touchscreen().tap(box.x + box.width * 0.35, box.y + box.height / 2));
      assertThat(LocalDate.parse(small.inputValue("#from"))).isAfter(before);
    }
  }

  @Test
  void dates_withoutScript_areComparedByTheServer() {
    try (var plain =
        page.context()
            .browser()
            .newContext(new Browser.NewContextOptions().setJavaScriptEnabled(false))) {
      plain.addCookies(page.context().cookies());
      Page quiet = plain.newPage();
      quiet.navigate(address());
      LocalDate from = LocalDate.parse(quiet.inputValue("#from")).plusWeeks(3);
      quiet.fill("#from", from.toString());
      quiet.click("form.compare button");
      assertThat(quiet.locator("#compared").textContent())
          .contains("From the week of " + from.getDayOfMonth() + " ");
      assertThat(quiet.locator(".skill .number summary").allTextContents())
          .anyMatch(text -> text.matches("(Rose|Fell|No clear change).* in 100.*"));
    }
  }

  @Test
  void datesTheWrongWayRound_areRefusedAtTheField_andTheWholeTimeIsShown() {
    var response = page.navigate(address() + "?from=2026-05-01&to=2026-04-01");
    assertThat(response.status()).isEqualTo(422);
    assertThat(page.locator("#from-error").textContent())
        .contains("2026-05-01")
        .contains("2026-04-01")
        .contains("Maybe");
    assertThat(page.inputValue("#from")).isEqualTo("2026-05-01");
    assertThat(page.navigate(address() + "?from=yesterday").status()).isEqualTo(422);
    assertThat(page.locator("#from-error").textContent()).contains("yesterday").contains("Maybe");
  }

  @Test
  void everyNumber_opensItsMethodInPlace() {
    page.navigate(address());
    Locator numbers = page.locator("details.number");
    assertThat(numbers.count()).isGreaterThan(10);
    Locator last = numbers.last();
    assertThat(last.locator("dl").first().isVisible()).isFalse();
    last.locator("summary").click();
    assertThat(last.locator("dl").first().textContent())
        .contains("What it is", "How it is computed", "What it cannot say");
    for (String link : links("a[href^='/progress/method#']")) {
      page.navigate(program.address() + link);
      String anchor = link.substring(link.indexOf('#') + 1);
      assertThat(page.locator("section[id='" + anchor + "']").count()).as(link).isEqualTo(1);
    }
  }

  @Test
  void everyTable_isGivenAsCsv_withHeadingsAndRows() throws IOException {
    for (String path :
        List.of("/progress", "/progress/" + player.id().value(), "/progress/method")) {
      page.navigate(program.address() + path);
      List<String> tables = links("a[href*='.csv']");
      assertThat(tables).as(path).isNotEmpty();
      for (String table : tables) {
        APIResponse answer = page.request().get(program.address() + table);
        assertThat(answer.status()).as(table).isEqualTo(200);
        assertThat(answer.headers().get("content-type")).startsWith("text/csv");
        assertThat(answer.headers().get("content-disposition")).startsWith("attachment");
        List<CSVRecord> rows =
            CSVFormat.RFC4180.parse(new StringReader(answer.text())).getRecords();
        assertThat(rows).as(table).hasSizeGreaterThan(1);
        int columns = rows.get(0).size();
        assertThat(rows).as(table).allMatch(row -> row.size() == columns);
        assertThat(rows.get(0)).as(table).noneMatch(String::isBlank).doesNotHaveDuplicates();
      }
    }
  }

  private static List<String> links(String selector) {
    return page.locator(selector).all().stream()
        .map(link -> link.getAttribute("href"))
        .distinct()
        .toList();
  }
}
