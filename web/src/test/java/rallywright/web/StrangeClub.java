package rallywright.web;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rallywright.engine.club.AgeGroup;
import rallywright.engine.club.Group;
import rallywright.engine.club.GroupId;
import rallywright.engine.club.Hand;
import rallywright.engine.club.Player;
import rallywright.engine.club.PlayerId;
import rallywright.engine.club.Standing;
import rallywright.engine.club.Venue;
import rallywright.engine.club.VenueId;
import rallywright.engine.drill.DrillKey;
import rallywright.engine.plan.PlannedBlock;
import rallywright.engine.session.Session;
import rallywright.store.ClubContents;
import rallywright.store.ClubStore;
import rallywright.store.StoreAddress;
import rallywright.web.oncourt.SampleClub;

/** A server with a bit of everything, its coach, and a look into its store from beside. */
final class StrangeClub implements AutoCloseable {

  /** A session that nothing takes away. */
  static final String SESSION = SampleClub.SESSION.value();

  private final Path data;
  private final RunningServer server;
  private final ClubStore beside;
  private final CoachBrowser coach;
  private final Set<String> day;
  private @Nullable String token;
  private @Nullable ClubContents contents;
  private long known;

  StrangeClub() {
    try {
      data = Files.createTempDirectory("strange");
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
    server =
        WebServer.start(new ServerSettings(data, ServerSettings.Mode.CLUB, Reach.thisComputer(0)));
    coach = CoachBrowser.signedIn(server);
    beside = ClubStore.open(StoreAddress.file(data));
    SampleClub.addTo(beside);
    beside.sessions().save(played(beside.sessions().find(SampleClub.SESSION).orElseThrow()));
    beside.groups().save(new Group(new GroupId("g1"), "Tuesday", Set.of()));
    beside.venues().save(new Venue(new VenueId("v1"), "Hall", 2, Venue.Setting.INDOOR, "", "", 0));
    beside.players().save(player("wim", Standing.WALK_IN));
    for (int spare = 0; spare < 30; spare++) {
      beside.players().save(player("spare-" + spare, Standing.ACTIVE));
    }
    coach.post("/rotations/new", "/rotations/new", "name=Day&names=A%0AB%0AC%0AD%0AE&courts=1");
    day = Set.copyOf(beside.days().all().stream().map(saved -> saved.id()).toList());
  }

  /** The sample with drills that the list has; the other session keeps those that it lacks. */
  private static Session played(Session sample) {
    Map<String, String> names =
        Map.of(
            "dink-game", "kitchen-only",
            "drop-game", "drop-and-follow",
            "half-court-game", "half-court-singles-by-score");
    List<PlannedBlock> blocks =
        sample.plan().blocks().stream()
            .map(
                block ->
                    new PlannedBlock(
                        block.id(),
                        block.kind(),
                        new DrillKey(
                            names.getOrDefault(block.drill().value(), block.drill().value())),
                        block.end(),
                        block.time(),
                        block.games(),
                        block.sitting(),
                        block.reason()))
            .toList();
    return sample.withPlan(sample.plan().withBlocks(blocks));
  }

  private static Player player(String id, Standing standing) {
    return new Player(
        new PlayerId(id), id, null, Hand.RIGHT, Set.of(), "", AgeGroup.ADULT, standing);
  }

  /** Good parts of addresses. */
  List<String> ids() {
    return Stream.concat(
            Stream.of(
                SESSION,
                SampleClub.OTHER.value(),
                "p1",
                "p2",
                "g1",
                "v1",
                "wim",
                "dink-game",
                "spare-3",
                "spare-7"),
            day.stream())
        .toList();
  }

  CoachBrowser coach() {
    return coach;
  }

  String address() {
    return server.address();
  }

  /** Everything that the club holds. */
  ClubContents contents() {
    long now = beside.revision();
    if (contents == null || now != known) {
      contents = beside.contents();
      known = now;
    }
    return contents;
  }

  /** Posts a form, encoded already, with a token against forged posts. */
  HttpResponse<String> post(String path, String fields) {
    return coach.postBare(path, fields + "&_csrf=" + token());
  }

  /** A token that holds for the coach's visit. */
  String token() {
    if (token == null) {
      String page = coach.get("/players/new").body();
      token = page.replaceAll("(?s).*name=\"_csrf\" value=\"([^\"]+)\".*", "$1");
    }
    return token;
  }

  /** Any request. */
  HttpResponse<String> send(HttpRequest.Builder request) {
    return coach.send(request);
  }

  @Override
  public void close() {
    beside.close();
    server.close();
    try (Stream<Path> files = Files.walk(data)) {
      files.sorted(java.util.Comparator.reverseOrder()).forEach(file -> file.toFile().delete());
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }
}
