package rallywright.web.settings;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import rallywright.store.ClubStore;
import rallywright.store.StoreProblem;
import rallywright.store.archive.ClubExport;
import rallywright.web.page.NotHere;

/** The whole club to take away: a backup of its file, and an export for other programs. */
@Controller
final class CopyPages {

  private final ClubStore store;
  private final Clock clock = Clock.system(ZoneId.systemDefault());

  CopyPages(ClubStore store) {
    this.store = store;
  }

  @GetMapping("/settings/export")
  ResponseEntity<byte[]> export() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ClubExport.write(store.contents(), out);
    return file("rallywright-export-" + LocalDate.now(clock) + ".zip", out.toByteArray());
  }

  /** A backup; the file in between stands in a folder that only this user can read, and goes. */
  @GetMapping("/settings/backup")
  ResponseEntity<byte[]> backup() throws IOException {
    Path folder = Files.createTempDirectory("rallywright");
    Path copy = folder.resolve("club");
    try {
      store.backup(copy);
      return file("rallywright-backup-" + LocalDate.now(clock) + ".db", Files.readAllBytes(copy));
    } catch (StoreProblem problem) {
      throw new NotHere("There is no backup. " + problem.getMessage());
    } finally {
      remove(copy);
      remove(folder);
    }
  }

  private static void remove(Path path) {
    try {
      Files.deleteIfExists(path);
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }

  private static ResponseEntity<byte[]> file(String name, byte[] content) {
    return ResponseEntity.ok()
        .contentType(MediaType.APPLICATION_OCTET_STREAM)
        .header(
            HttpHeaders.CONTENT_DISPOSITION,
            ContentDisposition.attachment().filename(name).build().toString())
        .body(content);
  }
}
