package rallywright.web.plan;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import rallywright.engine.club.Group;
import rallywright.engine.club.GroupId;
import rallywright.engine.club.Player;
import rallywright.engine.club.PlayerId;
import rallywright.engine.club.Standing;
import rallywright.engine.club.Venue;
import rallywright.engine.club.VenueId;
import rallywright.engine.plan.Coverage;
import rallywright.engine.plan.SessionPlan;
import rallywright.engine.plan.SessionWish;
import rallywright.engine.session.Session;
import rallywright.store.ClubStore;
import rallywright.web.page.AllowedNumber;
import rallywright.web.page.FormReader;
import rallywright.web.players.WalkIns;

/** Reads what a coach wishes for: when, where, who, how long. */
final class WishForm {

  private static final AllowedNumber MINUTES =
      new AllowedNumber(
          "The booked time",
          SessionPlan.SHORTEST_MINUTES,
          SessionPlan.LONGEST_MINUTES,
          "Maybe 90.");
  private static final AllowedNumber COURTS =
      new AllowedNumber(
          "The number of courts",
          1,
          SessionWish.MOST_COURTS,
          "Maybe plan two groups, each on courts of its own.");

  /** What stands for the last session among the templates; no template is named like this. */
  private static final String LAST = "(last session)";

  private final ClubStore store;
  private final Set<PlayerId> also;

  private WishForm(ClubStore store, Set<PlayerId> also) {
    this.store = store;
    this.also = also;
  }

  /** Offers everybody who trains now. */
  static WishForm of(ClubStore store) {
    return new WishForm(store, Set.of());
  }

  /** Offers everybody who trains now and those who were planned for before. */
  static WishForm alsoOffering(ClubStore store, Collection<PlayerId> planned) {
    return new WishForm(store, Set.copyOf(planned));
  }

  /** What was wished for; walk-ins are not stored yet. */
  record Wished(
      String name,
      LocalDate date,
      LocalTime start,
      @Nullable VenueId venue,
      @Nullable GroupId group,
      List<PlayerId> present,
      List<Player> walkIns,
      int minutes,
      int courts,
      Coverage coverage,
      MoreWishes more,
      Optional<SessionPlan> template) {}

  /** Everybody who can be chosen, by name. */
  List<Player> offered() {
    return store.players().all().stream()
        .filter(
            player ->
                Set.of(Standing.ACTIVE, Standing.WALK_IN).contains(player.standing())
                    || (player.standing() == Standing.ARCHIVED && also.contains(player.id())))
        .sorted(Comparator.comparing(Player::name))
        .toList();
  }

  Map<String, String> players() {
    Map<String, String> names = new LinkedHashMap<>();
    offered().forEach(player -> names.put(player.id().value(), player.name()));
    return names;
  }

  Map<String, String> venues() {
    Map<String, String> names = new LinkedHashMap<>();
    names.put("", "not said");
    store.venues().all().forEach(venue -> names.put(venue.id().value(), venue.name()));
    return names;
  }

  Map<String, String> groups() {
    Map<String, String> names = new LinkedHashMap<>();
    names.put("", "mixed");
    store.groups().all().forEach(group -> names.put(group.id().value(), group.name()));
    return names;
  }

  Map<String, String> templates() {
    Map<String, String> names = new LinkedHashMap<>();
    names.put("", "a fresh plan");
    last().ifPresent(last -> names.put(LAST, "the drills of the last session"));
    store.sessions().templates().keySet().forEach(name -> names.put(name, name));
    return names;
  }

  @Nullable Wished read(FormReader in) {
    String name = in.text("name", "The session's name", Player.LONGEST_NAME);
    LocalDate date = in.day("date");
    LocalTime start = time(in);
    int minutes = in.neededWhole("minutes", MINUTES);
    int courts = in.neededWhole("courts", COURTS);
    Coverage coverage = in.choice("coverage", "The coverage", Coverage.FULL);
    List<PlayerId> present = present(in);
    List<Player> walkIns = WalkIns.read(in, "walkIns", store);
    if (present.isEmpty() && walkIns.isEmpty()) {
      in.problem(
          "who",
          "A session needs somebody, but nobody will be there. Maybe tick who comes, or add a"
              + " walk-in by name.");
    }
    if (present.size() + walkIns.size() > SessionWish.MOST_PLAYERS) {
      in.problem(
          "who",
          "%d players are there; a session needs 1 to %d. Maybe plan two groups."
              .formatted(present.size() + walkIns.size(), SessionWish.MOST_PLAYERS));
    }
    MoreWishes more = MoreWishes.read(in);
    if (start != null) {
      more = more.with(PlayerWishes.read(in, there(present, walkIns), start));
    }
    Optional<SessionPlan> template = template(in);
    refuseUnknown(in, "venue", "The venue", venues());
    refuseUnknown(in, "group", "The group", groups());
    if (in.failed() || date == null || start == null) {
      return null;
    }
    return new Wished(
        name, date, start, venue(in), group(in), present, walkIns, minutes, courts, coverage, more,
        template);
  }

  private List<Player> there(List<PlayerId> present, List<Player> walkIns) {
    List<Player> there = new ArrayList<>(walkIns);
    offered().stream().filter(each -> present.contains(each.id())).forEach(there::add);
    return there;
  }

  private static void refuseUnknown(
      FormReader in, String field, String what, Map<String, String> offered) {
    if (!offered.containsKey(in.raw(field))) {
      in.problem(
          field,
          "%s (%s) is not there any more. Maybe load the page again."
              .formatted(what, FormReader.echo(in.raw(field))));
    }
  }

  private static @Nullable LocalTime time(FormReader in) {
    String text = in.raw("start").strip();
    try {
      return LocalTime.parse(text);
    } catch (DateTimeException unreadable) {
      in.problem(
          "start",
          "The start ("
              + (text.isEmpty() ? "empty" : FormReader.echo(text))
              + ") must be a time of day. Maybe 18:00.");
      return null;
    }
  }

  private List<PlayerId> present(FormReader in) {
    Set<String> known = players().keySet();
    List<PlayerId> present = new ArrayList<>();
    for (String id : in.all("who")) {
      if (!known.contains(id)) {
        in.problem(
            "who", "Somebody who was ticked is not on the list any more. Maybe load it again.");
      } else if (present.stream().noneMatch(each -> each.value().equals(id))) {
        present.add(new PlayerId(id));
      }
    }
    return present;
  }

  /** The newest session that was planned or played. */
  private Optional<SessionPlan> last() {
    return store.sessions().all().stream().findFirst().map(Session::plan);
  }

  private Optional<SessionPlan> template(FormReader in) {
    String name = in.raw("template");
    if (name.isEmpty()) {
      return Optional.empty();
    }
    if (name.equals(LAST)) {
      return last();
    }
    Optional<SessionPlan> found = Optional.ofNullable(store.sessions().templates().get(name));
    if (found.isEmpty()) {
      in.problem("template", "The template is not kept any more. Maybe choose a fresh plan.");
    }
    return found;
  }

  private @Nullable VenueId venue(FormReader in) {
    return store.venues().all().stream()
        .map(Venue::id)
        .filter(id -> id.value().equals(in.raw("venue")))
        .findFirst()
        .orElse(null);
  }

  private @Nullable GroupId group(FormReader in) {
    return store.groups().all().stream()
        .map(Group::id)
        .filter(id -> id.value().equals(in.raw("group")))
        .findFirst()
        .orElse(null);
  }
}
