package rallywright.acceptance;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.options.WaitForSelectorState;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rallywright.engine.session.CourtEvent;

/** Two phones that score the same lane, with and without hearing of each other. */
class OneLaneTwoPhonesIT {

  @Test
  void bothTapTheSameRallies_eachCountsOnce() {
    try (RunningCourt court = RunningCourt.shared()) {
      CourtPhone one = court.phone();
      one.start("b2");
      one.mode("rallies");
      BrowserContext context = court.browsers.phone();
      CourtPhone two = onTheSameGame(court, context);
      context.setOffline(true);
      two.rallies("AB");
      one.rallies("AB");
      one.waitUntilHome();
      context.setOffline(false);
      two.waitUntilHome();
      assertThat(two.score()).isEqualTo("1-1");
      assertThat(two.page.locator(".notice").count()).isZero();
      assertThat(court.stored("b2-t1-l1").score()).hasToString("1-1");
      assertThat(court.progress().disputes()).isEmpty();
      assertThat(rallies(court)).isEqualTo(4);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "standing, 390, 844, 2-0",
    "other, 320, 568, 0-1",
    "both, 390, 844, 2-1",
  })
  void theyDoNotSayTheSame_itIsShownOnBoth_andSettledWithATrace(
      String keep, int width, int height, String score) {
    try (RunningCourt court = RunningCourt.shared()) {
      CourtPhone one = court.phone();
      one.page.setViewportSize(width, height);
      one.start("b2");
      one.mode("rallies");
      BrowserContext context = court.browsers.phone();
      CourtPhone two = onTheSameGame(court, context);
      context.setOffline(true);
      two.rallies("B");
      assertThat(two.score()).isEqualTo("0-1");
      one.rallies("AA");
      one.waitUntilHome();
      context.setOffline(false);
      two.page.locator("[data-key=doubt]").waitFor();
      one.page.locator("[data-key=doubt]").waitFor();
      assertThat(one.text("[data-key=doubt] p"))
          .isEqualTo("Two phones do not say the same of Ilse – Tomas: 2–0 or 0–1.");
      assertThat(court.progress().disputes()).hasSize(1);

      OnCourtIT.check(one, "two phones differ");
      one.tap("sheet", "[data-sheet=doubt]");
      OnCourtIT.check(one, "which is right");
      assertThat(one.text("[data-keep=other]")).contains("0–1", "another phone");
      one.tap("settle", "[data-keep=" + keep + "]");
      one.waitUntilHome();
      assertThat(one.score()).isEqualTo(score);
      assertThat(one.page.locator("[data-key=doubt]").count()).isZero();
      assertThat(court.stored("b2-t1-l1").score()).hasToString(score);
      assertThat(court.progress().disputes()).isEmpty();
      checkTrace(one);
      gone(two);
      assertThat(two.score()).isEqualTo(score);
    }
  }

  private static void checkTrace(CourtPhone phone) {
    phone.tap("sheet", "[data-sheet=drill]");
    phone.tap("sheet", "[data-sheet=entries]");
    assertThat(phone.text(".entries")).contains("rally to Tomas", "taken back", "another phone");
  }

  private static void gone(CourtPhone phone) {
    phone
        .page
        .locator("[data-key=doubt]")
        .waitFor(new Locator.WaitForOptions().setState(WaitForSelectorState.DETACHED));
  }

  private static CourtPhone onTheSameGame(RunningCourt court, BrowserContext context) {
    CourtPhone phone = court.phone(context);
    phone.page.locator(".bar-title:text('Kitchen only')").waitFor();
    phone.ready();
    phone.mode("rallies");
    return phone;
  }

  private static long rallies(RunningCourt court) {
    return court.events().stream().filter(CourtEvent.RallyPlayed.class::isInstance).count();
  }
}
