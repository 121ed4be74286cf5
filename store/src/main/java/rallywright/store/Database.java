package rallywright.store;

import com.zaxxer.hikari.HikariDataSource;
import java.util.function.Function;
import java.util.function.Supplier;
import org.springframework.dao.DataAccessException;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.DataSourceTransactionManager;
import org.springframework.transaction.TransactionException;
import org.springframework.transaction.support.TransactionSynchronizationManager;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * The open connections: those that change the club, one change after the other, and those that only
 * read. A read inside a change sees what the change has done so far.
 */
final class Database implements AutoCloseable {

  private final HikariDataSource writers;
  private final HikariDataSource readers;
  private final JdbcClient writing;
  private final JdbcClient reading;
  private final TransactionTemplate changes;
  private final TransactionTemplate snapshots;

  /**
   * @param writers connections that change the club
   * @param readers connections that only read
   * @param snapshotIsolation the isolation at which several reads see one state
   */
  Database(HikariDataSource writers, HikariDataSource readers, int snapshotIsolation) {
    this.writers = writers;
    this.readers = readers;
    this.writing = JdbcClient.create(writers);
    this.reading = JdbcClient.create(readers);
    this.changes = new TransactionTemplate(new DataSourceTransactionManager(writers));
    this.snapshots = new TransactionTemplate(new DataSourceTransactionManager(readers));
    snapshots.setIsolationLevel(snapshotIsolation);
  }

  /** Reads; inside a change or a snapshot on the same thread, what that sees. */
  <T> T read(Function<JdbcClient, T> work) {
    JdbcClient client = isChanging() ? writing : reading;
    return translated("read", () -> work.apply(client));
  }

  /** Changes the club in one transaction; joins the one that is open on this thread. */
  <T> T change(Function<JdbcClient, T> work) {
    boolean joined = isChanging();
    return translated(
        "written",
        () ->
            changes.execute(
                status -> {
                  if (!joined) {
                    writing.sql("update club set revision = revision + 1").update();
                  }
                  return work.apply(writing);
                }));
  }

  /** Adds many rows of one statement inside a change. */
  void addAll(String sql, Iterable<Object[]> rows) {
    var list = new java.util.ArrayList<Object[]>();
    rows.forEach(list::add);
    if (!list.isEmpty()) {
      new JdbcTemplate(writers).batchUpdate(sql, list);
    }
  }

  /** Lets all reads of the work see one state of the club. */
  <T> T snapshot(Supplier<T> work) {
    if (isChanging()) {
      return work.get();
    }
    return translated("read", () -> snapshots.execute(status -> work.get()));
  }

  /** Asks a connection that may change the club, outside of any transaction. */
  <T> T onWriter(Function<JdbcClient, T> work) {
    return translated("read", () -> work.apply(writing));
  }

  /** A statement outside of any transaction, on a connection that may change the club. */
  void outsideTransactions(String sql) {
    translated(
        "written",
        () -> {
          new JdbcTemplate(writers).execute(sql);
          return sql;
        });
  }

  @Override
  public void close() {
    readers.close();
    writers.close();
  }

  /** Whether a change is open on this thread. */
  boolean isChanging() {
    return TransactionSynchronizationManager.hasResource(writers);
  }

  private static <T> T translated(String verb, Supplier<T> work) {
    try {
      return work.get();
    } catch (DataAccessException | TransactionException problem) {
      throw new StoreProblem(
          "The club's data could not be "
              + verb
              + ": "
              + rootMessage(problem)
              + ". Nothing was changed. Try again; if it stays, check that the disk is not full"
              + " and that the folder may be written.",
          problem);
    }
  }

  static String rootMessage(Throwable problem) {
    Throwable root = problem;
    while (root.getCause() != null) {
      root = root.getCause();
    }
    return root.getMessage() == null ? root.getClass().getSimpleName() : root.getMessage();
  }
}
