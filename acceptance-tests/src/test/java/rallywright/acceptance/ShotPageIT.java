package rallywright.acceptance;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import com.microsoft.playwright.options.BoundingBox;
import java.nio.file.Path;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rallywright.engine.aim.ShotSetting;
import rallywright.engine.aim.ShotStudy;
import rallywright.engine.aim.ShotWords;
import rallywright.engine.aim.UsualShot;
import rallywright.web.page.Units;

/** A coach without physics asks what a shot allows: by keyboard, by dragging, without script. */
class ShotPageIT {

  private static final double MPH = 0.44704;
  private static final Pattern FEET = Pattern.compile("translate\\((\\S+) (\\S+)\\)");

  private static StartedProgram program;
  private static Browsers browsers;
  private static String signedIn;

  @BeforeAll
  static void start(@TempDir Path data) {
    program = StartedProgram.serve(data);
    browsers = new Browsers();
    try (BrowserContext first = browsers.laptop()) {
      Page page = first.newPage();
      page.navigate(program.signInAddress());
      page.waitForURL(program.address() + "/");
      signedIn = first.storageState();
    }
  }

  @AfterAll
  static void stop() {
    browsers.close();
    program.close();
  }

  private static BrowserContext coach(Browser.NewContextOptions options) {
    return browsers.with(options.setStorageState(signedIn));
  }

  private static Page opened(BrowserContext coach, String path) {
    Page page = coach.newPage();
    page.navigate(program.address() + path);
    return page;
  }

  private static String advice(Page page) {
    return page.locator("[data-word=advice]").first().textContent();
  }

  private static void settled(Page page) {
    page.waitForCondition(
        () ->
            page.locator(".waiting-for").count() == 0
                && page.locator("[data-more] li").count() > 0);
  }

  /** Where to aim a drop from the baseline against a 10 mph wind, and how many in ten will land. */
  @Test
  void dropAgainstTenMilesAnHour_isAnsweredByKeyboardInOneSentence() {
    try (BrowserContext coach = coach(new Browser.NewContextOptions().setViewportSize(390, 844))) {
      Page page = opened(coach, "/");
      Browsers.toNextPage(page, () -> page.locator("nav >> text=Shots").click());
      assertThat(page.locator("h1").textContent()).isEqualTo("What a shot allows");
      Browsers.toNextPage(
          page, () -> page.locator("nav >> text=Third-shot drop, straight").click());
      String calm = advice(page);
      page.locator("[data-field=wind]").focus();
      for (int press = 0; press < 10; press++) {
        page.keyboard().press("ArrowRight");
      }
      page.waitForCondition(() -> !advice(page).equals(calm));
      settled(page);
      String answer = advice(page);
      assertThat(answer)
          .matches(
              "Aim .+ ft .+, .+ short of the kitchen line, .+ above the tape;"
                  + " you will be in [1-9] times in 10\\.");
      ShotSetting drop = UsualShot.DROP_STRAIGHT.usual();
      ShotSetting windy = drop.on(drop.day().withWind(10 * MPH, 0));
      assertThat(answer).isEqualTo(ShotWords.of(ShotStudy.full(windy), Units.FEET).advice());
      assertThat(page.locator("[data-word=wind]").textContent())
          .isEqualTo("10 mph into the hitter’s face");
      assertThat(page.locator("main").textContent()).contains("our assumption from the level");
      assertThat(page.url()).contains("wind=10");
    }
  }

  @Test
  void hitterAndContact_dragged_moveFieldsPicturesAndWords() {
    try (BrowserContext coach = coach(new Browser.NewContextOptions().setViewportSize(1366, 900))) {
      Page page = opened(coach, "/shots?shot=DROP_STRAIGHT");
      String before = advice(page);
      String path = page.locator("[data-part=plan-path]").getAttribute("d");
      drag(page, "[data-handle=hitter]", -60, -40);
      settled(page);
      double across = Double.parseDouble(page.inputValue("[data-field=hx]"));
      double fromNet = Double.parseDouble(page.inputValue("[data-field=hn]"));
      assertThat(across).isLessThan(3);
      assertThat(fromNet).isLessThan(21);
      Matcher at = FEET.matcher(page.locator("[data-part=plan-hitter]").getAttribute("transform"));
      assertThat(at.matches()).isTrue();
      assertThat(Double.parseDouble(at.group(1))).isEqualTo(across);
      assertThat(Double.parseDouble(at.group(2))).isEqualTo(fromNet);
      assertThat(page.locator("[data-part=plan-path]").getAttribute("d")).isNotEqualTo(path);
      assertThat(advice(page)).isNotEqualTo(before);

      drag(page, "[data-handle=contact]", 0, -30);
      settled(page);
      assertThat(Double.parseDouble(page.inputValue("[data-field=hh]"))).isGreaterThan(3);
      drag(page, "[data-handle=target]", 0, -60);
      settled(page);
      assertThat(Double.parseDouble(page.inputValue("[data-field=tn]"))).isGreaterThan(6);
      drag(page, "[data-handle=opponent]", -30, 0);
      settled(page);
      assertThat(Double.parseDouble(page.inputValue("[data-field=ox]"))).isLessThan(4);
    }
  }

  private static void drag(Page page, String handle, double right, double down) {
    Locator held = page.locator(handle);
    held.scrollIntoViewIfNeeded();
    BoundingBox box = held.boundingBox();
    double x = box.x + box.width / 2;
    double y = box.y + box.height / 2;
    page.mouse().move(x, y);
    page.mouse().down();
    for (int step = 1; step <= 10; step++) {
      page.mouse().move(x + right * step / 10, y + down * step / 10);
    }
    page.mouse().up();
  }

  /** An answer that comes after that of a later question changes nothing. */
  @Test
  void lateAnswer_toAnEarlierQuestion_isDropped() {
    try (BrowserContext coach = coach(new Browser.NewContextOptions().setViewportSize(1366, 900))) {
      Page page = opened(coach, "/shots?shot=RESET");
      AtomicInteger late = new AtomicInteger();
      AtomicInteger arrived = new AtomicInteger();
      page.route(
          "**/shots/answer?*detail=live*",
          (Route route) -> {
            late.incrementAndGet();
            page.waitForTimeout(4000);
            String body = route.fetch().text();
            route.fulfill(
                new Route.FulfillOptions()
                    .setContentType("application/json")
                    .setBody(body.replaceAll("Aim [^\"]*", "Aim at what was asked before.")));
            arrived.incrementAndGet();
          });
      page.fill("[data-field=level]", "5");
      page.waitForCondition(() -> arrived.get() > 0);
      settled(page);
      page.waitForTimeout(300);
      assertThat(late.get()).isPositive();
      ShotSetting reset = UsualShot.RESET.usual().at(5);
      assertThat(advice(page)).isEqualTo(ShotWords.of(ShotStudy.full(reset), Units.FEET).advice());
    }
  }

  @Test
  void withoutScript_aFormSubmitAnswers_andMistakesStandAtTheirFields() {
    try (BrowserContext coach =
        coach(
            new Browser.NewContextOptions()
                .setViewportSize(390, 844)
                .setJavaScriptEnabled(false))) {
      Page page = opened(coach, "/shots?shot=LOB");
      page.fill("[data-field=level]", "5");
      page.locator("text=Work it out").click();
      page.waitForURL("**/shots?*level=5*");
      ShotSetting lob = UsualShot.LOB.usual().at(5);
      assertThat(advice(page)).isEqualTo(ShotWords.of(ShotStudy.full(lob), Units.FEET).advice());
      page.navigate(program.address() + "/shots?shot=LOB&level=35");
      assertThat(page.locator("#a-level-error").textContent())
          .contains("(35) must be a number from 1 to 7", "Maybe 3.5");
      assertThat(page.locator("#a-level").inputValue()).isEqualTo("35");
    }
  }

  @Test
  void twoShots_standSideBySide_eachWithItsOwnFields() {
    try (BrowserContext coach = coach(new Browser.NewContextOptions().setViewportSize(1366, 900))) {
      Page page = opened(coach, "/shots?shot=DROP_STRAIGHT");
      Browsers.toNextPage(page, () -> page.locator("text=Compare with a second shot").click());
      Browsers.toNextPage(
          page, () -> page.locator("#b nav >> text=Third-shot drop, cross-court").click());
      assertThat(page.locator("#a h2").textContent()).contains("straight");
      assertThat(page.locator("#b h2").textContent()).contains("cross-court");
      assertThat(page.locator("#b").boundingBox().x)
          .isGreaterThan(page.locator("#a").boundingBox().x + 300);
      String first = page.locator("#a [data-word=advice]").textContent();
      page.fill("#b-level", "5");
      page.waitForCondition(() -> page.locator("#b.waiting-for").count() == 0);
      page.waitForCondition(() -> page.url().contains("b.level=5"));
      assertThat(page.locator("#a [data-word=advice]").textContent()).isEqualTo(first);
    }
  }

  /** Without script: landings typed, a mistake at its field, then the aim says where it is from. */
  @Test
  void landingsOfThePlayer_replaceTheLevel_andStayInTheAddress() {
    try (BrowserContext coach =
        coach(
            new Browser.NewContextOptions()
                .setViewportSize(390, 844)
                .setJavaScriptEnabled(false))) {
      Page page = opened(coach, "/shots?shot=DROP_STRAIGHT");
      String assumed = advice(page);
      page.locator("details.shot-own summary").click();
      page.fill("textarea[name=balls]", "5 -1\n5.5");
      page.locator("text=Use these landings").click();
      assertThat(page.locator("#balls-error").textContent()).contains("Line 2 (5.5)", "Maybe");
      page.fill(
          "textarea[name=balls]",
          "5 -1\n5.5 -1.5\n4.5 -1\n5 -0.5\n5.5 -1\n4.5 -1.5\n6 -1\n4 -1\n5 0");
      page.locator("text=Use these landings").click();
      page.waitForURL("**/shots?*own=*");
      assertThat(advice(page)).isNotEqualTo(assumed);
      assertThat(page.locator("[data-word=whose]").textContent()).startsWith("From 9 landings");
      page.fill("textarea[name=balls]", "");
      page.locator("text=Use these landings").click();
      page.waitForURL(url -> !url.contains("own="));
      assertThat(advice(page)).isEqualTo(assumed);
    }
  }

  /** Geometry in still air: 3 ft from the net, 11 ft 3 in + r and 3/22 of what is past the line. */
  @Test
  void roundThePost_saysHowWide_andWindIntoTheCourtMakesItLess() {
    try (BrowserContext coach = coach(new Browser.NewContextOptions())) {
      Page page = opened(coach, "/shots/post");
      String calm = page.locator(".post-words").textContent();
      assertThat(calm).contains("Round the left post", "at least 1 ft 7 in outside the side line");
      page.navigate(program.address() + "/shots/post?wind=8&from=270");
      assertThat(page.locator(".post-words").textContent()).isNotEqualTo(calm);
      page.navigate(program.address() + "/shots/post?angle=90");
      assertThat(page.locator("#angle-error").textContent()).contains("from 20 to 75", "Maybe 45");
    }
  }

  /** The program says no in words to what no field allows. */
  @Test
  void answer_toWrongNumbers_saysWhatIsWrong() {
    try (BrowserContext coach = coach(new Browser.NewContextOptions())) {
      var answer =
          coach
              .request()
              .get(program.address() + "/shots/answer?shot=LOB&hh=-4&wind=1e9&detail=live&asked=7");
      assertThat(answer.status()).isEqualTo(422);
      assertThat(answer.text())
          .contains("\"asked\":\"7\"", "Contact height in ft (-4)", "Wind on court in mph (1e9)");
    }
  }
}
