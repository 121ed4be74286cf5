package rallywright.acceptance;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rallywright.catalogue.Catalogue;
import rallywright.engine.club.AgeGroup;
import rallywright.engine.club.Hand;
import rallywright.engine.club.Player;
import rallywright.engine.club.PlayerId;
import rallywright.engine.club.Standing;
import rallywright.engine.rotation.DayAnswer;
import rallywright.engine.rotation.DayResult;
import rallywright.engine.rotation.DayStyle;
import rallywright.engine.rotation.DayWish;
import rallywright.engine.rotation.PlayDay;
import rallywright.engine.rotation.RotationGame;
import rallywright.engine.rotation.RotationPlayer;
import rallywright.engine.rotation.SavedDay;
import rallywright.store.ClubStore;
import rallywright.store.StoreAddress;

/** The pages of a club with a history shut nobody out and fit every screen. */
class EveryPageIT {

  private static final int SMALLEST_WIDTH = 320;
  private static final List<Integer> WIDTHS = List.of(390, 1366);

  private static StartedProgram program;
  private static Browsers browsers;
  private static Page page;
  private static String player;
  private static String session;
  private static String group;
  private static String venue;
  private static String rotation;

  @BeforeAll
  static void start(@TempDir Path data) {
    program = StartedProgram.demo(data);
    try (ClubStore store = ClubStore.open(StoreAddress.file(data))) {
      player = store.players().all().get(0).id().value();
      group = store.groups().all().get(0).id().value();
      venue = store.venues().all().get(0).id().value();
      store.players().save(walkIn());
      session = store.sessions().all().get(0).id().value();
      rotation = rotation(store);
    }
    browsers = new Browsers();
    page = browsers.laptop().newPage();
    page.navigate(program.signInAddress());
    page.waitForURL(program.address() + "/");
  }

  private static String rotation(ClubStore store) {
    DayWish wish =
        new DayWish(
            DayStyle.FIXED_PAIRS,
            RotationGame.DOUBLES,
            2,
            9,
            store.players().all().stream()
                .limit(10)
                .map(each -> RotationPlayer.of(each.id(), 0))
                .toList(),
            Set.of(),
            Set.of(),
            1);
    PlayDay ready = ((DayAnswer.Ready) PlayDay.start(wish)).day();
    PlayDay scored = new PlayDay(wish, ready.rounds(), List.of(new DayResult(1, 0, 11, 6)), 2);
    store.days().save(new SavedDay("games", "Games", LocalDate.of(2026, 5, 2), null, scored));
    return "games";
  }

  private static Player walkIn() {
    return new Player(
        new PlayerId("walk-in"),
        "Zed",
        null,
        Hand.RIGHT,
        Set.of(),
        "",
        AgeGroup.ADULT,
        Standing.WALK_IN);
  }

  @AfterAll
  static void stop() {
    browsers.close();
    program.close();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/",
        "/drills",
        "/drills/{drill}",
        "/progress",
        "/progress/{player}",
        "/progress/method",
        "/progress/{player}/rise",
        "/progress/drills",
        "/progress/pairs",
        "/players",
        "/players/{player}",
        "/players/{player}/erase",
        "/players/walk-in/merge",
        "/players/new",
        "/players/import",
        "/players/groups",
        "/players/groups/{group}",
        "/players/venues",
        "/players/venues/new",
        "/players/venues/{venue}",
        "/players?archived",
        "/progress?group={group}",
        "/sessions?group={group}",
        "/sessions",
        "/sessions/new",
        "/season",
        "/season?group={group}&weeks=12&every=3",
        "/rotations",
        "/rotations/new",
        "/rotations/{rotation}",
        "/rotations/{rotation}/wall",
        "/sessions/{session}",
        "/sessions/{session}/board",
        "/sessions/{session}/wall",
        "/sessions/{session}/plan",
        "/sessions/{session}/weather",
        "/sessions/{session}/plan/wish",
        "/sessions/{session}/from-paper",
        "/sessions/{session}/phone-file",
        "/shots",
        "/shots?shot=LOB&level=35",
        "/shots?shot=DROP_STRAIGHT&b.shot=DROP_CROSS",
        "/shots/lines",
        "/shots/post?wind=10&from=270",
        "/drills/twenty-drops",
        "/settings",
        "/court",
        "/no-such-page"
      })
  void page_atEveryWidth_shutsNobodyOutAndFits(String pattern) {
    String path =
        pattern
            .replace("{drill}", Catalogue.shipped().drills().get(3).key().value())
            .replace("{player}", player)
            .replace("{group}", group)
            .replace("{venue}", venue)
            .replace("{session}", session)
            .replace("{rotation}", rotation);
    List<String> wrong = new ArrayList<>();
    page.navigate(program.address() + path);
    assertThat(page.locator("h1").textContent()).isNotBlank().isNotEqualTo("Sign in");
    assertThat(page.title()).endsWith(" · Rallywright");
    assertThat(page.locator("body").textContent()).containsIgnoringCase("demo");
    wrong.addAll(tooWide(SMALLEST_WIDTH));
    for (int width : WIDTHS) {
      wrong.addAll(tooWide(width));
      Accessibility.faults(page).forEach(each -> wrong.add(width + ": " + each));
    }
    assertThat(wrong).isEmpty();
  }

  @Test
  void plan_changedByKeyboard_keepsTheKeyboardAndWhatIsUnfolded() {
    page.navigate(program.address() + "/sessions/" + planned());
    page.waitForURL("**/plan");
    Locator fold = page.locator("details[id^=who-]").last();
    fold.locator("summary").click();
    String unfolded = fold.getAttribute("id");
    Locator more = page.locator("button[value=MORE]").first();
    String button = more.getAttribute("id");
    String clock = page.locator("#plan-clock").textContent();
    more.focus();
    page.keyboard().press("Enter");
    page.waitForCondition(() -> !page.locator("#plan-clock").textContent().equals(clock));
    page.waitForCondition(() -> button.equals(page.evaluate("document.activeElement.id")));
    assertThat(page.locator("#" + unfolded).getAttribute("open")).isNotNull();

    Locator out = page.locator("button[value=REMOVE]").last();
    String gone = out.getAttribute("id");
    out.focus();
    page.keyboard().press("Enter");
    page.waitForCondition(() -> page.locator("#" + gone).count() == 0);
    page.waitForCondition(() -> "plan-clock".equals(page.evaluate("document.activeElement.id")));
  }

  @Test
  void pageOnCourt_saysDemo() {
    page.navigate(program.address() + "/court/" + session);
    page.locator(".bar-way", new Page.LocatorOptions().setHasText("demo")).waitFor();
    assertThat(page.title()).isEqualTo("On court · Rallywright");
  }

  /** A session that was not played, planned for two. */
  private static String planned() {
    page.navigate(program.address() + "/sessions/new");
    page.locator("input[name=who]").nth(0).check();
    page.locator("input[name=who]").nth(1).check();
    page.locator("button.now").click();
    page.waitForURL("**/plan");
    return page.url().replaceAll(".*/sessions/", "");
  }

  /** What makes the page wider than the screen, if anything does. */
  private static List<String> tooWide(int width) {
    page.setViewportSize(width, 800);
    Object wide =
        page.evaluate(
            "() => document.documentElement.scrollWidth <= innerWidth ? ''"
                + " : [...document.querySelectorAll('main *')].filter((e) =>"
                + " e.getBoundingClientRect().right > innerWidth + 1 && !e.closest('.scroll'))"
                + ".slice(0, 3).map((e) => e.outerHTML.slice(0, 120)).join(' | ') || 'the frame'");
    return wide.equals("") ? List.of() : List.of(width + " is exceeded by " + wide);
  }
}
