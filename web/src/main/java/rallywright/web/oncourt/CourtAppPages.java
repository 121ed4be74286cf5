package rallywright.web.oncourt;

import java.util.List;
import java.util.Map;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RestController;

/** What makes the on-court page an app of the phone: the keeper of its files and its card. */
@RestController
final class CourtAppPages {

  private static final MediaType SCRIPT = MediaType.valueOf("text/javascript;charset=UTF-8");
  private static final String CARD = "application/manifest+json";

  private final CourtApp app;

  CourtAppPages(CourtApp app) {
    this.app = app;
  }

  /** The keeper; it may also answer for the page of the key, which lies beside its own address. */
  @GetMapping("/court/worker.js")
  ResponseEntity<String> worker() {
    return ResponseEntity.ok()
        .contentType(SCRIPT)
        .header("Service-Worker-Allowed", "/court")
        .body(app.worker());
  }

  @GetMapping(path = "/court/app.webmanifest", produces = CARD)
  Map<String, Object> card() {
    return Map.of(
        "name", "Rallywright on court",
        "short_name", "On court",
        "id", "/court",
        "start_url", "/court?resume",
        "scope", "/court",
        "display", "standalone",
        "background_color", "#f8f6ef",
        "theme_color", "#f8f6ef",
        "icons", List.of(icon(192), icon(512)));
  }

  private static Map<String, String> icon(int pixels) {
    return Map.of(
        "src",
        "/oncourt/icon-%d.png".formatted(pixels),
        "sizes",
        "%dx%d".formatted(pixels, pixels),
        "type",
        "image/png",
        "purpose",
        "any maskable");
  }
}
