package rallywright.acceptance;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ConcurrentSkipListSet;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rallywright.engine.session.CourtEvent;
import rallywright.store.ClubStore;
import rallywright.store.KeyBook;
import rallywright.store.StoreAddress;

/** The power goes while phones score. What was acknowledged is there once, what was not comes. */
class KillDuringScoringIT {

  private static final long FAR_AWAY = 4_000_000_000_000L;
  private static final int PHONES = 4;
  private static final int ENOUGH = 120;

  private final Set<String> acknowledged = new ConcurrentSkipListSet<>();

  @Test
  void serverKilledWhilePhonesScore_hasEveryAcknowledgedRallyOnce(@TempDir Path data)
      throws Exception {
    String key = seed(data);
    StartedProgram program = StartedProgram.serve(data);
    AtomicBoolean go = new AtomicBoolean(true);
    List<Thread> phones = new ArrayList<>();
    for (int phone = 0; phone < PHONES; phone++) {
      int number = phone;
      Thread thread = new Thread(() -> score(program.address(), key, number, go));
      phones.add(thread);
      thread.start();
    }
    while (acknowledged.size() < ENOUGH && phones.stream().anyMatch(Thread::isAlive)) {
      Thread.sleep(5);
    }
    program.killAtOnce();
    go.set(false);
    for (Thread phone : phones) {
      phone.join();
    }
    assertThat(acknowledged).hasSizeGreaterThanOrEqualTo(ENOUGH);

    try (StartedProgram again = StartedProgram.serve(data)) {
      assertThat(again.address()).startsWith("http");
      assertThat(storedIds(data)).containsAll(acknowledged).doesNotHaveDuplicates();
    }
  }

  @Test
  void phonePage_openWhileTheServerIsKilled_sendsItsRalliesAfterTheRestart(@TempDir Path data)
      throws Exception {
    String key = seed(data);
    StartedProgram program = StartedProgram.serve(data);
    int port = URI.create(program.address()).getPort();
    try (Browsers browsers = new Browsers()) {
      CourtPhone phone = new CourtPhone(browsers.phone(), program, key);
      phone.start("b2");
      phone.mode("rallies");
      phone.rallies("AB");
      phone.waitUntilHome();
      program.killAtOnce();
      phone.rallies("AAB");
      assertThat(phone.score()).isEqualTo("3-2");
      assertThat(phone.text(".bar-way")).isEqualTo("3 unsent");
      try (StartedProgram again = StartedProgram.serve(data, port)) {
        assertThat(again.address()).isEqualTo(program.address());
        phone.waitUntilHome();
        assertThat(phone.score()).isEqualTo("3-2");
        List<CourtEvent> rallies = rallies(data);
        assertThat(rallies).hasSize(5);
        assertThat(storedIds(data)).doesNotHaveDuplicates();
      }
    }
  }

  private void score(String address, String key, int phone, AtomicBoolean go) {
    HttpClient http = HttpClient.newBuilder().cookieHandler(new CookieManager()).build();
    try {
      post(http, address + "/court/open", "{\"key\":\"" + key + "\"}");
      for (int number = 0; go.get(); number++) {
        String id = "01890000-0000-7000-8%03d-%012d".formatted(phone, number);
        String events = "/court/" + CourtSample.SESSION.value() + "/events";
        String answer = post(http, address + events, "[" + rally(id, phone) + "]");
        if (answer.contains("\"stored\"")) {
          acknowledged.add(id);
        }
      }
    } catch (IOException killed) {
      assertThat(killed).as("the connection broke, as it must").isNotNull();
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
    }
  }

  private static String post(HttpClient http, String address, String body)
      throws IOException, InterruptedException {
    return http.send(
            HttpRequest.newBuilder(URI.create(address))
                .header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString(body))
                .build(),
            HttpResponse.BodyHandlers.ofString())
        .body();
  }

  private static String rally(String id, int phone) {
    String game = phone % 2 == 0 ? "b2-t1-l1" : "b2-t1-l2";
    return """
        {"v":1,"type":"rally","id":"%s","session":"%s","at":1772557200000,"by":"phone %d",\
        "game":"%s","winner":"A","bonus":"NONE"}"""
        .formatted(id, CourtSample.SESSION.value(), phone, game);
  }

  private static String seed(Path data) {
    try (ClubStore store = ClubStore.open(StoreAddress.file(data))) {
      CourtSample.addTo(store);
      return store.keys().issue(KeyBook.Kind.ON_COURT, CourtSample.SESSION.value(), FAR_AWAY);
    }
  }

  private static List<String> storedIds(Path data) {
    try (ClubStore store = ClubStore.open(StoreAddress.file(data))) {
      return store.events().of(CourtSample.SESSION).stream()
          .map(event -> event.stamp().id().value())
          .toList();
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
