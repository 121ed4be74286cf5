package rallywright.acceptance;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;

/**
 * What the database itself can do on this disk: one row a transaction, with the settings of the
 * club's file (write-ahead log, synchronous FULL) and nothing of the program around it.
 */
final class CommitLimit {

  private static final String BODY = "x".repeat(220);

  private CommitLimit() {}

  /** The times of commits one after the other for some seconds, in milliseconds. */
  static List<Double> measure(Path folder, int seconds) throws Exception {
    Path file = Files.createTempFile(folder, "limit", ".sqlite");
    List<Double> times = new ArrayList<>();
    try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
        Statement setting = connection.createStatement()) {
      setting.execute("pragma journal_mode = wal");
      setting.execute("pragma synchronous = full");
      setting.execute(
          "create table event (arrival integer primary key, id text unique, body text)");
      try (PreparedStatement add =
          connection.prepareStatement("insert into event (id, body) values (?, ?)")) {
        long end = System.nanoTime() + seconds * 1_000_000_000L;
        while (System.nanoTime() < end) {
          long before = System.nanoTime();
          add.setString(1, UUID.randomUUID().toString());
          add.setString(2, BODY);
          add.executeUpdate();
          times.add((System.nanoTime() - before) / 1e6);
        }
      }
    }
    Files.delete(file);
    return times;
  }
}
