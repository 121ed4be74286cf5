package rallywright.web.rotation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import rallywright.catalogue.Catalogue;
import rallywright.engine.club.Player;
import rallywright.engine.club.PlayerId;
import rallywright.engine.club.Standing;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.DrillForm;
import rallywright.engine.reading.GameStrength;
import rallywright.engine.rotation.DayAnswer;
import rallywright.engine.rotation.DayStyle;
import rallywright.engine.rotation.DayWish;
import rallywright.engine.rotation.Pairing;
import rallywright.engine.rotation.PlayDay;
import rallywright.engine.rotation.RotationGame;
import rallywright.engine.rotation.RotationPlayer;
import rallywright.engine.rotation.RotationTime;
import rallywright.engine.rotation.SavedDay;
import rallywright.paper.FirstNames;
import rallywright.store.ClubStore;
import rallywright.web.players.WalkIns;
import rallywright.web.progress.ClubReadings;

/** Makes days of games from the club and keeps them. */
@Component
final class RotationDesk {

  private final ClubStore store;
  private final ClubReadings readings;
  private final DayKeeper keeper;
  private final Catalogue catalogue = Catalogue.shipped();

  RotationDesk(ClubStore store, ClubReadings readings, DayKeeper keeper) {
    this.store = store;
    this.readings = readings;
    this.keeper = keeper;
  }

  /** The form for a new day. */
  RotationForm form() {
    return new RotationForm(store, catalogue);
  }

  /** Every day, newest first. */
  List<SavedDay> all() {
    return store.days().all();
  }

  /** One day. */
  Optional<SavedDay> find(String id) {
    return id.isBlank() || id.length() > SavedDay.LONGEST_ID
        ? Optional.empty()
        : store.days().find(id);
  }

  /** The drill of a day by its name, or doubles. */
  String played(SavedDay saved) {
    return Optional.ofNullable(saved.drill())
        .flatMap(catalogue::drill)
        .map(drill -> "On lanes: " + drill.name())
        .orElse("Doubles");
  }

  /** What came of a wish. */
  record Outcome(List<String> refused, String id) {}

  /** Makes a day and keeps it with its walk-ins, or says why it cannot be. */
  Outcome make(RotationForm.Wished wished) {
    DayAnswer answer = PlayDay.start(wish(wished));
    if (answer instanceof DayAnswer.Refused refused) {
      Map<PlayerId, String> names = new HashMap<>();
      wished.players().forEach(each -> names.put(each.id(), each.firstName()));
      return new Outcome(
          refused.sentences().stream().map(each -> PairLines.named(each, names)).toList(), "");
    }
    SavedDay saved =
        new SavedDay(
            store.freshId(),
            wished.name(),
            wished.date(),
            wished.drill().map(Drill::key).orElse(null),
            ((DayAnswer.Ready) answer).day());
    store.inOneStep(
        () -> {
          store.players().saveAll(wished.walkIns());
          store.days().save(saved);
          return saved;
        });
    return new Outcome(List.of(), saved.id());
  }

  private DayWish wish(RotationForm.Wished wished) {
    Map<PlayerId, Double> strengths = strengths(wished.players(), wished.drill());
    boolean even =
        wished.style() == DayStyle.NEW_PARTNERS && wished.balance() == RotationForm.Balance.EVEN;
    List<RotationPlayer> players =
        order(wished, strengths).stream()
            .map(id -> RotationPlayer.of(id, even ? strengths.getOrDefault(id, 0.0) : 0))
            .toList();
    return new DayWish(
        wished.style(),
        wished.drill().isPresent() ? RotationGame.LANES : RotationGame.DOUBLES,
        wished.courts(),
        wished.rounds(),
        players,
        pairings(wished.pairs().apart()),
        pairings(wished.pairs().together()),
        wished.date().toEpochDay());
  }

  /** Pairs in the order of the form; of a ladder the strongest first; else as they were ticked. */
  private static List<PlayerId> order(RotationForm.Wished wished, Map<PlayerId, Double> strengths) {
    if (!wished.pairs().partners().isEmpty()) {
      return wished.pairs().partners().stream().flatMap(List::stream).toList();
    }
    List<PlayerId> order = new ArrayList<>(wished.players().stream().map(Player::id).toList());
    if (wished.style() == DayStyle.LADDER) {
      order.sort(Comparator.comparingDouble(id -> -strengths.getOrDefault(id, 0.0)));
    }
    return order;
  }

  private static Set<Pairing> pairings(List<List<PlayerId>> pairs) {
    return pairs.stream()
        .map(pair -> new Pairing(pair.get(0), pair.get(1)))
        .collect(Collectors.toSet());
  }

  /** In logits around the mean of those who are there; somebody unknown counts as the mean. */
  private Map<PlayerId, Double> strengths(List<Player> players, Optional<Drill> drill) {
    Set<PlayerId> known =
        store.players().all().stream()
            .filter(each -> each.standing() != Standing.ERASED)
            .map(Player::id)
            .collect(Collectors.toSet());
    Map<PlayerId, Double> strengths = new HashMap<>();
    for (Player player : players) {
      if (known.contains(player.id())) {
        strengths.put(player.id(), strength(player.id(), drill));
      }
    }
    double mean = strengths.values().stream().mapToDouble(Double::doubleValue).average().orElse(0);
    strengths.replaceAll((id, strength) -> bounded(strength - mean));
    return strengths;
  }

  private double strength(PlayerId player, Optional<Drill> drill) {
    return drill.isPresent()
        ? GameStrength.inDrill(readings.now(), player, drill.get())
        : GameStrength.inDoubles(readings.points(), player);
  }

  private static double bounded(double strength) {
    return Math.max(
        -RotationPlayer.STRONGEST_LOGITS, Math.min(RotationPlayer.STRONGEST_LOGITS, strength));
  }

  /** Changes a day; answers why it stays as it was, or an empty text. */
  String change(String id, Function<PlayDay, DayAnswer> change) {
    return keeper.change(id, change, () -> {});
  }

  /** Lets a player of the list, or a new walk-in of that name, come late. */
  String arrive(SavedDay saved, String name) {
    List<Player> called =
        store.players().all().stream()
            .filter(each -> Set.of(Standing.ACTIVE, Standing.WALK_IN).contains(each.standing()))
            .filter(each -> each.name().strip().equalsIgnoreCase(name))
            .toList();
    if (called.size() > 1) {
      return "%d on the list are called \"%s\". Maybe give one of them another name."
          .formatted(called.size(), name);
    }
    Player who = called.isEmpty() ? WalkIns.named(name, store) : called.get(0);
    double strength = called.isEmpty() ? 0 : late(saved, who.id());
    return keeper.change(
        saved.id(),
        day -> day.arriving(who.id(), strength),
        () -> {
          if (called.isEmpty()) {
            store.players().save(who);
          }
        });
  }

  /** Beside those who are there by strength, or 0 where matches are left to chance. */
  private double late(SavedDay saved, PlayerId who) {
    List<RotationPlayer> there = saved.day().wish().players();
    if (there.stream().allMatch(each -> each.strengthLogits() == 0)) {
      return 0;
    }
    Optional<Drill> drill = Optional.ofNullable(saved.drill()).flatMap(catalogue::drill);
    double mean =
        there.stream()
            .map(RotationPlayer::id)
            .filter(id -> store.players().find(id).isPresent())
            .mapToDouble(id -> strength(id, drill))
            .average()
            .orElse(0);
    return bounded(strength(who, drill) - mean);
  }

  /** How long the rounds to come take without a horn, in words; empty where none follows. */
  String time(SavedDay saved) {
    RotationTime time =
        Optional.ofNullable(saved.drill())
            .flatMap(catalogue::drill)
            .flatMap(drill -> drill.scored().map(game -> time(saved.day(), drill, game)))
            .orElseGet(
                () -> saved.day().timeToCome(RotationTime.usualPace(saved.day().wish().game())));
    return time.rounds() == 0 ? "" : time.sentence();
  }

  private RotationTime time(PlayDay day, Drill drill, DrillForm.Scored game) {
    return day.timeToCome(readings.now().paces().of(drill, game), game.format());
  }

  /** How long a round of each game takes. */
  RoundTimes roundTimes(int courts) {
    return new RoundTimes(form().laneDrills(), readings.now().paces(), courts);
  }

  /** Takes a day away for good. */
  void remove(String id) {
    store.days().remove(id);
  }

  /** How everybody of a day is called; somebody who was erased has no name any more. */
  Map<PlayerId, String> names(SavedDay saved) {
    List<Player> players = new ArrayList<>();
    saved.named().forEach(id -> store.players().find(id).ifPresent(players::add));
    players.sort(Comparator.comparing(Player::name));
    FirstNames first = FirstNames.of(players);
    Map<PlayerId, String> names = new HashMap<>();
    saved.named().forEach(id -> names.put(id, "Former player"));
    players.forEach(player -> names.put(player.id(), first.of(player.id())));
    return names;
  }

  /** Names on the list of those who are not there in the next round. */
  List<String> namesBeside(SavedDay saved) {
    return store.players().all().stream()
        .filter(each -> Set.of(Standing.ACTIVE, Standing.WALK_IN).contains(each.standing()))
        .filter(each -> !saved.named().contains(each.id()))
        .map(Player::name)
        .toList();
  }
}
