package rallywright.acceptance;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rallywright.engine.score.Ending;
import rallywright.engine.session.CourtEvent;

/** The page on the phone: its age, its weight, what can be chosen, how a rally ended. */
class PhonePageIT {

  /** The most that the page and a session may weigh on the way to the phone, in bytes. */
  private static final int MOST_BYTES = 150_000;

  private static final String LOADED =
      """
      async (session) => {
        await navigator.serviceWorker.ready;
        const text = await (await fetch('/court/worker.js')).text();
        const files = JSON.parse(text.match(/FILES = (\\[.*\\])/)[1].replaceAll("'", '"'));
        const all = [...files, '/court/worker.js', `/court/${session}/state?since=0&plan=`];
        return Promise.all(all.map(async (file) => {
          const bytes = new Uint8Array(await (await fetch(file)).arrayBuffer());
          let binary = '';
          bytes.forEach((byte) => { binary += String.fromCharCode(byte); });
          return [file, btoa(binary)];
        }));
      }
      """;

  /** Notes every buzz and every sound. */
  private static final String LISTEN =
      """
      globalThis.told = [];
      navigator.vibrate = () => { told.push('buzz'); return true; };
      const start = OscillatorNode.prototype.start;
      OscillatorNode.prototype.start = function (...at) {
        told.push('sound');
        return start.apply(this, at);
      };
      """;

  private static RunningCourt court;

  @BeforeAll
  static void start(@TempDir Path data) {
    court = new RunningCourt(data);
  }

  @AfterAll
  static void stop() {
    court.close();
  }

  @Test
  void page_canBeInstalled() {
    Page page = court.phone().page;
    OfflineIT.waitUntilKept(page);
    Object card =
        page.evaluate(
            "async () => { const link = document.querySelector('link[rel=manifest]').href;"
                + " const card = await (await fetch(link)).json();"
                + " const icons = await Promise.all(card.icons.map(async (icon) => {"
                + " const image = new Image(); image.src = icon.src; await image.decode();"
                + " return `${image.naturalWidth}x${image.naturalHeight}` === icon.sizes; }));"
                + " const worker = await navigator.serviceWorker.getRegistration();"
                + " return [card.display, card.start_url, card.scope, icons.join(),"
                + " new URL(worker.scope).pathname]; }");
    assertThat(card)
        .isEqualTo(List.of("standalone", "/court?resume", "/court", "true,true", "/court"));
    page.navigate(court.address() + "/court");
    assertThat(page.locator("#resume a").getAttribute("href"))
        .isEqualTo("/court/" + CourtSample.SESSION.value());
  }

  @Test
  void page_withASession_weighsNoMoreThanAllowed() throws IOException {
    Page page = court.phone().page;
    List<?> loaded = (List<?>) page.evaluate(LOADED, CourtSample.SESSION.value());
    Map<String, Integer> weights = new LinkedHashMap<>();
    for (Object each : loaded) {
      List<?> file = (List<?>) each;
      byte[] bytes = java.util.Base64.getDecoder().decode((String) file.get(1));
      assertThat(bytes).as("%s", file.get(0)).isNotEmpty();
      weights.put((String) file.get(0), packed(bytes));
    }
    int all = weights.values().stream().mapToInt(Integer::intValue).sum();
    System.out.println("On-court page: " + all + " bytes packed in " + weights.size() + " files.");
    assertThat(weights).containsKeys("/js/oncourt/score.js", "/css/oncourt.css", "/court/shell");
    // With a name like Łukasz or Şerife nothing more is fetched: every font of the page is in it.
    Object fonts =
        page.evaluate(
            "() => [...document.styleSheets].flatMap((sheet) => [...sheet.cssRules])"
                + ".filter((rule) => rule instanceof CSSFontFaceRule)"
                + ".map((rule) => rule.cssText.match(/fonts\\/[^\"]+/)[0]).sort()");
    assertThat((List<?>) fonts)
        .hasSize(4)
        .allSatisfy(font -> assertThat(weights).containsKey("/" + font));
    assertThat(all).as(weights.toString()).isLessThanOrEqualTo(MOST_BYTES);
  }

  private static int packed(byte[] bytes) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (GZIPOutputStream gzip = new GZIPOutputStream(out)) {
      gzip.write(bytes);
    }
    return out.size();
  }

  @Test
  void olderProgram_isTold_andTheEventsStayUntilItUnderstands() {
    CourtPhone phone = court.phone();
    changeState(phone.page, "\"form\":3", "\"form\":2");
    phone.page.locator("[data-key=older]").waitFor();
    assertThat(phone.text("[data-key=older]")).contains("older than this page", "stay on this");
    rateEffort(phone, 4);
    phone.page.locator(".bar-way[data-unsent='1']").waitFor();
    phone.page.reload();
    phone.page.locator(".bar-way[data-unsent='1']").waitFor();
    phone.page.locator("[data-key=older] [data-act=save-file]").waitFor();
    assertThat(ratings()).doesNotContain(4);
    phone.page.unroute("**/state?*");
    phone.waitUntilHome();
    assertThat(ratings()).contains(4);
  }

  @Test
  void newerPage_isOffered_andLoadingItKeepsWhatWaits() {
    CourtPhone phone = court.phone();
    OfflineIT.waitUntilKept(phone.page);
    phone.page.route("**/events", Route::abort);
    rateEffort(phone, 6);
    changeState(phone.page, "\"build\":\"", "\"build\":\"other");
    phone.page.locator("[data-key=newer]").waitFor();
    phone.page.unroute("**/state?*");
    Browsers.toNextPage(phone.page, () -> phone.page.locator("[data-act=load-page]").tap());
    phone.page.locator(".bar-way[data-unsent='1']").waitFor();
    phone.page.unroute("**/events");
    phone.waitUntilHome();
    assertThat(phone.page.locator("[data-key=newer]").count()).isZero();
  }

  @Test
  void refusedEntry_isShownAndKept() {
    CourtPhone phone = court.phone();
    phone.page.route(
        "**/events",
        route -> {
          String sent = route.request().postData();
          String id = sent.replaceAll("(?s).*\"id\":\"([0-9a-f-]+)\".*", "$1");
          route.fulfill(
              new Route.FulfillOptions()
                  .setBody(
                      "{\"answers\":[{\"id\":\"%s\",\"outcome\":\"refused\",\"reason\":\"No.\"}]}"
                          .formatted(id)));
        });
    rateEffort(phone, 9);
    phone.page.locator("[data-key=refused]").waitFor();
    phone.tap("forget-refusals", "");
    phone.page.reload();
    phone.page.locator(".bar").waitFor();
    phone.ready();
    phone.tap("sheet", "[data-sheet=more]");
    assertThat(phone.text("[data-key=not-taken]")).contains("No.");
    var saved = phone.page.waitForDownload(() -> phone.tap("save-refused", ""));
    assertThat(saved.suggestedFilename()).startsWith("rallywright-scores");
  }

  @Test
  void choices_holdAfterAReload_andTapsBuzzAndSoundOnlyWhereWanted() {
    BrowserContext context = court.browsers.phone();
    context.addInitScript(LISTEN);
    CourtPhone phone = court.phone(context);
    rateEffort(phone, 2);
    assertThat((List<?>) phone.page.evaluate("told"))
        .map(String::valueOf)
        .contains("buzz", "sound");
    phone.tap("sheet", "[data-sheet=more]");
    for (String choice :
        List.of("hand=left", "size=large", "light=bright", "sound=off", "buzz=off", "guide=off")) {
      String[] parts = choice.split("=", 2);
      phone.tap("set", "[data-part=" + parts[0] + "][data-value=" + parts[1] + "]");
    }
    phone.page.reload();
    phone.page.locator(".bar").waitFor();
    assertThat(
            phone.page.evaluate(
                "[document.body.dataset.hand, getComputedStyle(document.body).backgroundColor,"
                    + " getComputedStyle(document.documentElement).fontSize].join(' | ')"))
        .isEqualTo("left | rgb(255, 255, 255) | 19.2px");
    rateEffort(phone, 5);
    phone.waitUntilHome();
    assertThat((List<?>) phone.page.evaluate("told")).isEmpty();
  }

  @Test
  void largeType_onASmallPhone_leavesEverythingInReach() {
    CourtPhone phone = court.phone();
    phone.page.setViewportSize(320, 568);
    phone.tap("sheet", "[data-sheet=more]");
    phone.tap("set", "[data-part=size][data-value=large]");
    OnCourtIT.check(phone, "more");
    phone.tap("close", "");
    phone.tap("sheet", "[data-sheet=blocks]");
    phone.tap("show-block", "[data-block=b3]");
    for (String mode : List.of("result", "rallies", "lanes")) {
      phone.mode(mode);
      OnCourtIT.check(phone, mode);
      Object lowest =
          phone.page.evaluate(
              "() => Math.max(...[...document.querySelectorAll('.areas, .lower, .lanes, .acts')]"
                  + ".map((each) => each.getBoundingClientRect().bottom)) - innerHeight");
      assertThat(((Number) lowest).doubleValue()).as(mode).isLessThanOrEqualTo(1);
    }
  }

  @Test
  void ending_tappedOnTheCourt_tellsStageMannerAndStroke() {
    CourtPhone phone = court.phone();
    phone.start("b5");
    phone.mode("rallies");
    phone.rallies("A");
    phone.tap("open-ending", "");
    phone.tap("note", "[data-value=DROP]");
    phone.tap("struck", "[data-side=B][data-zone=WAY]");
    phone.rallies("A");
    phone.tap("open-ending", "");
    phone.tap("set", "[data-part=ask]");
    phone.tap("struck", "[data-side=A][data-zone=LINE]");
    phone.rallies("B");
    phone.tap("struck", "[data-side=B][data-zone=BACK]");
    phone.waitUntilHome();
    var rallies = court.stored("b5-t1-l1").rallies();
    assertThat(rallies.get(0).ending())
        .contains(Ending.of(Ending.Stage.TRANSITION, Ending.Stroke.DROP, Ending.Manner.ERROR));
    assertThat(rallies.get(1).ending().orElseThrow().stage()).contains(Ending.Stage.NET_EXCHANGE);
    assertThat(rallies.get(1).ending().orElseThrow().manner()).contains(Ending.Manner.BEATEN);
    assertThat(rallies.get(2).ending().orElseThrow().stage()).contains(Ending.Stage.RETURN);
    assertThat(court.events()).filteredOn(CourtEvent.RallyPlayed.class::isInstance).hasSize(7);
  }

  private static List<Integer> ratings() {
    return court.progress().efforts().stream().map(CourtEvent.EffortRated::rating).toList();
  }

  private static void rateEffort(CourtPhone phone, int rating) {
    phone.tap("sheet", "[data-sheet=blocks]");
    phone.tap("show-block", "[data-block=end]");
    phone.tap("effort", "[data-player=p2][data-rating='" + rating + "']");
  }

  /** What the server says is changed on its way to the phone. */
  private static void changeState(Page page, String right, String other) {
    page.route(
        "**/state?*",
        route -> {
          var response = route.fetch();
          String text = response.text();
          assertThat(text).contains(right);
          route.fulfill(
              new Route.FulfillOptions().setResponse(response).setBody(text.replace(right, other)));
        });
  }
}
