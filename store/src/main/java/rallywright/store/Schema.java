package rallywright.store;

import java.util.Arrays;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;
import org.flywaydb.core.api.MigrationInfo;

/** The tables, brought up to date step by step. */
final class Schema {

  /** The table in which the steps taken are written down. */
  static final String HISTORY = "rallywright_steps";

  private Schema() {}

  /**
   * Takes the steps that are missing; refuses tables of a newer program and tables of others.
   *
   * @param source the connections
   * @param where how a message names the place, at the start of a sentence
   */
  static void bringUpToDate(DataSource source, String where) {
    Flyway flyway =
        Flyway.configure(Schema.class.getClassLoader())
            .dataSource(source)
            .locations("classpath:rallywright/store/migrations")
            .table(HISTORY)
            .loggers("slf4j")
            .load();
    try {
      refuseNewer(flyway, where);
      flyway.migrate();
    } catch (FlywayException problem) {
      throw new StoreProblem(
          where
              + " could not be brought up to date: "
              + Database.rootMessage(problem).lines().findFirst().orElse("no reason given")
              + " Maybe it belongs to another program; use an empty one.",
          problem);
    }
  }

  private static void refuseNewer(Flyway flyway, String where) {
    MigrationInfo[] steps = flyway.info().all();
    int known =
        newest(
            Arrays.stream(steps)
                .filter(step -> step.getState().isResolved())
                .toArray(MigrationInfo[]::new));
    int there = newest(flyway.info().applied());
    if (there > known) {
      throw new StoreProblem(
          where
              + " has version "
              + there
              + " of the tables, made by a newer Rallywright; this program knows versions up to "
              + known
              + ". Nothing was changed. Update Rallywright, or use a backup made before the"
              + " update.");
    }
  }

  private static int newest(MigrationInfo[] steps) {
    return Arrays.stream(steps)
        .filter(step -> step.getVersion() != null)
        .mapToInt(step -> Integer.parseInt(step.getVersion().getVersion()))
        .max()
        .orElse(0);
  }
}
