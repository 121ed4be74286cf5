package rallywright.web.players;

import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import rallywright.engine.club.AgeGroup;
import rallywright.engine.club.Group;
import rallywright.engine.club.Hand;
import rallywright.engine.club.Level;
import rallywright.engine.club.Limit;
import rallywright.engine.club.Player;
import rallywright.engine.club.PlayerId;
import rallywright.engine.club.Standing;
import rallywright.store.ClubStore;
import rallywright.web.page.AllowedNumber;
import rallywright.web.page.Form;
import rallywright.web.page.FormReader;

/** The form for one player: what its fields are called, offer and take. */
final class PlayerForm {

  static final int LONGEST_NOTES = 2000;

  static final AllowedNumber LEVEL = new AllowedNumber("The level", 1, 7, "Maybe 3.5.");

  private final ClubStore store;

  PlayerForm(ClubStore store) {
    this.store = store;
  }

  /**
   * What was entered.
   *
   * @param player the player
   * @param groups the ids of the groups the player is to be in
   */
  record Entered(Player player, Set<String> groups) {}

  static Map<String, String> hands() {
    Map<String, String> offered = new LinkedHashMap<>();
    for (Hand hand : Hand.values()) {
      offered.put(hand.name(), hand.words());
    }
    return offered;
  }

  static Map<String, String> limits() {
    Map<String, String> offered = new LinkedHashMap<>();
    for (Limit limit : Limit.values()) {
      offered.put(limit.name(), limit.words());
    }
    return offered;
  }

  Map<String, String> groups() {
    Map<String, String> offered = new LinkedHashMap<>();
    store.groups().all().forEach(group -> offered.put(group.id().value(), group.name()));
    return offered;
  }

  Form filled(Player player) {
    Level level = player.level();
    return Form.empty()
        .with("name", player.name())
        .with("level", level == null ? "" : String.valueOf(level.value()))
        .with("hand", player.hand().name())
        .with("junior", player.ageGroup() == AgeGroup.JUNIOR ? "yes" : "")
        .with("notes", player.notes())
        .with("limits", player.limits().stream().map(Limit::name).toArray(String[]::new))
        .with(
            "groups",
            store.groups().all().stream()
                .filter(group -> group.members().contains(player.id()))
                .map(group -> group.id().value())
                .toArray(String[]::new));
  }

  /** Reads the form; the answer counts only if the reader has not failed. */
  @Nullable Entered read(FormReader in, @Nullable Player before) {
    String name = in.text("name", "The name", Player.LONGEST_NAME);
    refuseTwin(in, name, before);
    OptionalDouble level = in.number("level", LEVEL);
    Hand hand = in.choice("hand", "The hand", Hand.RIGHT);
    Set<Limit> limits = EnumSet.noneOf(Limit.class);
    limits.addAll(in.choices("limits", "The limit", Limit.class));
    String notes = in.lines("notes", "The notes", LONGEST_NOTES);
    Set<String> groups = new LinkedHashSet<>(in.all("groups"));
    if (!groups().keySet().containsAll(groups)) {
      in.problem("groups", "One of the groups is not there any more. Maybe load the page again.");
    }
    if (in.failed()) {
      return null;
    }
    return new Entered(
        new Player(
            before == null ? new PlayerId(store.freshId()) : before.id(),
            name,
            level.isPresent() ? new Level(level.getAsDouble()) : null,
            hand,
            limits,
            notes,
            in.raw("junior").equals("yes") ? AgeGroup.JUNIOR : AgeGroup.ADULT,
            before == null ? Standing.ACTIVE : before.standing()),
        groups);
  }

  /** Stores the player and the groups in one step. */
  void store(Entered entered) {
    store.inOneStep(
        () -> {
          store.players().save(entered.player());
          for (Group group : store.groups().all()) {
            Set<PlayerId> members = new LinkedHashSet<>(group.members());
            boolean changed =
                entered.groups().contains(group.id().value())
                    ? members.add(entered.player().id())
                    : members.remove(entered.player().id());
            if (changed) {
              store.groups().save(new Group(group.id(), group.name(), members));
            }
          }
          return entered;
        });
  }

  private void refuseTwin(FormReader in, String name, @Nullable Player before) {
    List<Player> others = store.players().all();
    boolean twin =
        others.stream()
            .filter(other -> before == null || !other.id().equals(before.id()))
            .filter(other -> other.standing() != Standing.ERASED)
            .anyMatch(other -> same(other.name(), name));
    if (twin) {
      in.problem(
          "name",
          "There is already a player named \""
              + FormReader.echo(name)
              + "\"; every name must differ so that a sheet can be read. Maybe add a letter of the"
              + " family name.");
    }
  }

  static boolean same(String one, String other) {
    return one.strip().toLowerCase(Locale.ROOT).equals(other.strip().toLowerCase(Locale.ROOT));
  }
}
