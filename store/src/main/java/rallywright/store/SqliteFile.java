package rallywright.store;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.sql.SQLException;
import java.util.Arrays;
import org.springframework.transaction.TransactionDefinition;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteDataSource;

/**
 * One SQLite file.
 *
 * <p>Settings and why: write-ahead log, so that readers go on while a rally is stored; synchronous
 * FULL, so that what was acknowledged survives a lost plug; transactions begin IMMEDIATE and there
 * is one writing connection, because several writers wait on one another; secure_delete, so that
 * what was erased is overwritten.
 */
final class SqliteFile {

  /** The name of the one file in the club's folder. */
  static final String NAME = StoreAddress.FILE_NAME;

  private static final int BUSY_MILLIS = 10_000;
  private static final int READERS = 4;
  private static final byte[] HEADER = "SQLite format 3\0".getBytes(StandardCharsets.US_ASCII);

  private SqliteFile() {}

  /** Opens the file, made where it is missing, after it was found whole and of a known version. */
  static Database open(Path folder) {
    Path file = folder.resolve(NAME);
    try {
      Files.createDirectories(folder);
      if (!Files.isWritable(folder) || (Files.exists(file) && !Files.isWritable(file))) {
        throw readOnly(folder);
      }
      if (Files.exists(file) && Files.size(file) > 0) {
        check(file);
      }
    } catch (IOException problem) {
      throw new StoreProblem(
          "The folder "
              + folder
              + " cannot be used: "
              + problem.getMessage()
              + ". Maybe it may not be written; choose another with --data.",
          problem);
    }
    HikariDataSource writers = pool(file, writerSettings(), 1);
    try {
      Schema.bringUpToDate(writers, "The file " + file);
      return new Database(
          writers, pool(file, readerSettings(), READERS), TransactionDefinition.ISOLATION_DEFAULT);
    } catch (RuntimeException problem) {
      writers.close();
      throw problem;
    }
  }

  /** Copies the club in a folder into a new file, whole and checked, or not at all. */
  static void backup(Path folder, Path target) {
    if (Files.exists(target)) {
      throw new StoreProblem(
          "The file "
              + target
              + " is there already and is not overwritten. Choose another name, for example with"
              + " the date in it.");
    }
    Path unfinished = target.resolveSibling(target.getFileName() + ".unfinished");
    SQLiteDataSource source = new SQLiteDataSource(readerSettings());
    source.setUrl("jdbc:sqlite:" + folder.resolve(NAME));
    try {
      Files.deleteIfExists(unfinished);
      try (var connection = source.getConnection();
          var copy = connection.prepareStatement("vacuum into ?")) {
        copy.setString(1, unfinished.toString());
        copy.execute();
      }
      check(unfinished);
      try (var written = FileChannel.open(unfinished, StandardOpenOption.WRITE)) {
        written.force(true);
      }
      Files.move(unfinished, target);
    } catch (IOException | SQLException problem) {
      throw new StoreProblem(
          "The backup "
              + target
              + " could not be written: "
              + problem.getMessage()
              + ". Maybe its folder does not exist or the disk is full.",
          problem);
    }
  }

  private static SQLiteConfig writerSettings() {
    SQLiteConfig settings = new SQLiteConfig();
    settings.setJournalMode(SQLiteConfig.JournalMode.WAL);
    settings.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
    settings.setTransactionMode(SQLiteConfig.TransactionMode.IMMEDIATE);
    settings.setBusyTimeout(BUSY_MILLIS);
    settings.enforceForeignKeys(true);
    return settings;
  }

  private static SQLiteConfig readerSettings() {
    SQLiteConfig settings = new SQLiteConfig();
    settings.setReadOnly(true);
    settings.setBusyTimeout(BUSY_MILLIS);
    return settings;
  }

  private static HikariDataSource pool(Path file, SQLiteConfig settings, int size) {
    SQLiteDataSource source = new SQLiteDataSource(settings);
    source.setUrl("jdbc:sqlite:" + file);
    HikariConfig pool = new HikariConfig();
    pool.setDataSource(source);
    pool.setMaximumPoolSize(size);
    pool.setMinimumIdle(1);
    pool.setReadOnly(size > 1);
    pool.setMaxLifetime(0);
    pool.setConnectionInitSql("pragma secure_delete = on");
    pool.setPoolName("rallywright-" + (size == 1 ? "writer" : "readers"));
    return new HikariDataSource(pool);
  }

  /** Refuses, before anything is opened for writing, a file that is not a whole club file. */
  private static void check(Path file) throws IOException {
    try (var start = Files.newInputStream(file)) {
      if (!Arrays.equals(start.readNBytes(HEADER.length), HEADER)) {
        throw foreign(file, "it is not an SQLite file");
      }
    }
    SQLiteDataSource source = new SQLiteDataSource(readerSettings());
    source.setUrl("jdbc:sqlite:" + file);
    try (var connection = source.getConnection();
        var statement = connection.createStatement()) {
      try (var answer = statement.executeQuery("pragma quick_check(1)")) {
        String found = answer.next() ? answer.getString(1) : "no answer";
        if (!"ok".equals(found)) {
          throw damaged(file, found, null);
        }
      }
      String tables =
          "select count(*), count(case when name = '"
              + Schema.HISTORY
              + "' then 1 end) from sqlite_master where type = 'table'";
      try (var answer = statement.executeQuery(tables)) {
        if (answer.next() && answer.getInt(1) > 0 && answer.getInt(2) == 0) {
          throw foreign(file, "it belongs to another program");
        }
      }
    } catch (SQLException problem) {
      throw damaged(file, String.valueOf(problem.getMessage()), problem);
    }
  }

  private static StoreProblem readOnly(Path folder) {
    return new StoreProblem(
        "The folder "
            + folder
            + " or the club in it may only be read, so no score could be kept; nothing was"
            + " changed. Make it writable, or choose another with --data.");
  }

  private static StoreProblem foreign(Path file, String seen) {
    return new StoreProblem(
        "The file "
            + file
            + " is not a club of Rallywright: "
            + seen
            + ". It was not changed. Try another folder with --data, or move the file away.");
  }

  private static StoreProblem damaged(
      Path file, String seen, @org.jspecify.annotations.Nullable Throwable cause) {
    String message =
        "The file "
            + file
            + " is damaged: "
            + seen
            + ". It was not changed. Try the latest backup: move the damaged file away and put the"
            + " backup in its place.";
    return cause == null ? new StoreProblem(message) : new StoreProblem(message, cause);
  }
}
