package rallywright.store;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.concurrent.atomic.AtomicInteger;

/** The two databases on which every store test runs. Each address it gives is a fresh club. */
public enum TestDatabase {
  SQLITE {
    @Override
    public StoreAddress fresh() {
      try {
        return StoreAddress.file(Files.createTempDirectory("rallywright-store"));
      } catch (IOException problem) {
        throw new UncheckedIOException(problem);
      }
    }
  },
  POSTGRES {
    @Override
    public StoreAddress fresh() {
      String name = "club" + COUNT.incrementAndGet();
      try (var connection = Server.RUNNING.getPostgresDatabase().getConnection();
          var statement = connection.createStatement()) {
        statement.execute("create database " + name);
        return StoreAddress.postgres(Server.RUNNING.getJdbcUrl("postgres", name), "postgres", "");
      } catch (SQLException problem) {
        throw new IllegalStateException(problem);
      }
    }
  };

  private static final AtomicInteger COUNT = new AtomicInteger();

  public abstract StoreAddress fresh();

  public static Path fileOf(StoreAddress address) {
    return ((StoreAddress.InFolder) address).folder().resolve(SqliteFile.NAME);
  }

  /** One server for all tests of a run; it stops with the run. */
  private static final class Server {
    static final EmbeddedPostgres RUNNING = start();

    private static EmbeddedPostgres start() {
      try {
        EmbeddedPostgres server = EmbeddedPostgres.start();
        Runtime.getRuntime().addShutdownHook(new Thread(() -> stop(server)));
        return server;
      } catch (IOException problem) {
        throw new UncheckedIOException(problem);
      }
    }

    private static void stop(EmbeddedPostgres server) {
      try {
        server.close();
      } catch (IOException problem) {
        throw new UncheckedIOException(problem);
      }
    }
  }
}
