package rallywright.web.oncourt;

import java.nio.file.Path;
import java.util.Map;
import rallywright.store.ClubStore;
import rallywright.store.KeyBook;
import rallywright.store.StoreAddress;
import rallywright.web.Reach;
import rallywright.web.RunningServer;
import rallywright.web.ServerSettings;
import rallywright.web.WebServer;

/** A real server with the sample club, and the keys to it. */
final class CourtServer implements AutoCloseable {

  private static final long FAR_AWAY = 4_000_000_000_000L;

  final String courtKey;
  final String expiredKey;
  private final RunningServer server;

  CourtServer(Path data) {
    try (ClubStore store = ClubStore.open(StoreAddress.file(data))) {
      SampleClub.addTo(store);
      courtKey = store.keys().issue(KeyBook.Kind.ON_COURT, SampleClub.SESSION.value(), FAR_AWAY);
      expiredKey = store.keys().issue(KeyBook.Kind.ON_COURT, SampleClub.SESSION.value(), 1);
    }
    server =
        WebServer.start(new ServerSettings(data, ServerSettings.Mode.CLUB, Reach.thisComputer(0)));
  }

  CourtClient stranger() {
    return new CourtClient(server.address());
  }

  CourtClient coach() {
    CourtClient client = stranger();
    String address = server.signInAddress();
    String key = address.substring(address.indexOf("key=") + 4);
    client.postForm("/sign-in", "/sign-in", Map.of("key", key));
    return client;
  }

  CourtClient phone() {
    CourtClient client = stranger();
    client.postJson("/court/open", "{\"key\":\"" + courtKey + "\"}");
    return client;
  }

  @Override
  public void close() {
    server.close();
  }
}
