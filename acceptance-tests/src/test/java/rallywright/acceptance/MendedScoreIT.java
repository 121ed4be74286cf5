package rallywright.acceptance;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rallywright.engine.session.GameProgress;

/** Taking back to the first rally, and mending a result of an earlier block, with its trace. */
class MendedScoreIT {

  @Test
  void undo_tapByTap_leadsBackToTheStart(@TempDir Path data) {
    try (RunningCourt court = new RunningCourt(data)) {
      CourtPhone phone = court.phone();
      phone.start("b2");
      phone.mode("rallies");
      phone.rallies("ABBAB");
      for (String score : new String[] {"2-2", "1-2", "1-1", "1-0", "0-0"}) {
        phone.tap("undo", "");
        assertThat(phone.score()).isEqualTo(score);
      }
      assertThat(phone.text("[data-act=undo]")).contains("start of this block");
      phone.waitUntilHome();
      assertThat(court.stored("b2-t1-l1").status()).isEqualTo(GameProgress.Status.NOT_BEGUN);
      assertThat(court.events()).hasSize(11);
    }
  }

  @Test
  void resultOfAnEarlierBlock_typedAnew_countsAndBothStayInTheList(@TempDir Path data) {
    try (RunningCourt court = new RunningCourt(data)) {
      CourtPhone phone = court.phone();
      phone.start("b3");
      phone.tap("final", "[data-a='5'][data-b='3']");
      phone.start("b5");
      phone.tap("sheet", "[data-sheet=blocks]");
      phone.tap("show-block", "[data-block=b3]");
      phone.tap("sheet", "[data-sheet=place]");
      phone.tap("choose-game", "[data-game=b3-t1-l1]");
      phone.tap("final", "[data-a='4'][data-b='5']");
      phone.tap("sheet", "[data-sheet=drill]");
      phone.tap("sheet", "[data-sheet=entries]");
      assertThat(phone.text(".entries")).contains("result 5–3", "result 4–5");
      phone.tap("close", "");
      phone.waitUntilHome();
      assertThat(court.stored("b3-t1-l1").score()).hasToString("4-5");
      assertThat(court.progress().current())
          .hasValueSatisfying(block -> assertThat(block.value()).isEqualTo("b5"));
    }
  }
}
