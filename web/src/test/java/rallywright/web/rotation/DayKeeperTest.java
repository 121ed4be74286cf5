package rallywright.web.rotation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rallywright.engine.club.PlayerId;
import rallywright.engine.rotation.DayAnswer;
import rallywright.engine.rotation.DayStyle;
import rallywright.engine.rotation.DayWish;
import rallywright.engine.rotation.PlayDay;
import rallywright.engine.rotation.RotationGame;
import rallywright.engine.rotation.RotationWish;
import rallywright.engine.rotation.SavedDay;
import rallywright.store.ClubStore;
import rallywright.store.StoreAddress;
import rallywright.web.page.NotHere;

/** Rounds are found anew beside the store; nobody waits for that, and nothing is overwritten. */
class DayKeeperTest {

  private static final PlayerId GUS = new PlayerId("3");

  @TempDir Path data;
  private ClubStore store;
  private DayKeeper keeper;

  @BeforeEach
  void open() {
    store = ClubStore.open(StoreAddress.file(data));
    keeper = new DayKeeper(store);
    DayWish wish =
        new DayWish(
            DayStyle.NEW_PARTNERS,
            RotationGame.DOUBLES,
            2,
            4,
            RotationWish.numbered(9),
            Set.of(),
            Set.of(),
            1);
    PlayDay day = ((DayAnswer.Ready) PlayDay.start(wish)).day();
    store.days().save(new SavedDay("games", "Games", LocalDate.of(2026, 5, 4), null, day));
  }

  @AfterEach
  void close() {
    store.close();
  }

  private PlayDay stored() {
    return store.days().find("games").orElseThrow().day();
  }

  /** Another thread writes to the store; it must not have to wait for whoever calls this. */
  private static void elsewhere(Runnable write) {
    CompletableFuture.runAsync(write).orTimeout(20, TimeUnit.SECONDS).join();
  }

  @Test
  void aPhoneCanWrite_whileTheRoundsAreFoundAnew() {
    String refusal =
        keeper.change(
            "games",
            day -> {
              elsewhere(() -> store.settings().put("from.a.phone", "11-4"));
              return day.leaving(GUS);
            },
            () -> {});
    assertThat(refusal).isEmpty();
    assertThat(store.settings().get("from.a.phone")).contains("11-4");
    assertThat(stored().wish().present(1)).hasSize(8).doesNotContain(GUS);
  }

  @Test
  void aDayThatWasChangedMeanwhile_isNotOverwritten_butChangedOnceMore() {
    List<Integer> seen = new ArrayList<>();
    List<String> beside = new ArrayList<>();
    String refusal =
        keeper.change(
            "games",
            day -> {
              if (seen.isEmpty()) {
                elsewhere(() -> keeper.change("games", PlayDay::next, () -> {}));
              }
              seen.add(day.now());
              return day.leaving(GUS);
            },
            () -> beside.add("stored"));
    assertThat(refusal).isEmpty();
    assertThat(seen).containsExactly(0, 1);
    assertThat(beside).hasSize(1);
    assertThat(stored().now()).isEqualTo(1);
    assertThat(stored().wish().present(1)).contains(GUS);
    assertThat(stored().wish().present(2)).doesNotContain(GUS);
  }

  @Test
  void aDayThatOthersChangeAgainAndAgain_staysAsTheyMadeIt_andTheCoachIsTold() {
    List<SavedDay> theirs = new ArrayList<>();
    String refusal =
        keeper.change(
            "games",
            day -> {
              SavedDay now = store.days().find("games").orElseThrow();
              SavedDay renamed =
                  new SavedDay("games", now.name() + "!", now.date(), now.drill(), now.day());
              elsewhere(() -> store.days().save(renamed));
              theirs.add(renamed);
              return day.next();
            },
            () -> theirs.clear());
    assertThat(refusal).startsWith("Somebody else is changing this rotation.");
    assertThat(store.days().find("games")).contains(theirs.get(theirs.size() - 1));
    assertThat(stored().now()).isZero();
  }

  @Test
  void whatIsRefused_orGone_isStoredNowhere() {
    String refusal = keeper.change("games", day -> day.leaving(new PlayerId("nobody")), () -> {});
    assertThat(refusal).startsWith("Who is to leave is not there.");
    assertThat(catchThrowable(() -> keeper.change("else", PlayDay::next, () -> {})))
        .isInstanceOf(NotHere.class);
    assertThat(stored().now()).isZero();
  }
}
