package rallywright.acceptance;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.Cookie;
import com.microsoft.playwright.options.SameSiteAttribute;
import java.net.Inet4Address;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rallywright.engine.session.CourtEvent;
import rallywright.store.ClubStore;
import rallywright.store.KeyBook;
import rallywright.store.StoreAddress;

/** The two ways in which a phone reaches the program: over TLS, and over the plain network. */
class ReachIT {

  private static final long FAR_AWAY = 4_000_000_000_000L;
  private static final String PASSWORD = "paddles lean on the fence";
  private static final String KEEP_OPEN = "Keep this page open: scores are kept in it.";

  /** Where the machine has no other address, one that is at least not the usual one. */
  private static final String SECOND_OWN = "127.0.0.2";

  @Test
  void phone_overTls_scoresWithACookieThatOnlyTlsCarries(@TempDir Path folder) throws Exception {
    Path data = folder.resolve("club");
    String key = seed(data);
    ThrowawayCertificate made = ThrowawayCertificate.in(folder);
    List<String> options =
        List.of("--tls-cert", made.certificate().toString(), "--tls-key", made.key().toString());
    try (StartedProgram program = StartedProgram.serve(data, options);
        Browsers browsers = new Browsers()) {
      assertThat(program.address()).startsWith("https://127.0.0.1:");
      BrowserContext context = browsers.trustingPhone();
      CourtPhone phone = new CourtPhone(context, program, key);
      assertThat(phone.page.evaluate("isSecureContext")).isEqualTo(true);
      assertThat(phone.page.locator(".notice").count()).isZero();
      scoreOne(phone);
      assertThat(rallies(data)).hasSize(1);
      assertThat(context.cookies())
          .singleElement()
          .satisfies(
              cookie -> {
                assertThat(cookie.name).isEqualTo("rallywright");
                assertThat(cookie.secure).isTrue();
                assertThat(cookie.httpOnly).isTrue();
                assertThat(cookie.sameSite).isEqualTo(SameSiteAttribute.STRICT);
              });
    }
  }

  @Test
  void host_withoutPassword_isRefusedWithWhatToDo(@TempDir Path data) throws Exception {
    FinishedProgram refused =
        FinishedProgram.run(
            List.of("serve", "--data", data.toString(), "--port", "0", "--host", ownAddress()), "");
    assertThat(refused.code()).isNotZero();
    assertThat(refused.out()).doesNotContain("http");
    assertThat(refused.err().lines()).hasSize(1);
    assertThat(refused.err())
        .contains(
            ownAddress(), "needs a password first. Set one with --set-password, then start again.");
  }

  @Test
  void phone_overThePlainNetwork_scoresAndIsToldToStayOpen(@TempDir Path data) throws Exception {
    seed(data);
    FinishedProgram set =
        FinishedProgram.run(
            List.of("serve", "--set-password", "--data", data.toString()), PASSWORD + "\n");
    assertThat(set.code()).as(set.err()).isZero();
    try (StartedProgram program = StartedProgram.serve(data, List.of("--host", ownAddress()));
        Browsers browsers = new Browsers()) {
      assertThat(program.address()).startsWith("http://" + ownAddress() + ":");
      String key = keyShownTo(browsers.laptop().newPage(), program);
      BrowserContext context = browsers.phone();
      CourtPhone phone = new CourtPhone(context, program, key);
      checkStay(phone);
      scoreOne(phone);
      assertThat(rallies(data)).hasSize(1);
      assertThat(context.cookies())
          .extracting((Cookie cookie) -> cookie.secure)
          .containsOnly(false);
    }
  }

  /** Signs in by password and makes a code for phones. */
  private static String keyShownTo(Page coach, StartedProgram program) {
    coach.navigate(program.address() + "/players");
    coach.waitForURL(program.address() + "/sign-in");
    coach.fill("#password", PASSWORD + "!");
    coach.locator("button.now").click();
    assertThat(coach.locator("#password-error").textContent()).isNotBlank();
    coach.fill("#password", PASSWORD);
    coach.locator("button.now").click();
    coach.waitForURL(program.address() + "/");
    coach.navigate(program.address() + "/sessions/" + CourtSample.SESSION.value());
    coach.locator("#phones button:text('Show a code')").click();
    assertThat(coach.locator("#phones strong").first().textContent())
        .isEqualTo(program.address() + "/court");
    return coach.locator("#phones strong").nth(1).textContent();
  }

  /** Browsers take 127.0.0.2 for this computer too, and then need no word. */
  private static void checkStay(CourtPhone phone) throws SocketException {
    boolean secure = (boolean) phone.page.evaluate("isSecureContext");
    assertThat(secure).isEqualTo(ownAddress().equals(SECOND_OWN));
    assertThat(phone.page.locator(".notice").count()).isEqualTo(secure ? 0 : 1);
    if (!secure) {
      assertThat(phone.text(".notice p")).isEqualTo(KEEP_OPEN);
      phone.tap("stays", "");
      phone.page.reload();
      phone.page.locator(".bar").waitFor();
      assertThat(phone.page.locator(".notice").count()).isZero();
      phone.tap("sheet", "[data-sheet=more]");
      assertThat(phone.text(".sheet-body")).contains(KEEP_OPEN, "The screen may go off by itself");
      phone.tap("close", "");
    }
  }

  private static void scoreOne(CourtPhone phone) {
    phone.start("b2");
    phone.mode("rallies");
    phone.rallies("A");
    phone.waitUntilHome();
    assertThat(phone.score()).isEqualTo("1-0");
  }

  /** An address of this machine that is not the loopback, read from its own interfaces. */
  private static String ownAddress() throws SocketException {
    for (NetworkInterface each : Collections.list(NetworkInterface.getNetworkInterfaces())) {
      if (each.isUp() && !each.isLoopback()) {
        for (InetAddress address : Collections.list(each.getInetAddresses())) {
          if (address instanceof Inet4Address && !address.isLinkLocalAddress()) {
            return address.getHostAddress();
          }
        }
      }
    }
    return SECOND_OWN;
  }

  private static String seed(Path data) {
    try (ClubStore store = ClubStore.open(StoreAddress.file(data))) {
      CourtSample.addTo(store);
      return store.keys().issue(KeyBook.Kind.ON_COURT, CourtSample.SESSION.value(), FAR_AWAY);
    }
  }

  private static List<CourtEvent> rallies(Path data) {
    try (ClubStore store = ClubStore.open(StoreAddress.file(data))) {
      return store.events().of(CourtSample.SESSION).stream()
          .filter(CourtEvent.RallyPlayed.class::isInstance)
          .toList();
    }
  }
}
