package rallywright.web.oncourt;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.springframework.stereotype.Component;
import rallywright.engine.club.AgeGroup;
import rallywright.engine.club.Hand;
import rallywright.engine.club.Player;
import rallywright.engine.club.PlayerId;
import rallywright.engine.club.Standing;
import rallywright.engine.plan.SessionWish;
import rallywright.engine.session.Session;
import rallywright.engine.session.SessionId;
import rallywright.store.ClubStore;
import rallywright.store.StoreProblem;
import rallywright.web.page.FormReader;

/**
 * Somebody turns up while a session is planned or runs: a name is enough. The person counts as
 * having come and sits out until games are added or somebody changes places.
 */
@Component
public final class Arrivals {

  private final ClubStore store;

  Arrivals(ClubStore store) {
    this.store = store;
  }

  /** Who typed the name. */
  public enum Asker {
    /** The coach: the name of somebody on the club's list means that person. */
    COACH,
    /** A phone with a key: it must not learn who is on the list, so each name is a walk-in. */
    PHONE
  }

  /**
   * Adds somebody by name.
   *
   * @param session the session
   * @param id the id that a new walk-in gets; the same id again changes nothing
   * @param typed the name
   * @param asker who typed it
   * @return why nobody was added, or empty
   */
  public Optional<String> add(SessionId session, PlayerId id, String typed, Asker asker) {
    String name = typed.strip();
    Optional<String> unreadable = refusalOf(name);
    if (unreadable.isPresent()) {
      return unreadable;
    }
    try {
      return store.inOneStep(() -> added(session, id, name, asker));
    } catch (StoreProblem refused) {
      return Optional.of(String.valueOf(refused.getMessage()));
    }
  }

  private static Optional<String> refusalOf(String name) {
    if (name.isEmpty() || name.length() > Player.LONGEST_NAME) {
      return Optional.of(
          name.isEmpty()
              ? "The name is empty; type at least a first name."
              : "The name has %d characters; at most %d are allowed. Maybe shorten it."
                  .formatted(name.length(), Player.LONGEST_NAME));
    }
    return name.chars().anyMatch(Character::isISOControl)
        ? Optional.of("The name holds a character that cannot be shown. Maybe type it anew.")
        : Optional.empty();
  }

  private Optional<String> added(SessionId id, PlayerId fresh, String name, Asker asker) {
    Session session = store.sessions().find(id).orElseThrow(() -> CourtAccess.notHere(id.value()));
    if (session.plan().present().contains(fresh)) {
      return Optional.empty();
    }
    if (session.plan().present().size() >= SessionWish.MOST_PLAYERS) {
      return Optional.of(
          "%d are there already, as many as one session takes. Maybe plan a second one."
              .formatted(SessionWish.MOST_PLAYERS));
    }
    if (isThere(session, name)) {
      return Optional.of(
          "\"%s\" is there already. Maybe add a letter of the family name."
              .formatted(FormReader.echo(name)));
    }
    Optional<Player> known = asker == Asker.COACH ? listed(name) : Optional.empty();
    if (known.isPresent() && known.get().standing() == Standing.ARCHIVED) {
      return Optional.of(
          "%s is archived. Maybe take the player back on the list first, under Players."
              .formatted(known.get().name()));
    }
    Player player = known.orElseGet(() -> walkIn(fresh, name));
    if (known.isEmpty()) {
      store.players().save(player);
    }
    store.sessions().save(session.withPlan(session.plan().withArrival(player.id())));
    return Optional.empty();
  }

  private boolean isThere(Session session, String name) {
    return session.plan().present().stream()
        .flatMap(each -> store.players().find(each).stream())
        .anyMatch(each -> folded(each.name()).equals(folded(name)));
  }

  private Optional<Player> listed(String name) {
    return store.players().all().stream()
        .filter(each -> each.standing() != Standing.ERASED)
        .filter(each -> folded(each.name()).equals(folded(name)))
        .findFirst();
  }

  private static String folded(String name) {
    return name.strip().toLowerCase(Locale.ROOT);
  }

  private static Player walkIn(PlayerId id, String name) {
    return new Player(id, name, null, Hand.RIGHT, Set.of(), "", AgeGroup.ADULT, Standing.WALK_IN);
  }
}
