package rallywright.acceptance;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rallywright.engine.session.GameProgress;

class OnCourtIT {

  private static RunningCourt court;

  @BeforeAll
  static void start() {
    court = RunningCourt.shared();
  }

  @AfterAll
  static void stop() {
    court.close();
  }

  @Test
  void gameScoredRallyByRally_withUndoAndEnding_isStoredAsSeen() {
    CourtPhone phone = court.phone();
    phone.start("b2");
    phone.mode("rallies");
    phone.rallies("AAB");
    assertThat(phone.score()).isEqualTo("2-1");
    assertThat(phone.text("[data-act=undo]")).contains("point to Tomas");
    phone.tap("undo", "");
    assertThat(phone.score()).isEqualTo("2-0");
    phone.rallies("A");
    phone.tap("ending-ERROR", "");
    phone.tap("open-ending", "");
    phone.tap("note", "[data-value=DINK]");
    phone.tap("close", "");
    phone.rallies("BAA");
    assertThat(phone.score()).isEqualTo("5-1");
    assertThat(phone.text(".area-a .area-note")).isEqualTo("wins");
    phone.waitUntilHome();

    GameProgress game = court.stored("b2-t1-l1");
    assertThat(game.score()).hasToString("5-1");
    assertThat(game.rallies()).hasSize(6);
    assertThat(game.rallies().get(2).ending().orElseThrow().stroke()).isPresent();
    assertThat(game.rallies().get(2).ending().orElseThrow().manner()).isPresent();
    assertThat(game.rallies().get(3).ending()).isEmpty();
  }

  @Test
  void result_inOneTap_canBeTakenBackAndReplaced_andAReloadKeepsIt() {
    CourtPhone phone = court.phone();
    phone.start("b3");
    phone.mode("result");
    phone.tap("final", "[data-a='5'][data-b='3']");
    assertThat(phone.text("[data-act=undo]")).contains("result 5–3");
    phone.tap("undo", "");
    phone.tap("final", "[data-a='3'][data-b='5']");
    phone.tap("toggle-time", "");
    phone.tap("final", "[data-a='4'][data-b='2'][data-finish=TIME_CALLED]");
    phone.waitUntilHome();
    assertThat(court.stored("b3-t1-l1").score()).hasToString("4-2");
    assertThat(court.stored("b3-t1-l1").status()).isEqualTo(GameProgress.Status.TIME_CALLED);

    phone.page.reload();
    phone.page.locator(".acts").waitFor();
    assertThat(phone.text(".bar-title")).isEqualTo("Drop and follow");
    phone.tap("sheet", "[data-sheet=place]");
    assertThat(phone.text(".choose")).contains("4–2 time");
  }

  @Test
  void allLanes_inOneGrid_takeAResultInTwoTaps() {
    CourtPhone phone = court.phone();
    phone.start("b5");
    phone.mode("lanes");
    assertThat(phone.text(".lanes-left")).isEqualTo("4 of 4 still to come.");
    for (String game : List.of("b5-t1-l1", "b5-t1-l2", "b5-t2-l1", "b5-t2-l2")) {
      phone.tap("result-of", "[data-game=" + game + "]");
      phone.tap("final", "[data-a='2'][data-b='5']");
    }
    assertThat(phone.text(".lanes-left")).isEqualTo("All games are in.");
    phone.waitUntilHome();
    assertThat(court.stored("b5-t2-l2").score()).hasToString("2-5");
  }

  @Test
  void scores_givenWhileTheServerIsOutOfReach_goHomeLater_alsoAfterAReload() {
    BrowserContext context = court.browsers.phone();
    CourtPhone phone = court.phone(context);
    phone.tap("sheet", "[data-sheet=blocks]");
    phone.tap("show-block", "[data-block=end]");
    phone.page.route("**/events", route -> route.abort());
    phone.tap("effort", "[data-player=p3][data-rating='7']");
    phone.page.locator(".bar-way[data-unsent='1']").waitFor();
    assertThat(phone.text(".bar-way")).isEqualTo("1 unsent");
    phone.page.close();

    CourtPhone again = court.phone(context);
    again.waitUntilHome();
    assertThat(court.progress().efforts()).anyMatch(effort -> effort.rating() == 7);
  }

  @ParameterizedTest
  @CsvSource({"390, 844", "320, 568"})
  void everyView_hasNothingThatShutsPeopleOut(int width, int height) {
    CourtPhone phone = court.phone();
    phone.page.setViewportSize(width, height);
    for (String block : List.of("b1", "b2", "b4", "end")) {
      phone.tap("sheet", "[data-sheet=blocks]");
      check(phone, "blocks");
      phone.tap("show-block", "[data-block=" + block + "]");
      check(phone, block);
    }
    phone.tap("sheet", "[data-sheet=blocks]");
    phone.tap("show-block", "[data-block=b2]");
    for (String mode : List.of("result", "rallies", "lanes")) {
      phone.mode(mode);
      check(phone, mode);
    }
    phone.tap("result-of", "");
    check(phone, "result of one lane");
    phone.tap("close", "");
    phone.mode("result");
    for (String sheet : List.of("place", "drill")) {
      phone.tap("sheet", "[data-sheet=" + sheet + "]");
      check(phone, sheet);
      phone.tap("close", "");
    }
    phone.tap("sheet", "[data-sheet=more]");
    check(phone, "more");
    phone.tap("close", "");
    phone.tap("sheet", "[data-sheet=place]");
    phone.tap("choose-game", "[data-game=b2-t2-l2]");
    phone.mode("rallies");
    phone.rallies("A");
    phone.tap("open-ending", "");
    check(phone, "how it ended");
    phone.tap("close", "");
    phone.tap("sheet", "[data-sheet=drill]");
    phone.tap("sheet", "[data-sheet=entries]");
    check(phone, "what was entered");
    phone.tap("close", "");
    phone.tap("undo", "");
  }

  static void check(CourtPhone phone, String view) {
    assertThat(Accessibility.faults(phone.page)).as(view).isEmpty();
    Object small =
        phone.page.evaluate(
            "() => [...document.querySelectorAll('button, input, a')].map((b) => [b.textContent"
                + " || b.id, b.getBoundingClientRect()]).filter(([, r]) => r.width > 0"
                + " && (r.height < 48 || r.width < 48 || r.right > innerWidth + 1))"
                + ".map(([words]) => words)");
    assertThat((List<?>) small).as(view + ": targets too small or cut off").isEmpty();
  }
}
