package rallywright.store;

import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Clock;
import java.util.function.Supplier;

/**
 * The club's data: a book for each kind of thing, over one file or one PostgreSQL database.
 *
 * <p>Every change is one transaction: done whole or not at all, and on the disk when the call
 * returns. Safe for use by many threads.
 */
public final class ClubStore implements AutoCloseable {

  private final StoreAddress address;
  private final Database database;
  private final Clock clock;
  private final SecureRandom random = new SecureRandom();

  private ClubStore(StoreAddress address, Database database, Clock clock) {
    this.address = address;
    this.database = database;
    this.clock = clock;
  }

  /**
   * Opens the club; makes it where nothing is there yet.
   *
   * @param address where
   * @return the open club
   * @throws StoreProblem if it is damaged, made by a newer program or not a club at all; it is then
   *     left as it was
   */
  public static ClubStore open(StoreAddress address) {
    return open(address, Clock.systemUTC());
  }

  /**
   * Opens the club with a clock of one's own.
   *
   * @param address where
   * @param clock gives the time of new ids and of revoked keys
   * @return the open club
   * @throws StoreProblem as above
   */
  public static ClubStore open(StoreAddress address, Clock clock) {
    Database database =
        address instanceof StoreAddress.OnServer server
            ? PostgresServer.open(server)
            : SqliteFile.open(((StoreAddress.InFolder) address).folder());
    return new ClubStore(address, database, clock);
  }

  /**
   * The players.
   *
   * @return their book
   */
  public PlayerBook players() {
    return new PlayerBook(database, address);
  }

  /**
   * The groups.
   *
   * @return their book
   */
  public GroupBook groups() {
    return new GroupBook(database);
  }

  /**
   * The venues.
   *
   * @return their book
   */
  public VenueBook venues() {
    return new VenueBook(database);
  }

  /**
   * The sessions and the templates of plans.
   *
   * @return their book
   */
  public SessionBook sessions() {
    return new SessionBook(database);
  }

  /**
   * The days of games with rotating partners.
   *
   * @return their book
   */
  public DayBook days() {
    return new DayBook(database);
  }

  /**
   * What happened on court.
   *
   * @return the log
   */
  public EventLog events() {
    return new EventLog(database);
  }

  /**
   * The keys that open pages without an account.
   *
   * @return their book
   */
  public KeyBook keys() {
    return new KeyBook(database, random, clock);
  }

  /**
   * Small settings by name.
   *
   * @return the settings
   */
  public Settings settings() {
    return new Settings(database);
  }

  /**
   * The coach's own drills.
   *
   * @return their book
   */
  public CustomDrills customDrills() {
    return new CustomDrills(database);
  }

  /**
   * A new id, unique and in order of time.
   *
   * @return a text of 36 characters, for players, groups, venues, sessions and events of the desk
   */
  public String freshId() {
    return FreshId.at(clock.millis(), random);
  }

  /**
   * Does several changes as one: all of them or, where the work throws, none.
   *
   * @param work uses the books of this store, on the calling thread
   * @param <T> what it answers
   * @return the answer
   */
  public <T> T inOneStep(Supplier<T> work) {
    return database.change(client -> work.get());
  }

  /**
   * Lets several reads see one state of the club, whatever is changed meanwhile.
   *
   * @param work reads from the books of this store, on the calling thread
   * @param <T> what it answers
   * @return the answer
   */
  public <T> T atOneMoment(Supplier<T> work) {
    return database.snapshot(work);
  }

  /**
   * Whether this thread is inside a change of {@link #inOneStep}. What is read there may never be
   * kept, and another change may get the same {@link #revision}.
   *
   * @return true inside a change
   */
  public boolean isChanging() {
    return database.isChanging();
  }

  /**
   * How many changes were made so far; equal numbers mean an unchanged club, if they were both read
   * outside of a change.
   *
   * @return the number, growing with every change
   */
  public long revision() {
    return database.read(
        client -> client.sql("select revision from club").query(Long.class).single());
  }

  /**
   * Copies the club into a new file while others go on working. The copy is one whole file: put in
   * place of {@value StoreAddress#FILE_NAME} it is the club as it was at this moment.
   *
   * @param target the new file; its folder must exist
   * @throws StoreProblem if the file exists already, cannot be written, or the club is kept on a
   *     server, whose own tools make backups
   */
  public void backup(Path target) {
    if (address instanceof StoreAddress.InFolder folder) {
      SqliteFile.backup(folder.folder(), target);
    } else {
      throw new StoreProblem(
          "The club is kept on a server ("
              + address
              + "), which is backed up with the server's own tool, pg_dump. Maybe an export is"
              + " enough: rallywright export.");
    }
  }

  /**
   * Everything that the club holds, as it is at one moment.
   *
   * @return the contents
   */
  public ClubContents contents() {
    return new ContentsRows(this, database).all();
  }

  /**
   * Whether nothing was entered yet; settings do not count.
   *
   * @return true for a fresh club
   */
  public boolean isEmpty() {
    return new ContentsRows(this, database).isEmpty();
  }

  /**
   * Takes in everything of another club as one change. What has the same id is replaced; events are
   * added where they are new. Whoever was erased on either side is erased.
   *
   * @param contents what to take in
   * @throws StoreProblem if it does not fit together; nothing is then changed
   */
  public void take(ClubContents contents) {
    new ContentsRows(this, database).take(contents);
  }

  /** What the writing connection of a file answers to a pragma. */
  String setting(String pragma) {
    return database.onWriter(client -> client.sql("pragma " + pragma).query(String.class).single());
  }

  @Override
  public void close() {
    database.close();
  }
}
