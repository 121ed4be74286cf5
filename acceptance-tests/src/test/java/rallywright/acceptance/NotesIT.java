package rallywright.acceptance;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * Notes in words, from phone and desk: kept, corrected, taken away, and read by the coach alone.
 */
class NotesIT {

  private static final String MARKUP = "<b onclick=alert(1)>Split step</b> & then drop";

  private RunningCourt court;

  @BeforeEach
  void open() {
    court = RunningCourt.shared();
  }

  @AfterEach
  void close() {
    court.close();
  }

  @Test
  void noteOnADrill_writtenWithoutNetwork_arrives_isCorrectedAndStaysFromOtherPhones() {
    BrowserContext context = court.browsers.phone();
    CourtPhone phone = court.phone(context);
    phone.start("b2");
    phone.waitUntilHome();
    context.setOffline(true);
    write(phone, "block b2", MARKUP);
    assertThat(phone.text(".note-text")).isEqualTo(MARKUP);
    phone.tap("close", "");
    assertThat(phone.text("[data-unsent]")).isEqualTo("1 unsent");
    context.setOffline(false);
    phone.waitUntilHome();

    phone.page.reload();
    phone.page.locator(".bar").waitFor();
    phone.ready();
    notes(phone);
    assertThat(phone.text(".note-text")).isEqualTo(MARKUP);
    phone.tap("open-note", "[data-note]");
    assertThat(phone.page.locator("#note").inputValue()).isEqualTo(MARKUP);
    phone.page.locator("#note").fill("Split step, then drop");
    phone.tap("keep-note", "");
    assertThat(phone.text(".note-line")).startsWith("Kitchen only (corrected)");
    phone.waitUntilHome();

    CourtPhone other = court.phone();
    notes(other);
    assertThat(other.text(".sheet")).contains("1 note of other phones");
    assertThat(other.page.content()).doesNotContain("Split step");
    assertThat(seenBy(other)).contains("\"type\":\"note\"").doesNotContain("Split step");

    Page page = court.coach(desk());
    Locator block = page.locator("section", withText("2. Kitchen only")).last();
    assertThat(block.locator(".note-line > .note-text").textContent())
        .isEqualTo("Split step, then drop");
    assertThat(page.locator("b[onclick]").count()).isZero();
    assertThat(page.content()).contains("Before: &lt;b onclick");
  }

  @Test
  void noteOnAPlayer_writtenAtTheBoard_isOnThePlayersPage_andLeavesATraceWhenTakenAway() {
    Page page = court.coach(desk() + "/board");
    page.locator("summary", withText("Notes")).click();
    page.locator("#note-about").selectOption("player p2");
    page.locator("#note").fill("Lands drops from everywhere.");
    keep(page);
    page.navigate(court.address() + desk());
    page.locator("summary", withText("Write a note")).click();
    page.locator("#note-about").selectOption("player p2");
    page.locator("#note").fill("Next: the return.");
    keep(page);
    assertThat(page.locator(".lede").textContent()).contains("planned");

    page.navigate(court.address() + "/progress/p2");
    assertThat(page.locator("#notes .note-text").allTextContents())
        .containsExactly("Next: the return.", "Lands drops from everywhere.");
    assertThat(page.locator("#notes .note-head").first().textContent()).contains("3 March 2026");

    page.navigate(court.address() + desk());
    page.locator(".note-line summary").first().click();
    Browsers.toNextPage(page, () -> page.locator("text=Take the note away").first().click());
    assertThat(page.locator(".done").textContent()).isEqualTo("The note was taken away.");
    page.locator("summary", withText("Taken away (1)")).click();
    assertThat(page.locator("#notes details[open] .note-text").last().textContent())
        .isEqualTo("Lands drops from everywhere.");
    page.navigate(court.address() + "/progress/p2");
    assertThat(page.locator("#notes .note-text").allTextContents())
        .containsExactly("Next: the return.");
  }

  @Test
  void noteThatIsEmptyOrTooLong_isRefused_andNothingTypedIsLost() {
    Page page = court.coach(desk());
    page.locator("summary", withText("Write a note")).click();
    keep(page);
    assertThat(page.locator(".done").textContent()).startsWith("The note is empty");
    page.evaluate("document.getElementById('note').removeAttribute('maxlength')");
    page.locator("#note").fill("long ".repeat(120));
    keep(page);
    assertThat(page.locator("#note-error").textContent()).contains("500");
    assertThat(page.locator("#note").inputValue()).startsWith("long long").hasSizeGreaterThan(590);
    assertThat(court.events()).isEmpty();
  }

  private String desk() {
    return "/sessions/" + court.session;
  }

  private static void write(CourtPhone phone, String about, String text) {
    notes(phone);
    phone.tap("open-note", ":not([data-note])");
    phone.tap("set", "[data-value='" + about + "']");
    phone.page.locator("#note").fill(text);
    phone.tap("keep-note", "");
  }

  private static void notes(CourtPhone phone) {
    phone.tap("sheet", "[data-sheet=more]");
    phone.tap("sheet", "[data-sheet=notes]");
  }

  private static String seenBy(CourtPhone phone) {
    return String.valueOf(
        phone.page.evaluate("fetch(location.pathname + '/state').then((answer) => answer.text())"));
  }

  private static void keep(Page page) {
    Browsers.toNextPage(page, () -> page.locator("button", withText("Keep the note")).click());
  }

  private static Page.LocatorOptions withText(String text) {
    return new Page.LocatorOptions().setHasText(text);
  }
}
