package rallywright.acceptance;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import org.junit.jupiter.api.Test;
import rallywright.engine.plan.BlockId;

/** A phone that stayed at a game while the others went on takes nobody back by one tap. */
class BehindIT {

  @Test
  void phoneBehind_offersTheWayOn_andGoesBackOnlyAfterBeingAsked() {
    try (RunningCourt court = RunningCourt.shared()) {
      CourtPhone slow = court.phone();
      slow.start("b2");
      slow.mode("rallies");
      slow.rallies("AB");
      slow.waitUntilHome();
      CourtPhone other = court.phone();
      other.start("b3");
      other.waitUntilHome();

      slow.page.locator("[data-act=follow]").waitFor();
      assertThat(slow.page.locator("[data-act=start-block]").count()).isZero();
      assertThat(slow.text("[data-act=follow]")).contains("On to").contains("Drop and follow");
      assertThat(slow.score()).isEqualTo("1-1");
      slow.rallies("A");
      assertThat(slow.score()).isEqualTo("2-1");
      slow.waitUntilHome();
      assertThat(court.progress().current()).contains(new BlockId("b3"));

      askToGoBack(slow);
      slow.page.locator(".sheet [data-act=follow]").tap();
      slow.page.locator(".bar-title", withText("Drop and follow")).waitFor();
      slow.ready();
      slow.waitUntilHome();
      assertThat(court.progress().current()).contains(new BlockId("b3"));

      slow.tap("sheet", "[data-sheet=blocks]");
      slow.tap("show-block", "[data-block=b2]");
      askToGoBack(slow);
      slow.tap("start-back", "");
      slow.waitUntilHome();
      assertThat(court.progress().current()).contains(new BlockId("b2"));
      other.page.locator(".bar-title", withText("Kitchen only")).waitFor();
    }
  }

  private static void askToGoBack(CourtPhone phone) {
    phone.tap("sheet", "[data-sheet=blocks]");
    phone.tap("sheet", "[data-sheet=back]");
    assertThat(phone.text(".sheet")).contains("takes every phone and the board along");
  }

  private static Page.LocatorOptions withText(String text) {
    return new Page.LocatorOptions().setHasText(text);
  }
}
