package rallywright.web.rotation;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import rallywright.catalogue.Catalogue;
import rallywright.engine.club.Player;
import rallywright.engine.club.PlayerId;
import rallywright.engine.club.Standing;
import rallywright.engine.club.Venue;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.DrillKind;
import rallywright.engine.rotation.DayStyle;
import rallywright.engine.rotation.RotationWish;
import rallywright.engine.rotation.SavedDay;
import rallywright.store.ClubStore;
import rallywright.web.page.AllowedNumber;
import rallywright.web.page.FormReader;
import rallywright.web.players.WalkIns;

/** The form for a day of games: what is offered, and what was filled in. */
final class RotationForm {

  /** What stands for doubles among the things to play; no drill has this key. */
  static final String DOUBLES = "(doubles)";

  /** The tick that asks for even matches. */
  static final String EVEN = "EVEN";

  private static final AllowedNumber MINUTES =
      new AllowedNumber("The minutes", 10, 480, "Maybe 90.");
  private static final AllowedNumber EACH =
      new AllowedNumber("The minutes of a round", 4, 60, "Maybe 12.");
  private static final AllowedNumber COURTS =
      new AllowedNumber("The number of courts", 1, Venue.MOST_COURTS, "Maybe 2.");

  private final ClubStore store;
  private final Catalogue catalogue;

  RotationForm(ClubStore store, Catalogue catalogue) {
    this.store = store;
    this.catalogue = catalogue;
  }

  /** What is asked for; walk-ins are not stored yet. */
  record Wished(
      String name,
      LocalDate date,
      DayStyle style,
      Optional<Drill> drill,
      int courts,
      int rounds,
      List<Player> players,
      List<Player> walkIns,
      Pairs pairs,
      Balance balance) {}

  /** Pairs of the form: partners in their order, and wishes. */
  record Pairs(
      List<List<PlayerId>> partners, List<List<PlayerId>> apart, List<List<PlayerId>> together) {}

  /** Whether matches are made even by what the club's scores say. */
  enum Balance {
    EVEN,
    LEFT_TO_CHANCE
  }

  /** Everybody who can be ticked, by name. */
  Map<String, String> players() {
    Map<String, String> names = new LinkedHashMap<>();
    offered().forEach(player -> names.put(player.id().value(), player.name()));
    return names;
  }

  private List<Player> offered() {
    return store.players().all().stream()
        .filter(player -> Set.of(Standing.ACTIVE, Standing.WALK_IN).contains(player.standing()))
        .sorted(Comparator.comparing(Player::name))
        .toList();
  }

  /** Games for one against one on half a court. */
  List<Drill> laneDrills() {
    return catalogue.drills().stream()
        .filter(
            drill -> drill.kind() == DrillKind.SCORED_GAME || drill.kind() == DrillKind.FULL_GAME)
        .filter(
            drill ->
                drill
                    .scored()
                    .filter(scored -> scored.layout().sides().a().stands().size() == 1)
                    .filter(scored -> scored.layout().sides().b().stands().size() == 1)
                    .isPresent())
        .toList();
  }

  @Nullable Wished read(FormReader in) {
    String name = in.text("name", "The name", SavedDay.LONGEST_NAME);
    LocalDate date = in.day("date");
    DayStyle style = in.choice("style", "The way to find partners", DayStyle.NEW_PARTNERS);
    Optional<Drill> drill = drill(in);
    int courts = in.neededWhole("courts", COURTS);
    int rounds = rounds(in);
    List<Player> walkIns = WalkIns.read(in, "walkIns", store);
    List<Player> there = new ArrayList<>(ticked(in));
    there.addAll(walkIns);
    PairLines lines = new PairLines(there);
    boolean fixed = style == DayStyle.FIXED_PAIRS || style == DayStyle.MIXED;
    List<List<PlayerId>> partners = fixed ? lines.read(in, "partners", "The partners") : List.of();
    if (fixed && !in.failed()) {
      checkPartners(in, there, partners);
    }
    List<List<PlayerId>> apart = lines.read(in, "apart", "Those who keep apart");
    List<List<PlayerId>> together = lines.read(in, "together", "Those who play together");
    if (in.failed() || date == null) {
      return null;
    }
    return new Wished(
        name,
        date,
        style,
        drill,
        courts,
        rounds,
        there,
        walkIns,
        new Pairs(partners, apart, together),
        in.ticked("even") ? Balance.EVEN : Balance.LEFT_TO_CHANCE);
  }

  private Optional<Drill> drill(FormReader in) {
    String key = in.raw("game");
    if (key.isEmpty() || key.equals(DOUBLES)) {
      return Optional.empty();
    }
    Optional<Drill> found =
        laneDrills().stream().filter(drill -> drill.key().value().equals(key)).findFirst();
    if (found.isEmpty()) {
      in.problem("game", "The game is not one of those offered. Maybe load the page again.");
    }
    return found;
  }

  private static int rounds(FormReader in) {
    int minutes = in.neededWhole("minutes", MINUTES);
    int each = in.neededWhole("each", EACH);
    int rounds = minutes / each;
    if (!in.failed() && (rounds < 1 || rounds > RotationWish.MOST_ROUNDS)) {
      in.problem(
          "each",
          "In %d minutes there is time for %d rounds of %d; 1 to %d are possible. Maybe %d a round."
              .formatted(minutes, rounds, each, RotationWish.MOST_ROUNDS, Math.min(minutes, 12)));
    }
    return rounds;
  }

  private List<Player> ticked(FormReader in) {
    List<Player> ticked = new ArrayList<>();
    for (String id : in.all("who")) {
      Optional<Player> found =
          offered().stream().filter(each -> each.id().value().equals(id)).findFirst();
      if (found.isEmpty()) {
        in.problem(
            "who", "Somebody who was ticked is not on the list any more. Maybe load it again.");
      } else if (!ticked.contains(found.get())) {
        ticked.add(found.get());
      }
    }
    return ticked;
  }

  /** With partners fixed, each who is there stands in one pair. */
  private static void checkPartners(
      FormReader in, List<Player> there, List<List<PlayerId>> partners) {
    List<PlayerId> named = partners.stream().flatMap(List::stream).toList();
    for (Player player : there) {
      long times = named.stream().filter(player.id()::equals).count();
      if (times != 1) {
        in.problem(
            "partners",
            times == 0
                ? "%s is there and stands in no pair. Maybe add a line, or take the tick away."
                    .formatted(player.name())
                : "%s stands in %d pairs; one partner is possible. Maybe take a line away."
                    .formatted(player.name(), times));
        return;
      }
    }
  }
}
