package rallywright.store.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.zip.ZipFile;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import rallywright.engine.club.Player;
import rallywright.engine.club.Standing;
import rallywright.store.ClubContents;
import rallywright.store.ClubStore;
import rallywright.store.ErasedGames;
import rallywright.store.Examples;
import rallywright.store.StoreProblem;
import rallywright.store.TestDatabase;

class ArchiveIT {

  private static final Player ROONA = Examples.player("p-roona", "Roona Vell", Standing.ACTIVE);

  @TempDir private Path folder;

  @ParameterizedTest
  @EnumSource
  void export_importedAndExportedAgain_isTheSameToTheByte(TestDatabase database)
      throws IOException {
    for (TestDatabase other : TestDatabase.values()) {
      Path first = folder.resolve(other + "-first.zip");
      Path second = folder.resolve(other + "-second.zip");
      ClubContents contents;
      try (ClubStore store = ClubStore.open(database.fresh())) {
        fillAndLetGo(store);
        ClubExport.write(store, first);
        contents = store.contents();
      }
      try (ClubStore store = ClubStore.open(other.fresh())) {
        assertThat(ClubImport.read(first, store, ImportInto.EMPTY_CLUB))
            .isEqualTo(new ImportResult.Done(4, 1, Examples.oneOfEach().size() - 2));
        assertThat(store.contents()).isEqualTo(contents);
        ClubExport.write(store, second);
      }
      assertThat(Files.readAllBytes(second)).isEqualTo(Files.readAllBytes(first));
    }
  }

  @ParameterizedTest
  @EnumSource
  void export_afterEverythingOfAMergedPersonWasErased_canBeImported(TestDatabase database) {
    Path file = folder.resolve("club.zip");
    ClubContents contents;
    try (ClubStore store = ClubStore.open(database.fresh())) {
      Examples.fill(store);
      store.players().save(ROONA);
      store.players().merge(Examples.WALK_IN.id(), ROONA.id());
      store.players().erase(ROONA.id(), ErasedGames.REMOVE);
      contents = store.contents();
      ClubExport.write(store, file);
    }
    try (ClubStore store = ClubStore.open(database.fresh())) {
      assertThat(ClubImport.read(file, store, ImportInto.EMPTY_CLUB))
          .isInstanceOf(ImportResult.Done.class);
      assertThat(store.contents()).isEqualTo(contents);
    }
  }

  @ParameterizedTest
  @EnumSource
  void import_intoAClubThatIsNotEmpty_isRefusedUnlessMerged(TestDatabase database) {
    Path file = folder.resolve("club.zip");
    try (ClubStore store = ClubStore.open(database.fresh())) {
      Examples.fill(store);
      ClubExport.write(store, file);
      ClubContents exported = store.contents();
      store.players().save(Examples.player("p-marlo", "Renamed", Standing.ARCHIVED));
      store.players().save(ROONA);
      ClubContents before = store.contents();

      ImportResult refused = ClubImport.read(file, store, ImportInto.EMPTY_CLUB);
      assertThat(refused).isInstanceOf(ImportResult.Refused.class);
      assertThat(((ImportResult.Refused) refused).problems().get(0).toString())
          .contains("already holds players");
      assertThat(store.contents()).isEqualTo(before);

      assertThat(ClubImport.read(file, store, ImportInto.MERGED_BY_ID))
          .isInstanceOf(ImportResult.Done.class);
      assertThat(store.players().all()).contains(Examples.MARLO, ROONA).hasSize(5);
      assertThat(store.contents().events()).isEqualTo(exported.events());
      assertThat(store.contents().sessions()).isEqualTo(exported.sessions());
    }
  }

  @ParameterizedTest
  @EnumSource
  void oldExport_mergedAfterAPersonWasErased_doesNotBringThePersonBack(TestDatabase database) {
    for (ErasedGames games : ErasedGames.values()) {
      Path file = folder.resolve(games + ".zip");
      try (ClubStore store = ClubStore.open(database.fresh())) {
        Examples.fill(store);
        ClubExport.write(store, file);
        store.players().erase(Examples.IVO.id(), games);
        ClubContents before = store.contents();
        assertThat(ClubImport.read(file, store, ImportInto.MERGED_BY_ID))
            .isInstanceOf(ImportResult.Done.class);
        assertThat(store.contents()).isEqualTo(before);
      }
    }
  }

  @ParameterizedTest
  @EnumSource
  void newExport_mergedIntoAnOldClub_erasesThereToo(TestDatabase database) {
    for (ErasedGames games : ErasedGames.values()) {
      Path file = folder.resolve(games + ".zip");
      ClubContents after;
      try (ClubStore store = ClubStore.open(database.fresh())) {
        Examples.fill(store);
        store.players().erase(Examples.IVO.id(), games);
        after = store.contents();
        ClubExport.write(store, file);
      }
      try (ClubStore old = ClubStore.open(database.fresh())) {
        Examples.fill(old);
        assertThat(ClubImport.read(file, old, ImportInto.MERGED_BY_ID))
            .isInstanceOf(ImportResult.Done.class);
        assertThat(old.contents()).isEqualTo(after);
      }
    }
  }

  @Test
  void export_holdsNoKeyAndNoSecret() throws IOException {
    Path file = folder.resolve("club.zip");
    String key;
    try (ClubStore store = ClubStore.open(TestDatabase.SQLITE.fresh())) {
      Examples.fill(store);
      key = store.keys().issue(rallywright.store.KeyBook.Kind.SHARE, "secret-scope", 99);
      ClubExport.write(store, file);
    }
    try (ZipFile zip = new ZipFile(file.toFile())) {
      for (var entry : zip.stream().toList()) {
        String text = new String(zip.getInputStream(entry).readAllBytes(), StandardCharsets.UTF_8);
        assertThat(text).doesNotContain("not-for-export", "secret-scope", key);
      }
    }
  }

  @Test
  void tables_readByALibrary_sayWhatWasPlayed() throws IOException {
    Path file = folder.resolve("club.zip");
    try (ClubStore store = ClubStore.open(TestDatabase.SQLITE.fresh())) {
      Examples.fill(store);
      store.players().save(Examples.player("p-sum", "=SUM(A1:A9)", Standing.ACTIVE));
      ClubExport.write(store, file);
    }
    List<CSVRecord> players = table(file, "tables/players.csv");
    assertThat(players).hasSize(5);
    assertThat(players).extracting(row -> row.get("name")).contains("'=SUM(A1:A9)");
    CSVRecord ivo =
        players.stream().filter(row -> row.get("id").equals("p-ivo")).findFirst().orElseThrow();
    assertThat(ivo.get("name")).isEqualTo(Examples.IVO.name());
    assertThat(ivo.get("notes")).isEqualTo(Examples.IVO.notes());
    assertThat(ivo.get("limits")).isEqualTo("no overheads; no lunging");
    List<CSVRecord> games = table(file, "tables/games.csv");
    assertThat(games).hasSize(2);
    // One rally of game-1 was undone, one counts; game-2 was given as 5-3.
    assertThat(games.get(0).get("rallies won by a")).isEqualTo("1");
    assertThat(games.get(0).get("rallies won by b")).isEqualTo("0");
    assertThat(games.get(0).get("final a")).isEmpty();
    assertThat(games.get(1).get("final a")).isEqualTo("5");
    assertThat(games.get(1).get("final b")).isEqualTo("3");
    assertThat(table(file, "tables/yardsticks.csv").get(0).get("hits")).isEqualTo("14");
    assertThat(table(file, "tables/events.csv")).hasSize(Examples.oneOfEach().size());
    assertThat(table(file, "tables/efforts.csv")).hasSize(2);
    assertThat(table(file, "tables/notes.csv")).hasSize(2);
  }

  @Test
  void export_overAFileThatIsThere_isRefused() throws IOException {
    Path file = Files.writeString(folder.resolve("mine.zip"), "mine");
    try (ClubStore store = ClubStore.open(TestDatabase.SQLITE.fresh())) {
      assertThatThrownBy(() -> ClubExport.write(store, file))
          .isInstanceOf(StoreProblem.class)
          .hasMessageContaining("not overwritten");
      assertThatThrownBy(() -> ClubExport.write(store, folder.resolve("no/where.zip")))
          .isInstanceOf(StoreProblem.class)
          .hasMessageContaining("could not be written");
    }
    assertThat(file).hasContent("mine");
  }

  /** A full club in which somebody was erased and a walk-in merged. */
  private static void fillAndLetGo(ClubStore store) {
    Examples.fill(store);
    store.players().save(ROONA);
    store.players().merge(Examples.WALK_IN.id(), ROONA.id());
    store.players().erase(Examples.IVO.id(), ErasedGames.KEEP);
  }

  private static List<CSVRecord> table(Path file, String name) throws IOException {
    try (ZipFile zip = new ZipFile(file.toFile());
        CSVParser parser =
            CSVParser.parse(
                zip.getInputStream(zip.getEntry(name)),
                StandardCharsets.UTF_8,
                CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get())) {
      return parser.getRecords();
    }
  }
}
