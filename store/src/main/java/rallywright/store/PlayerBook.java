package rallywright.store;

import java.util.List;
import java.util.Optional;
import rallywright.engine.club.Player;
import rallywright.engine.club.PlayerId;

/** The players of the club. */
public final class PlayerBook {

  private final Database database;
  private final StoreAddress address;

  PlayerBook(Database database, StoreAddress address) {
    this.database = database;
    this.address = address;
  }

  /**
   * All players, erased and archived ones too.
   *
   * @return the players by name
   */
  public List<Player> all() {
    return database.snapshot(() -> database.read(PlayerRows::all));
  }

  /**
   * One player.
   *
   * @param id the player's id
   * @return the player, if there is one of that id
   */
  public Optional<Player> find(PlayerId id) {
    return database.snapshot(() -> database.read(client -> PlayerRows.find(client, id)));
  }

  /**
   * Adds a player or replaces the one of that id.
   *
   * @param player the player
   * @throws StoreProblem if a player of that id was erased or merged into another
   */
  public void save(Player player) {
    saveAll(List.of(player));
  }

  /**
   * Adds or replaces several players, all or none.
   *
   * @param players the players
   * @throws StoreProblem if one of them was erased or merged into another
   */
  public void saveAll(List<Player> players) {
    database.change(
        client -> {
          Forgotten forgotten = Forgotten.of(client);
          for (Player player : players) {
            forgotten.refuseReturn(client, player);
            PlayerRows.put(client, player);
          }
          return players.size();
        });
  }

  /**
   * Erases a person for good. Name, level, hand, notes, limits and ratings of effort are
   * overwritten in the file; groups no longer name the player.
   *
   * <p>Notes of sessions about the player go; in notes on others, on drills and on sessions of the
   * player the name as it is now is replaced.
   *
   * <p>Not reached: backups and exports made earlier; what the coach wrote in free texts of their
   * own, such as the name of a session, the notes on another player or a name in another spelling;
   * and on PostgreSQL the server's own log and copies, which its keeper must see to.
   *
   * @param id who is erased
   * @param games whether the results stay, played by a nameless opponent, or go too
   * @throws StoreProblem if there is no such player
   */
  public void erase(PlayerId id, ErasedGames games) {
    database.change(
        client -> {
          new Erasure(client).erase(id, games);
          return id;
        });
    if (address instanceof StoreAddress.InFolder) {
      database.outsideTransactions("vacuum");
      database.outsideTransactions("pragma wal_checkpoint(truncate)");
    } else {
      database.outsideTransactions("vacuum");
    }
  }

  /**
   * Makes a walk-in one with a player of the club: everywhere the player stands in the walk-in's
   * place, also in events that a phone sends later. Limits are joined and notes put after the
   * player's own; name, level and hand stay the player's.
   *
   * @param walkIn the walk-in, who is then no longer in the list
   * @param into the player
   * @throws StoreProblem if one of them is missing, the first is no walk-in, the second was erased,
   *     or both play in one game; nothing is then changed
   */
  public void merge(PlayerId walkIn, PlayerId into) {
    database.change(
        client -> {
          new WalkInMerge(client).merge(walkIn, into);
          return into;
        });
  }
}
