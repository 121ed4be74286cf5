package rallywright.store.archive;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rallywright.store.ClubContents;
import rallywright.store.ClubStore;
import rallywright.store.ErasedGames;
import rallywright.store.Examples;
import rallywright.store.TestDatabase;

/** A right export is made wrong in one place at a time; each place is named, nothing is stored. */
class BadImportIT {

  @TempDir private static Path folder;

  private static final Map<String, String> RIGHT = new LinkedHashMap<>();
  private static final List<ClubStore> STORES = new ArrayList<>();

  @BeforeAll
  static void exportAClub() throws IOException {
    Path file = folder.resolve("right.zip");
    try (ClubStore store = ClubStore.open(TestDatabase.SQLITE.fresh())) {
      Examples.fill(store);
      var roona = Examples.player("p-roona", "Roona Vell", rallywright.engine.club.Standing.ACTIVE);
      store.players().save(roona);
      store.players().merge(Examples.WALK_IN.id(), roona.id());
      store.players().erase(Examples.IVO.id(), ErasedGames.KEEP);
      ClubExport.write(store, file);
    }
    try (ZipFile zip = new ZipFile(file.toFile())) {
      for (var entry : zip.stream().toList()) {
        RIGHT.put(
            entry.getName(),
            new String(zip.getInputStream(entry).readAllBytes(), StandardCharsets.UTF_8));
      }
    }
    for (TestDatabase database : TestDatabase.values()) {
      STORES.add(ClubStore.open(database.fresh()));
    }
  }

  @AfterAll
  static void close() {
    STORES.forEach(ClubStore::close);
  }

  @Test
  void rightExport_packedAgain_isTaken() throws IOException {
    Path file = pack(RIGHT);
    try (ClubStore store = ClubStore.open(TestDatabase.SQLITE.fresh())) {
      assertThat(ClubImport.read(file, store, ImportInto.EMPTY_CLUB))
          .isInstanceOf(ImportResult.Done.class);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "players   | \"level\":3.25       | \"level\":35          | 2 level | 1.0 to 7.0",
        "players   | \"level\":3.25       | \"level\":\"good\"    | 2 level | a number",
        "players   | \"hand\":\"RIGHT\"   | \"hand\":\"THIRD\"    | 1 hand | LEFT, BOTH",
        "players   | \"name\":\"Marlo Quint\" | \"name\":\" \"    | 2  | 1 to 80",
        "players   | \"id\":\"p-marlo\"   | \"id\":\"p-tessa\"    | 4 id | line 2",
        "players   | \"id\":\"p-marlo\",  | ``                    | 2 id | missing",
        "players   | {\"v\":1,\"id\":\"p-marlo\" | {\"v\":9,\"id\":\"p-marlo\" | 2 v | newer",
        "players   | \"notes\":\"\"       | \"notes\":\"\",\"age\":4 | 1 age | not known",
        "players   | \"notes\":\"\"       | \"notes\":            | 1 character | not JSON",
        "groups    | \"members\":[\"p-marlo\" | \"members\":[\"p-none\" | 1 members | p-none",
        "venues    | \"courts\":3         | \"courts\":0          | 1  | 1 to 40",
        "venues    | \"courts\":3         | \"courts\":2.5        | 1 courts | a whole",
        "sessions  | 2026-03-02           | 2026-02-30            | 1 date | FEBRUARY",
        "sessions  | \"18:30\"            | \"half past six\"     | 1 start | half past",
        "sessions  | \"venue\":\"v-hall\" | \"venue\":\"v-none\"  | 1 venue | v-none",
        "sessions  | \"group\":\"g-eve\"  | \"group\":\"g-none\"  | 1 group | g-none",
        "sessions  | \"minutes\":60       | \"minutes\":6         | 1 plan | 10 to 480",
        "sessions  | \"drill\":\"drop-game\" | \"drill\":\"Drop!\" | 1 plan.blocks[1].drill |"
            + " hyphens",
        "sessions  | \"players\":[\"p-marlo\"] | \"players\":[\"p-none\"] | 1 plan | p-none",
        "templates | \"name\":\"Soft hour\" | \"name\":\"\"       | 1 name | 1 to 80",
        "events    | \"type\":\"rally\"   | \"type\":\"hologram\" | 3 type | newer",
        "events    | \"id\":\"e-03\"      | \"id\":\"e-02\"       | 3 id | line 2",
        "events    | \"session\":\"s-monday\" | \"session\":\"s-none\" | 1 session | s-none",
        "events    | \"a\":5,\"b\":3      | \"a\":-5,\"b\":3      | 7  | below 0",
        "events    | \"hits\":14          | \"hits\":34           | 8  | 34 of 20",
        "events    | \"rating\":4         | \"rating\":44         | 10  | 0 to 10",
        "settings  | \"name\":\"units\"   | \"name\":\"secret.x\" | 1 name | a secret",
        "drills    | \"key\":\"own-drill\" | \"key\":\"Own Drill\" | 1 key | hyphens",
        "forgotten | \"kind\":\"event\"   | \"kind\":\"crime\"    | 1  | crime",
        "merged    | \"into\":\"p-roona\" | \"into\":\"p-none\"   | 1 into | p-none"
      })
  void wrongLine_isNamedWithItsPlace_andNothingIsStored(
      String file, String right, String wrong, String place, String reason) throws IOException {
    String name = "data/" + file + ".jsonl";
    Map<String, String> files = new LinkedHashMap<>(RIGHT);
    String changed = replaceFirst(RIGHT.get(name), right, wrong == null ? "" : wrong);
    assertThat(changed).as("the right text is there").isNotEqualTo(RIGHT.get(name));
    files.put(name, changed);
    assertThat(refusedEverywhere(pack(files)))
        .anySatisfy(
            problem -> {
              assertThat(problem.file()).isEqualTo(name);
              assertThat(problem.line() + " " + problem.column()).startsWith(place);
              assertThat(problem.reason()).contains(reason);
            });
  }

  @Test
  void severalWrongLines_areAllListedInOrder() throws IOException {
    Map<String, String> files = new LinkedHashMap<>(RIGHT);
    files.computeIfPresent(
        "data/players.jsonl",
        (name, text) -> text.replace("\"level\":3.25", "\"level\":0").replace("RIGHT", "FOOT"));
    files.computeIfPresent(
        "data/events.jsonl", (name, text) -> text.replace("\"winner\":\"A\"", "\"winner\":\"Z\""));
    List<ImportProblem> problems = refusedEverywhere(pack(files));
    assertThat(problems)
        .extracting(problem -> problem.file() + " " + problem.line())
        .contains(
            "data/players.jsonl 1",
            "data/players.jsonl 2",
            "data/players.jsonl 3",
            "data/players.jsonl 4",
            "data/events.jsonl 3");
    assertThat(problems.get(0).toString()).startsWith("data/players.jsonl, line 1, ");
  }

  @ParameterizedTest
  @ValueSource(strings = {"club.json", "data/events.jsonl", "data/merged.jsonl"})
  void missingFile_isNamed(String name) throws IOException {
    Map<String, String> files = new LinkedHashMap<>(RIGHT);
    files.remove(name);
    assertThat(refusedEverywhere(pack(files)))
        .anySatisfy(
            problem ->
                assertThat(problem.toString()).startsWith(name).contains("This file is missing"));
  }

  @Test
  void strangeFile_isNamed() throws IOException {
    Map<String, String> files = new LinkedHashMap<>(RIGHT);
    files.put("data/weather.jsonl", "");
    assertThat(refusedEverywhere(pack(files)).get(0).toString())
        .contains("data/weather.jsonl", "does not belong");
  }

  @Test
  void newerArchive_isRefused() throws IOException {
    Map<String, String> files = new LinkedHashMap<>(RIGHT);
    files.put("club.json", "{\"v\":2,\"of\":\"rallywright\"}\n");
    assertThat(refusedEverywhere(pack(files)).get(0).toString()).contains("club.json", "newer");
  }

  @Test
  void lineThatIsNoText_isNamed() throws IOException {
    Map<String, String> files = new LinkedHashMap<>(RIGHT);
    Path file = folder.resolve("latin.zip");
    files.computeIfPresent("data/venues.jsonl", (name, text) -> text.replace("Old", "\u00d6ld"));
    pack(files, file, "data/venues.jsonl");
    assertThat(refusedEverywhere(file).get(0).toString())
        .contains("data/venues.jsonl, line 1", "not UTF-8");
  }

  @Test
  void fileThatIsNoArchiveOrCutShort_isRefused() throws IOException {
    Path text = Files.writeString(folder.resolve("text.zip"), "name,level\n");
    assertThat(refusedEverywhere(text).get(0).toString()).contains("not a whole export");
    byte[] whole = Files.readAllBytes(pack(RIGHT));
    Path cut = folder.resolve("cut.zip");
    Files.write(cut, java.util.Arrays.copyOf(whole, whole.length / 2));
    assertThat(refusedEverywhere(cut).get(0).toString()).contains("not a whole export");
  }

  /** The problems, after it was seen that no club changed: not by either way of importing. */
  private static List<ImportProblem> refusedEverywhere(Path file) {
    List<ImportProblem> problems = List.of();
    for (ClubStore store : STORES) {
      ClubContents before = store.contents();
      long revision = store.revision();
      for (ImportInto into : ImportInto.values()) {
        ImportResult result = ClubImport.read(file, store, into);
        assertThat(result).isInstanceOf(ImportResult.Refused.class);
        problems = ((ImportResult.Refused) result).problems();
        assertThat(problems).isNotEmpty();
      }
      assertThat(store.contents()).isEqualTo(before);
      assertThat(store.revision()).isEqualTo(revision);
    }
    return problems;
  }

  private static String replaceFirst(String text, String right, String wrong) {
    int at = text.indexOf(right);
    return at < 0 ? text : text.substring(0, at) + wrong + text.substring(at + right.length());
  }

  private static Path pack(Map<String, String> files) throws IOException {
    Path file = Files.createTempFile(folder, "packed", ".zip");
    pack(files, file, "none");
    return file;
  }

  /** Packs the files, one of them in a coding that is not UTF-8. */
  private static void pack(Map<String, String> files, Path file, String latin) throws IOException {
    try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
      for (Map.Entry<String, String> each : files.entrySet()) {
        zip.putNextEntry(new ZipEntry(each.getKey()));
        zip.write(
            each.getValue()
                .getBytes(
                    each.getKey().equals(latin)
                        ? StandardCharsets.ISO_8859_1
                        : StandardCharsets.UTF_8));
        zip.closeEntry();
      }
    }
  }
}
