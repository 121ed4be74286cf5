package rallywright.web.progress;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.springframework.stereotype.Component;
import rallywright.engine.club.Group;
import rallywright.engine.club.Player;
import rallywright.engine.club.PlayerId;
import rallywright.engine.club.Standing;
import rallywright.store.ClubStore;
import rallywright.web.page.NotHere;

/** Who stands on the progress pages. */
@Component
final class ShownPlayers {

  private static final Set<Standing> SHOWN = Set.of(Standing.ACTIVE, Standing.WALK_IN);

  private final ClubStore store;

  ShownPlayers(ClubStore store) {
    this.store = store;
  }

  /** Every group. */
  List<Group> groups() {
    return store.groups().all();
  }

  /** The group of an id, if there is one. */
  Optional<Group> group(String id) {
    return groups().stream().filter(each -> each.id().value().equals(id)).findFirst();
  }

  /** The players of a group, or all of them, by name. */
  List<Player> of(Optional<Group> group) {
    return store.players().all().stream()
        .filter(player -> SHOWN.contains(player.standing()))
        .filter(player -> group.isEmpty() || group.get().members().contains(player.id()))
        .sorted(Comparator.comparing(Player::name))
        .toList();
  }

  /** The player of an id, who may have left but was not erased. */
  Player one(String id) {
    return Optional.of(id)
        .filter(text -> !text.isBlank())
        .flatMap(text -> store.players().find(new PlayerId(text)))
        .filter(player -> player.standing() != Standing.ERASED)
        .orElseThrow(
            () -> new NotHere("There is no such player. Maybe look under Progress for the name."));
  }

  /** The first name by which a player is called. */
  String firstName(PlayerId id) {
    return store
        .players()
        .find(id)
        .map(each -> each.standing() == Standing.ERASED ? "a former player" : each.firstName())
        .orElse("somebody");
  }
}
