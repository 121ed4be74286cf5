package rallywright.store;

import java.nio.file.Path;

/** Where the club's data are: one file in a folder, or a PostgreSQL server. */
public sealed interface StoreAddress {

  /** The name of the one file in the club's folder. */
  String FILE_NAME = "rallywright.db";

  /**
   * One file, {@value #FILE_NAME}, in a folder; both are made where they are missing.
   *
   * @param folder the folder
   * @return the address
   */
  static StoreAddress file(Path folder) {
    return new InFolder(folder);
  }

  /**
   * A database of its own on a PostgreSQL server.
   *
   * @param jdbcUrl the address, {@code jdbc:postgresql://host:port/database}
   * @param user who signs in
   * @param password the user's password, may be empty
   * @return the address
   * @throws IllegalArgumentException if the address is not one of PostgreSQL
   */
  static StoreAddress postgres(String jdbcUrl, String user, String password) {
    return new OnServer(jdbcUrl, user, password);
  }

  /**
   * One file in a folder.
   *
   * @param folder the folder
   */
  record InFolder(Path folder) implements StoreAddress {}

  /**
   * A database on a server.
   *
   * @param jdbcUrl the address
   * @param user who signs in
   * @param password the user's password
   */
  record OnServer(String jdbcUrl, String user, String password) implements StoreAddress {

    /** Checks that the address is one of PostgreSQL. */
    public OnServer {
      if (!jdbcUrl.startsWith("jdbc:postgresql:")) {
        throw new IllegalArgumentException(
            "The address of the database ("
                + jdbcUrl.replaceFirst("\\?.*", "")
                + ") must begin with jdbc:postgresql: . Maybe:"
                + " jdbc:postgresql://localhost:5432/rallywright");
      }
    }

    /** The address without the password, also where that stands among its parameters. */
    @Override
    public String toString() {
      return jdbcUrl.replaceFirst("\\?.*", "") + " as " + user;
    }
  }
}
