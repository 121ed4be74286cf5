package rallywright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class OpeningIT {

  @ParameterizedTest
  @EnumSource
  void clubOfANewerProgram_isRefusedAndLeftAsItWas(TestDatabase database) throws Exception {
    StoreAddress address = database.fresh();
    try (ClubStore store = ClubStore.open(address)) {
      Examples.fill(store);
    }
    execute(
        address,
        "insert into "
            + Schema.HISTORY
            + " (installed_rank, version, description, type, script,"
            + " checksum, installed_by, execution_time, success) values (99, '97', 'later', 'SQL',"
            + " 'V97__later.sql', 1, 'x', 1, "
            + (database == TestDatabase.SQLITE ? "1" : "true")
            + ")");
    byte[] before = bytes(address);
    assertThatThrownBy(() -> ClubStore.open(address))
        .isInstanceOf(StoreProblem.class)
        .hasMessageContaining("version 97")
        .hasMessageContaining("up to 2")
        .hasMessageContaining("Update Rallywright");
    assertThat(bytes(address)).isEqualTo(before);
  }

  @ParameterizedTest
  @EnumSource
  void databaseOfAnotherProgram_isRefusedAndLeftAsItWas(TestDatabase database) throws Exception {
    StoreAddress address = database.fresh();
    if (address instanceof StoreAddress.InFolder folder) {
      Files.createDirectories(folder.folder());
    }
    execute(address, "create table recipes (name text)");
    byte[] before = bytes(address);
    assertThatThrownBy(() -> ClubStore.open(address))
        .isInstanceOf(StoreProblem.class)
        .hasMessageContaining("another program");
    assertThat(bytes(address)).isEqualTo(before);
  }

  @Test
  void fileOfAnotherKind_isRefusedAndLeftAsItWas() throws IOException {
    StoreAddress address = TestDatabase.SQLITE.fresh();
    Path file = TestDatabase.fileOf(address);
    Files.writeString(file, "name,level\nMarlo,3.5\n");
    assertThatThrownBy(() -> ClubStore.open(address))
        .isInstanceOf(StoreProblem.class)
        .hasMessageContaining("not an SQLite file");
    assertThat(Files.readString(file)).isEqualTo("name,level\nMarlo,3.5\n");
  }

  @Test
  void damagedFile_isRefusedAndLeftAsItWas() throws IOException {
    StoreAddress address = TestDatabase.SQLITE.fresh();
    try (ClubStore store = ClubStore.open(address)) {
      Examples.fill(store);
    }
    Path file = TestDatabase.fileOf(address);
    byte[] bytes = Files.readAllBytes(file);
    byte[] garbage = "garbage!".repeat(600).getBytes(StandardCharsets.US_ASCII);
    System.arraycopy(garbage, 0, bytes, 4096 * 3, garbage.length);
    Files.write(file, bytes);
    assertThatThrownBy(() -> ClubStore.open(address))
        .isInstanceOf(StoreProblem.class)
        .hasMessageContaining("is damaged")
        .hasMessageContaining("backup");
    assertThat(Files.readAllBytes(file)).isEqualTo(bytes);
  }

  @Test
  void fileCutShort_isRefusedAndLeftAsItWas() throws IOException {
    StoreAddress address = TestDatabase.SQLITE.fresh();
    try (ClubStore store = ClubStore.open(address)) {
      Examples.fill(store);
    }
    Path file = TestDatabase.fileOf(address);
    byte[] half = java.util.Arrays.copyOf(Files.readAllBytes(file), 4096 * 5 + 100);
    Files.write(file, half);
    assertThatThrownBy(() -> ClubStore.open(address))
        .isInstanceOf(StoreProblem.class)
        .hasMessageContaining("is damaged");
    assertThat(Files.readAllBytes(file)).isEqualTo(half);
  }

  @Test
  void folderThatIsAFile_isRefused() throws IOException {
    Path file = Files.createTempFile("rallywright", ".txt");
    assertThatThrownBy(() -> ClubStore.open(StoreAddress.file(file)))
        .isInstanceOf(StoreProblem.class)
        .hasMessageContaining("cannot be used");
  }

  @Test
  void serverThatIsNotThere_isSaid() {
    assertThatThrownBy(
            () ->
                ClubStore.open(
                    StoreAddress.postgres(
                        "jdbc:postgresql://127.0.0.1:1/none?connectTimeout=1&password=hushed",
                        "nobody",
                        "")))
        .isInstanceOf(StoreProblem.class)
        .hasMessageContaining("does not answer")
        .message()
        .doesNotContain("hushed");
    assertThatThrownBy(() -> StoreAddress.postgres("jdbc:other:thing", "nobody", ""))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("jdbc:postgresql:");
  }

  @Test
  void file_isKeptWithTheSafeSettings() throws SQLException {
    StoreAddress address = TestDatabase.SQLITE.fresh();
    try (ClubStore store = ClubStore.open(address)) {
      Examples.fill(store);
      assertThat(TestDatabase.fileOf(address).resolveSibling("rallywright.db-wal")).exists();
      assertThat(store.setting("journal_mode")).isEqualTo("wal");
      assertThat(store.setting("synchronous")).isEqualTo("2");
      assertThat(store.setting("foreign_keys")).isEqualTo("1");
      assertThat(store.setting("secure_delete")).isEqualTo("1");
    }
  }

  private static void execute(StoreAddress address, String sql) throws SQLException {
    try (Connection connection = connect(address);
        var statement = connection.createStatement()) {
      statement.execute(sql);
    }
  }

  private static Connection connect(StoreAddress address) throws SQLException {
    return address instanceof StoreAddress.OnServer server
        ? DriverManager.getConnection(server.jdbcUrl(), server.user(), server.password())
        : DriverManager.getConnection("jdbc:sqlite:" + TestDatabase.fileOf(address));
  }

  /** The bytes of the file; on a server the names and sizes of all tables. */
  private static byte[] bytes(StoreAddress address) throws Exception {
    if (address instanceof StoreAddress.InFolder) {
      return Files.readAllBytes(TestDatabase.fileOf(address));
    }
    StringBuilder tables = new StringBuilder();
    try (Connection connection = connect(address);
        var statement = connection.createStatement();
        var rows =
            statement.executeQuery(
                "select tablename, pg_relation_size(quote_ident(tablename)::regclass) from"
                    + " pg_tables where schemaname = 'public' order by tablename")) {
      while (rows.next()) {
        tables.append(rows.getString(1)).append(' ').append(rows.getLong(2)).append('\n');
      }
    }
    return tables.toString().getBytes(StandardCharsets.UTF_8);
  }
}
