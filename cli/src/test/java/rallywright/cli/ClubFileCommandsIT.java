package rallywright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import rallywright.engine.club.AgeGroup;
import rallywright.engine.club.Hand;
import rallywright.engine.club.Level;
import rallywright.engine.club.Player;
import rallywright.engine.club.PlayerId;
import rallywright.engine.club.Standing;
import rallywright.store.ClubStore;
import rallywright.store.StoreAddress;

class ClubFileCommandsIT {

  private static final List<Player> PLAYERS =
      List.of(player("p-1", "Marlo Quint"), player("p-2", "Tessa Orrin"));

  @TempDir private Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @BeforeEach
  void makeAClub() {
    try (ClubStore store = ClubStore.open(StoreAddress.file(folder.resolve("club")))) {
      store.players().saveAll(PLAYERS);
    }
  }

  @Test
  void export_importedElsewhere_isTheClub() {
    assertThat(run("export", "club.zip", "--data", "club")).isZero();
    assertThat(run("import", "club.zip", "--data", "other")).isZero();
    assertThat(out.toString()).contains("Export written", "Imported: 2 players, 0 sessions");
    assertThat(err.toString()).isEmpty();
    assertThat(playersIn("other")).isEqualTo(PLAYERS);
  }

  @Test
  void backup_whileTheClubIsOpen_isWritten() throws IOException {
    try (ClubStore store = ClubStore.open(StoreAddress.file(folder.resolve("club")))) {
      assertThat(run("backup", "copy.db", "--data", "club")).isZero();
      assertThat(store.players().all()).isEqualTo(PLAYERS);
    }
    Files.createDirectory(folder.resolve("restored"));
    Files.copy(folder.resolve("copy.db"), folder.resolve("restored/rallywright.db"));
    assertThat(playersIn("restored")).isEqualTo(PLAYERS);
  }

  @Test
  void fileThatIsThere_isNotOverwritten() throws IOException {
    Files.writeString(folder.resolve("mine"), "mine");
    for (String command : List.of("backup", "export")) {
      assertThat(run(command, "mine", "--data", "club")).isEqualTo(2);
      assertOneLine("mine is there already and is not overwritten. Choose another name");
    }
    assertThat(folder.resolve("mine")).hasContent("mine");
  }

  @Test
  void folderWithoutClub_isNotMadeByBackupOrExport() {
    for (String command : List.of("backup", "export")) {
      assertThat(run(command, "new.zip", "--data", "mistyped")).isEqualTo(2);
      assertOneLine("holds no club (rallywright.db). Choose the folder with --data.");
    }
    assertThat(folder.resolve("mistyped")).doesNotExist();
  }

  @Test
  void folderOfTheNewFile_mustBeThere() {
    assertThat(run("backup", "no/where.db", "--data", "club")).isEqualTo(2);
    assertOneLine("does not exist. Make it first, or choose another.");
  }

  @Test
  void import_withoutTheFile_saysSo() {
    assertThat(run("import", "none.zip", "--data", "other")).isEqualTo(2);
    assertOneLine("There is no file");
    assertThat(folder.resolve("other")).doesNotExist();
  }

  @Test
  void import_intoAFullClub_isRefusedUnlessMerged() {
    run("export", "club.zip", "--data", "club");
    assertThat(run("import", "club.zip", "--data", "club")).isEqualTo(2);
    assertThat(err.toString()).contains("already holds players", "--merge", "Nothing was stored");
    assertThat(run("import", "club.zip", "--data", "club", "--merge")).isZero();
    assertThat(playersIn("club")).isEqualTo(PLAYERS);
  }

  @Test
  void import_withWrongLines_listsEachAndStoresNothing() throws IOException {
    run("export", "club.zip", "--data", "club");
    spoil(folder.resolve("club.zip"), folder.resolve("bad.zip"));
    assertThat(run("import", "bad.zip", "--data", "other")).isEqualTo(2);
    assertThat(err.toString().lines())
        .satisfiesExactly(
            line -> assertThat(line).startsWith("data/players.jsonl, line 1, level: The level (9"),
            line -> assertThat(line).startsWith("data/players.jsonl, line 2, level: The level (9"),
            line ->
                assertThat(line)
                    .isEqualTo("Nothing was stored: 2 problems to be put right first."));
    assertThat(playersIn("other")).isEmpty();
  }

  @Test
  void foreignFile_isAFailureInOneLine() throws IOException {
    Files.createDirectory(folder.resolve("foreign"));
    Files.writeString(folder.resolve("foreign/rallywright.db"), "not a club at all");
    assertThat(run("backup", "copy.db", "--data", "foreign")).isEqualTo(1);
    assertOneLine("is not a club of Rallywright");
  }

  @Test
  void commandWithoutFile_saysWhatIsMissing() {
    for (String command : List.of("backup", "export", "import")) {
      assertThat(run(command)).isEqualTo(2);
      assertOneLine("FILE");
    }
  }

  private void assertOneLine(String text) {
    assertThat(err.toString().lines()).singleElement().asString().contains(text);
    err.getBuffer().setLength(0);
  }

  /** Runs a command; names of files and folders lie in the test's folder. */
  private int run(String command, String... arguments) {
    String[] line = new String[arguments.length + 1];
    line[0] = command;
    for (int at = 0; at < arguments.length; at++) {
      boolean option = arguments[at].startsWith("--");
      line[at + 1] = option ? arguments[at] : folder.resolve(arguments[at]).toString();
    }
    CommandLine program = Rallywright.commandLine();
    program.setOut(new PrintWriter(out, true)).setErr(new PrintWriter(err, true));
    return program.execute(line);
  }

  private List<Player> playersIn(String name) {
    try (ClubStore store = ClubStore.open(StoreAddress.file(folder.resolve(name)))) {
      return store.players().all();
    }
  }

  private static void spoil(Path right, Path wrong) throws IOException {
    try (ZipFile zip = new ZipFile(right.toFile());
        ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(wrong))) {
      for (ZipEntry entry : zip.stream().toList()) {
        String text = new String(zip.getInputStream(entry).readAllBytes(), StandardCharsets.UTF_8);
        out.putNextEntry(new ZipEntry(entry.getName()));
        out.write(text.replace("\"level\":3.5", "\"level\":9").getBytes(StandardCharsets.UTF_8));
        out.closeEntry();
      }
    }
  }

  private static Player player(String id, String name) {
    return new Player(
        new PlayerId(id),
        name,
        new Level(3.5),
        Hand.RIGHT,
        Set.of(),
        "",
        AgeGroup.ADULT,
        Standing.ACTIVE);
  }
}
