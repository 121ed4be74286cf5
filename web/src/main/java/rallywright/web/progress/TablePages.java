package rallywright.web.progress;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import rallywright.engine.club.Player;
import rallywright.engine.practice.SessionLoad;
import rallywright.engine.reading.LoadReading;

/** Every table of the progress pages as CSV (RFC 4180, UTF-8). */
@Controller
final class TablePages {

  private static final MediaType CSV = new MediaType("text", "csv", StandardCharsets.UTF_8);

  private final ShownPlayers players;
  private final ClubReadings readings;
  private final MethodPages methods;

  TablePages(ShownPlayers players, ClubReadings readings, MethodPages methods) {
    this.players = players;
    this.readings = readings;
    this.methods = methods;
  }

  @GetMapping("/progress/needs.csv")
  ResponseEntity<String> needs(@RequestParam(defaultValue = "") String group) {
    return file(
        "needs",
        ProgressTables.needs(
            players.of(players.group(group)), readings.now(), readings.points().worth()));
  }

  @GetMapping("/progress/method.csv")
  ResponseEntity<String> values() {
    return file("values", ProgressTables.values(methods.values()));
  }

  @GetMapping("/progress/{id}/skills.csv")
  ResponseEntity<String> skills(@PathVariable String id) {
    Player player = players.one(id);
    return file("skills-" + plain(player), ProgressTables.skills(player, readings.now()));
  }

  @GetMapping("/progress/{id}/games.csv")
  ResponseEntity<String> games(@PathVariable String id) {
    Player player = players.one(id);
    return file("games-" + plain(player), ProgressTables.games(player, readings.now()));
  }

  @GetMapping("/progress/{id}/needs.csv")
  ResponseEntity<String> needsOf(@PathVariable String id) {
    Player player = players.one(id);
    return file(
        "needs-" + plain(player),
        ProgressTables.needs(List.of(player), readings.now(), readings.points().worth()));
  }

  @GetMapping("/progress/{id}/breakdown.csv")
  ResponseEntity<String> breakdown(@PathVariable String id) {
    Player player = players.one(id);
    return file("breakdown-" + plain(player), PointTables.breakdown(player, readings.points()));
  }

  @GetMapping("/progress/{id}/worth.csv")
  ResponseEntity<String> worth(@PathVariable String id) {
    Player player = players.one(id);
    return file("worth-" + plain(player), PointTables.worth(player, readings.points()));
  }

  @GetMapping("/progress/{id}/partners.csv")
  ResponseEntity<String> partners(@PathVariable String id) {
    Player player = players.one(id);
    return file("partners-" + plain(player), PointTables.partners(player, readings.points()));
  }

  @GetMapping("/progress/{id}/load.csv")
  ResponseEntity<String> load(@PathVariable String id) {
    Player player = players.one(id);
    List<SessionLoad> loads = LoadReading.of(readings.history().sessions(), player.id());
    return file("load-" + plain(player), PointTables.load(player, loads));
  }

  @GetMapping("/progress/drills.csv")
  ResponseEntity<String> drills() {
    return file("drills", PointTables.gains(readings.now().gains()));
  }

  private static String plain(Player player) {
    String plain = player.firstName().replaceAll("[^\\p{L}\\p{N}]+", "-");
    return Optional.of(plain).filter(name -> !name.isBlank()).orElse("player");
  }

  private static ResponseEntity<String> file(String name, String text) {
    return ResponseEntity.ok()
        .contentType(CSV)
        .header(
            HttpHeaders.CONTENT_DISPOSITION,
            ContentDisposition.attachment()
                .filename(name + ".csv", StandardCharsets.UTF_8)
                .build()
                .toString())
        .body(text);
  }
}
