package rallywright.store;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import org.springframework.transaction.TransactionDefinition;

/** A database on a PostgreSQL server, for an academy with several coaches. */
final class PostgresServer {

  private static final int WRITERS = 4;
  private static final int READERS = 6;

  private PostgresServer() {}

  /** Connects and brings the tables up to date. */
  static Database open(StoreAddress.OnServer address) {
    HikariDataSource writers = pool(address, WRITERS, "writers");
    try {
      Schema.bringUpToDate(writers, "The database " + address);
      return new Database(
          writers,
          pool(address, READERS, "readers"),
          TransactionDefinition.ISOLATION_REPEATABLE_READ);
    } catch (RuntimeException problem) {
      writers.close();
      throw problem;
    }
  }

  private static HikariDataSource pool(StoreAddress.OnServer address, int size, String name) {
    HikariConfig pool = new HikariConfig();
    pool.setJdbcUrl(address.jdbcUrl());
    pool.setUsername(address.user());
    pool.setPassword(address.password());
    pool.setMaximumPoolSize(size);
    pool.setMinimumIdle(1);
    pool.setPoolName("rallywright-" + name);
    try {
      return new HikariDataSource(pool);
    } catch (RuntimeException problem) {
      throw new StoreProblem(
          "The database "
              + address
              + " does not answer: "
              + Database.rootMessage(problem)
              + ". Maybe the server is not running, or the name or password is wrong.",
          problem);
    }
  }
}
