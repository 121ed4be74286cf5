package rallywright.store.json;

import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import rallywright.engine.club.PlayerId;
import rallywright.engine.drill.DrillKey;
import rallywright.engine.odds.FairGame.HeadStart;
import rallywright.engine.rotation.DayResult;
import rallywright.engine.rotation.DayStyle;
import rallywright.engine.rotation.DayWish;
import rallywright.engine.rotation.Pairing;
import rallywright.engine.rotation.PlayDay;
import rallywright.engine.rotation.RotationGame;
import rallywright.engine.rotation.RotationMatch;
import rallywright.engine.rotation.RotationPlayer;
import rallywright.engine.rotation.RotationRound;
import rallywright.engine.rotation.SavedDay;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** A day of games as JSON. Players stand in it by id only, never by name. */
public final class DayJson {

  private static final int VERSION = 1;
  private static final Map<String, RotationGame> GAMES =
      Map.of(
          "DOUBLES", RotationGame.DOUBLES,
          "LANES", RotationGame.LANES,
          "LONE_LANES", RotationGame.LONE_LANES);

  private DayJson() {}

  /**
   * A day as text.
   *
   * @param saved the day
   * @return one JSON object on one line
   */
  public static String write(SavedDay saved) {
    PlayDay day = saved.day();
    DayWish wish = day.wish();
    ObjectNode tree = JsonFields.fresh();
    tree.put("v", VERSION).put("id", saved.id()).put("name", saved.name());
    tree.put("date", saved.date().toString());
    if (saved.drill() != null) {
      tree.put("drill", saved.drill().value());
    }
    tree.put("style", wish.style().name())
        .put("game", nameOf(wish.game()))
        .put("courts", wish.courts())
        .put("rounds", wish.rounds())
        .put("seed", wish.seed())
        .put("now", day.now());
    list(tree, "players", wish.players(), DayJson::tree);
    list(tree, "apart", wish.apart(), DayJson::tree);
    list(tree, "together", wish.together(), DayJson::tree);
    list(tree, "schedule", day.rounds(), DayJson::tree);
    list(tree, "results", day.results(), DayJson::tree);
    return tree.toString();
  }

  private static String nameOf(RotationGame game) {
    return GAMES.entrySet().stream()
        .filter(each -> each.getValue().equals(game))
        .map(Map.Entry::getKey)
        .findFirst()
        .orElseThrow(
            () -> new IllegalArgumentException("The game (%s) is not kept.".formatted(game)));
  }

  private static <T> void list(
      ObjectNode tree, String name, Collection<T> values, Function<T, ObjectNode> writing) {
    ArrayNode list = tree.putArray(name);
    values.forEach(each -> list.add(writing.apply(each)));
  }

  private static ObjectNode tree(RotationPlayer player) {
    ObjectNode tree = JsonFields.fresh();
    tree.put("id", player.id().value())
        .put("strength", player.strengthLogits())
        .put("from", player.firstRound());
    if (player.lastRound() != RotationPlayer.TO_THE_END) {
      tree.put("until", player.lastRound());
    }
    return tree;
  }

  private static ObjectNode tree(Pairing pair) {
    return JsonFields.fresh().put("one", pair.one().value()).put("other", pair.other().value());
  }

  private static ObjectNode tree(RotationRound round) {
    ObjectNode tree = JsonFields.fresh();
    tree.put("number", round.number());
    list(tree, "matches", round.matches(), DayJson::tree);
    ids(tree.putArray("sitting"), round.sitting());
    return tree;
  }

  private static ObjectNode tree(RotationMatch match) {
    ObjectNode tree = JsonFields.fresh();
    tree.put("court", match.court()).put("lane", match.lane());
    ids(tree.putArray("a"), match.a());
    ids(tree.putArray("b"), match.b());
    HeadStart start = match.headStart();
    if (start.a() + start.b() > 0) {
      tree.put("startA", start.a()).put("startB", start.b()).put("winA", start.winA());
    }
    return tree;
  }

  private static ObjectNode tree(DayResult result) {
    return JsonFields.fresh()
        .put("round", result.round())
        .put("match", result.match())
        .put("a", result.pointsA())
        .put("b", result.pointsB());
  }

  private static void ids(ArrayNode list, List<PlayerId> players) {
    players.forEach(player -> list.add(player.value()));
  }

  /**
   * A day from text.
   *
   * @param text one JSON object
   * @return the day
   * @throws WrongJson if the text is no day of a known version
   */
  public static SavedDay read(String text) {
    return JsonFields.read(text, DayJson::day);
  }

  /**
   * A day from its fields.
   *
   * @param fields the fields
   * @return the day
   */
  public static SavedDay day(JsonFields fields) {
    fields.version(VERSION);
    DayWish wish =
        new DayWish(
            fields.oneOf("style", DayStyle.class),
            fields.made("game", DayJson::game),
            fields.whole("courts"),
            fields.whole("rounds"),
            fields.inners("players", DayJson::player),
            Set.copyOf(fields.inners("apart", DayJson::pair)),
            Set.copyOf(fields.inners("together", DayJson::pair)),
            fields.wholeLong("seed"));
    List<RotationRound> rounds = fields.inners("schedule", DayJson::round);
    List<DayResult> results = fields.inners("results", DayJson::result);
    int now = fields.whole("now");
    return new SavedDay(
        fields.text("id"),
        fields.text("name"),
        fields.made("date", LocalDate::parse),
        fields.maybeMade("drill", DrillKey::new).orElse(null),
        fields.ranged("now", () -> new PlayDay(wish, rounds, results, now)));
  }

  private static RotationGame game(String name) {
    RotationGame game = GAMES.get(name);
    if (game == null) {
      throw new IllegalArgumentException(
          "The game \"%s\" must be one of %s."
              .formatted(name, GAMES.keySet().stream().sorted().toList()));
    }
    return game;
  }

  private static RotationPlayer player(JsonFields fields) {
    PlayerId id = fields.made("id", PlayerId::new);
    double strength = fields.number("strength");
    int from = fields.whole("from");
    int until =
        fields.maybeNumber("until").isPresent() ? fields.whole("until") : RotationPlayer.TO_THE_END;
    return new RotationPlayer(id, strength, from, until);
  }

  private static Pairing pair(JsonFields fields) {
    return new Pairing(fields.made("one", PlayerId::new), fields.made("other", PlayerId::new));
  }

  private static RotationRound round(JsonFields fields) {
    return new RotationRound(
        fields.whole("number"),
        fields.inners("matches", DayJson::match),
        fields.madeList("sitting", PlayerId::new));
  }

  private static RotationMatch match(JsonFields fields) {
    HeadStart start =
        fields.maybeNumber("startA").isPresent()
            ? new HeadStart(fields.whole("startA"), fields.whole("startB"), fields.number("winA"))
            : RotationMatch.EVEN;
    return new RotationMatch(
        fields.whole("court"),
        fields.whole("lane"),
        fields.madeList("a", PlayerId::new),
        fields.madeList("b", PlayerId::new),
        start);
  }

  private static DayResult result(JsonFields fields) {
    return new DayResult(
        fields.whole("round"), fields.whole("match"), fields.whole("a"), fields.whole("b"));
  }
}
