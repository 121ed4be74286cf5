package rallywright.acceptance;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.SelectOption;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import rallywright.engine.plan.BlockId;
import rallywright.engine.score.Score;

/** What the coach does from the board, in two presses each; the phones follow. */
class BoardActsIT {

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
  void shorten_byMinutesAndByGames_phonesAndClockFollow() {
    CourtPhone phone = court.phone();
    phone.start("b2");
    phone.waitUntilHome();
    Page board = court.coach(board());

    press(board, "Shorten this block", "5 more min");
    assertThat(done(board)).isEqualTo("Kitchen only ends in 5 min; the phones follow.");
    assertThat(board.locator(".board-limit").textContent()).isEqualTo("This block ends in 5 min.");
    Locator clock = phone.page.locator(".bar [role=timer]");
    clock.waitFor();
    assertThat(clock.textContent()).matches("5:00|4:[45][0-9]");
    assertThat(phone.text(".place")).contains("game 1 of 2");

    press(board, "Shorten this block", "Finish the games that are on");
    assertThat(done(board)).contains("2 games fall away");
    phone.page.locator(".place", withText("game 1 of 1")).waitFor();
    phone.tap("final", "[data-a='5'][data-b='2']");
    assertThat(phone.text("[data-key=onward]")).contains("Next").contains("Drop and follow");
    phone.waitUntilHome();
    score(board, "5–2").waitFor();

    press(board, "Shorten this block", "Finish the games that are on");
    assertThat(done(board)).startsWith("No lane has a game behind the one it is at");

    press(board, "Shorten this block", "End as planned again");
    phone.page.locator("[data-key=onward]", withText("Next game")).waitFor();
    assertThat(board.locator(".board-limit").count()).isZero();
  }

  @Test
  void minutes_thatCannotBe_areRefusedInASentence() {
    CourtPhone phone = court.phone();
    phone.start("b2");
    phone.waitUntilHome();
    Page board = court.coach(board());
    fold(board, "Shorten this block");
    board.locator("#minutes").fill("999");
    Browsers.toNextPage(board, () -> board.locator(".board-minutes button").first().click());
    assertThat(done(board)).contains("999").contains("120");
    assertThat(court.progress().limit(new BlockId("b2"))).isEmpty();
  }

  @Test
  void swap_fromTheNextGameOn_keepsScoresSoFar() {
    CourtPhone phone = court.phone();
    phone.start("b2");
    phone.mode("rallies");
    phone.rallies("AA");
    phone.waitUntilHome();
    Page board = court.coach(board());

    swap(board, "Ilse", "Bea");
    assertThat(done(board))
        .startsWith("Ilse and Bea change places from the next game on; scores so far stay.")
        .contains("Not everywhere: Bea is not planned for this part of Half-court singles");
    assertThat(phone.text(".area-a .area-name")).isEqualTo("Ilse");
    assertThat(phone.score()).isEqualTo("2-0");
    phone.tap("sheet", "[data-sheet=place]");
    phone.page.locator(".choose", withText("Tomas – Bea")).waitFor();
    phone.page.locator(".choose", withText("Ilse – Tomas2–0")).waitFor();
    phone.page.locator(".choose", withText("Bea – Ravi")).waitFor();
    assertThat(court.stored("b2-t1-l1").score()).isEqualTo(Score.of(2, 0));

    swap(board, "Ilse", "Ilse");
    assertThat(done(board)).startsWith("Two different people");
  }

  @Test
  void lateOne_addedOnTheBoard_isOnThePhones_andWaits() {
    CourtPhone phone = court.phone();
    phone.start("b2");
    phone.waitUntilHome();
    Page board = court.coach(board());
    late(board, "Nia Ostrom");
    assertThat(done(board)).startsWith("Nia Ostrom is there");
    assertThat(board.locator("#board-state").textContent()).contains("Waiting: Nia.");
    phone.tap("sheet", "[data-sheet=more]");
    phone.page.locator("[data-key=people]", withText("Nia")).waitFor();

    late(board, "Nia Ostrom");
    assertThat(done(board)).contains("is there already");
  }

  @Test
  void end_takesTwoPresses_isFollowed_andCanBeTakenBack() {
    CourtPhone phone = court.phone();
    phone.start("b2");
    phone.waitUntilHome();
    Page board = court.coach(board());
    assertThat(board.locator("text=End it for everybody").isVisible()).isFalse();
    press(board, "End the session", "End it for everybody");
    phone.page.locator("text=The session is over").waitFor();
    assertThat(court.progress().isEnded()).isTrue();

    Browsers.toNextPage(board, () -> board.locator("text=The session is not over").click());
    phone.page.locator(".bar-title", withText("Kitchen only")).waitFor();
    assertThat(court.progress().isEnded()).isFalse();
  }

  @Test
  void boardThatIsBehind_beginsNothingTwice() {
    CourtPhone phone = court.phone();
    phone.start("b2");
    phone.waitUntilHome();
    BrowserContext laptop = court.browsers.laptop();
    Page first = court.coach(laptop, board());
    Page second = laptop.newPage();
    second.addInitScript("window.EventSource = class { addEventListener() {} }");
    second.navigate(court.address() + board());
    Browsers.toNextPage(first, () -> first.locator("#board-actions .button.now").click());
    phone.page.locator(".bar-title", withText("Drop and follow")).waitFor();
    Browsers.toNextPage(second, () -> second.locator("#board-actions .button.now").click());
    assertThat(done(second)).startsWith("That block has begun already");
    assertThat(court.progress().current()).contains(new BlockId("b3"));
  }

  private String board() {
    return "/sessions/" + court.session + "/board";
  }

  private static void press(Page board, String what, String button) {
    fold(board, what);
    Browsers.toNextPage(
        board, () -> board.locator("#board-more button", withText(button)).first().click());
  }

  private static void fold(Page board, String what) {
    board.locator("#board-more summary", withText(what)).click();
  }

  private static void swap(Page board, String one, String other) {
    fold(board, "Swap two players");
    board.locator("#swap-one").selectOption(label(one));
    board.locator("#swap-other").selectOption(label(other));
    Browsers.toNextPage(board, () -> board.locator("text=Swap from now on").click());
  }

  private static SelectOption label(String name) {
    return new SelectOption().setLabel(name);
  }

  private static void late(Page board, String name) {
    fold(board, "Somebody comes late");
    board.locator("#arrival").fill(name);
    Browsers.toNextPage(
        board, () -> board.locator(".board-minutes button", withText("Add")).click());
  }

  private static String done(Page board) {
    return board.locator(".done").textContent();
  }

  private static Locator score(Page page, String score) {
    return page.locator(".board-score", withText(score));
  }

  private static Page.LocatorOptions withText(String text) {
    return new Page.LocatorOptions().setHasText(text);
  }
}
