package rallywright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rallywright.engine.score.Side;
import rallywright.engine.session.CourtEvent;

class BackupIT {

  @TempDir private Path folder;

  @Test
  void backup_putInPlace_isTheClub() throws IOException {
    Path backup = folder.resolve("backup.db");
    ClubContents contents;
    try (ClubStore store = ClubStore.open(TestDatabase.SQLITE.fresh())) {
      Examples.fill(store);
      contents = store.contents();
      store.backup(backup);
    }
    try (ClubStore store = restored(backup)) {
      assertThat(store.contents()).isEqualTo(contents);
      assertThat(store.settings().get(Settings.SECRET_PREFIX + "password")).isPresent();
    }
  }

  @Test
  void backups_whileRalliesAreStored_areWhole() throws Exception {
    var threads = Executors.newSingleThreadExecutor();
    AtomicBoolean playing = new AtomicBoolean(true);
    try (ClubStore store = ClubStore.open(TestDatabase.SQLITE.fresh())) {
      Examples.fill(store);
      var stored = threads.submit(() -> play(store, playing));
      for (int n = 0; n < 5; n++) {
        store.backup(folder.resolve(n + ".db"));
      }
      playing.set(false);
      assertThat(stored.get()).isPositive();
      List<CourtEvent> all = store.events().of(Examples.MONDAY);
      for (int n = 0; n < 5; n++) {
        try (ClubStore copy = restored(folder.resolve(n + ".db"))) {
          List<CourtEvent> some = copy.events().of(Examples.MONDAY);
          assertThat(all).startsWith(some.toArray(new CourtEvent[0]));
        }
      }
    } finally {
      threads.shutdownNow();
    }
  }

  @Test
  void backup_overAFileThatIsThere_isRefused() throws IOException {
    Path file = Files.writeString(folder.resolve("mine.db"), "mine");
    try (ClubStore store = ClubStore.open(TestDatabase.SQLITE.fresh())) {
      assertThatThrownBy(() -> store.backup(file))
          .isInstanceOf(StoreProblem.class)
          .hasMessageContaining("not overwritten");
      assertThatThrownBy(() -> store.backup(folder.resolve("no/where.db")))
          .isInstanceOf(StoreProblem.class)
          .hasMessageContaining("could not be written");
    }
    assertThat(file).hasContent("mine");
    try (var files = Files.list(folder)) {
      assertThat(files).containsExactly(file);
    }
  }

  @Test
  void backup_ofAServer_namesTheServersOwnTool() {
    try (ClubStore store = ClubStore.open(TestDatabase.POSTGRES.fresh())) {
      assertThatThrownBy(() -> store.backup(folder.resolve("server.db")))
          .isInstanceOf(StoreProblem.class)
          .hasMessageContaining("pg_dump");
    }
  }

  private static int play(ClubStore store, AtomicBoolean playing) {
    int n = 0;
    while (playing.get()) {
      store.events().append(List.of(Examples.rally("r-" + n++, Examples.FIRST, Side.A)));
    }
    return n;
  }

  private ClubStore restored(Path backup) throws IOException {
    Path place = Files.createTempDirectory(folder, "restored");
    Files.copy(backup, place.resolve(StoreAddress.FILE_NAME));
    return ClubStore.open(StoreAddress.file(place));
  }
}
