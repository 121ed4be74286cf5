package rallywright.store.json;

import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import rallywright.engine.club.PlayerId;
import rallywright.engine.plan.BlockId;
import rallywright.engine.plan.GameId;
import rallywright.engine.score.Ending;
import rallywright.engine.score.Rally;
import rallywright.engine.score.Score;
import rallywright.engine.score.Side;
import rallywright.engine.session.Conditions;
import rallywright.engine.session.CourtEvent;
import rallywright.engine.session.EventId;
import rallywright.engine.session.PhoneOrder;
import rallywright.engine.session.SessionId;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * An event of the court as JSON, for example {@code {"v":1,"type":"rally","id":"…","session":"…",
 * "at":1767225600000,"by":"phone 1","game":"g7","winner":"A","bonus":"NONE"}}.
 *
 * <p>Every event has {@code v, type, id, session, at, by}; one made by a phone also {@code n}, the
 * phone's own count from 1, and {@code seen}, how many events of the session it had from the server
 * then. The types and their further fields:
 *
 * <ul>
 *   <li>{@code rally}: game, winner (A or B), bonus (NONE, ROUND_THE_POST), ending {stage?,
 *       stroke?, manner?} if noted
 *   <li>{@code first-server}: game, server
 *   <li>{@code final-score}: game, a, b, finish (PLAYED_OUT, TIME_CALLED)
 *   <li>{@code time-called}: game
 *   <li>{@code undone}: undone (the id of the event that does not count any more)
 *   <li>{@code block-started}, {@code block-ended}: block
 *   <li>{@code yardstick}: block, player, hits, balls
 *   <li>{@code conditions}: wind, sun, celsius?, humidityPercent?
 *   <li>{@code effort}: player, rating
 *   <li>{@code note}: text, player? or block?, instead? (the note that it corrects)
 *   <li>{@code block-limited}: block, minutesLeft?, without? (games)
 *   <li>{@code session-ended}
 * </ul>
 */
public final class EventJson {

  private static final int VERSION = 1;

  private static final List<Type<?>> TYPES =
      List.of(
          new Type<>(
              "rally", CourtEvent.RallyPlayed.class, EventJson::putRally, EventJson::takeRally),
          new Type<>(
              "first-server",
              CourtEvent.FirstServerNamed.class,
              (tree, event) ->
                  tree.put("game", event.game().value()).put("server", event.server().name()),
              (stamp, fields) ->
                  new CourtEvent.FirstServerNamed(
                      stamp, game(fields), fields.oneOf("server", Side.class))),
          new Type<>(
              "final-score",
              CourtEvent.FinalScoreGiven.class,
              (tree, event) ->
                  tree.put("game", event.game().value())
                      .put("a", event.score().a())
                      .put("b", event.score().b())
                      .put("finish", event.finish().name()),
              (stamp, fields) ->
                  new CourtEvent.FinalScoreGiven(
                      stamp,
                      game(fields),
                      Score.of(fields.whole("a"), fields.whole("b")),
                      fields.oneOf("finish", CourtEvent.Finish.class))),
          new Type<>(
              "time-called",
              CourtEvent.TimeCalled.class,
              (tree, event) -> tree.put("game", event.game().value()),
              (stamp, fields) -> new CourtEvent.TimeCalled(stamp, game(fields))),
          new Type<>(
              "undone",
              CourtEvent.Undone.class,
              (tree, event) -> tree.put("undone", event.undone().value()),
              (stamp, fields) -> new CourtEvent.Undone(stamp, fields.made("undone", EventId::new))),
          new Type<>(
              "block-started",
              CourtEvent.BlockStarted.class,
              (tree, event) -> tree.put("block", event.block().value()),
              (stamp, fields) -> new CourtEvent.BlockStarted(stamp, block(fields))),
          new Type<>(
              "block-ended",
              CourtEvent.BlockEnded.class,
              (tree, event) -> tree.put("block", event.block().value()),
              (stamp, fields) -> new CourtEvent.BlockEnded(stamp, block(fields))),
          new Type<>(
              "yardstick",
              CourtEvent.YardstickCounted.class,
              (tree, event) ->
                  tree.put("block", event.block().value())
                      .put("player", event.player().value())
                      .put("hits", event.hits())
                      .put("balls", event.balls()),
              (stamp, fields) ->
                  new CourtEvent.YardstickCounted(
                      stamp,
                      block(fields),
                      player(fields),
                      fields.whole("hits"),
                      fields.whole("balls"))),
          new Type<>(
              "conditions",
              CourtEvent.ConditionsNoted.class,
              EventJson::putConditions,
              EventJson::takeConditions),
          new Type<>(
              "effort",
              CourtEvent.EffortRated.class,
              (tree, event) ->
                  tree.put("player", event.player().value()).put("rating", event.rating()),
              (stamp, fields) ->
                  new CourtEvent.EffortRated(stamp, player(fields), fields.whole("rating"))),
          new Type<>("note", CourtEvent.NoteWritten.class, EventJson::putNote, EventJson::takeNote),
          new Type<>(
              "block-limited",
              CourtEvent.BlockLimited.class,
              EventJson::putLimit,
              EventJson::takeLimit),
          new Type<>(
              "session-ended",
              CourtEvent.SessionEnded.class,
              (tree, event) -> {},
              (stamp, fields) -> new CourtEvent.SessionEnded(stamp)));

  private EventJson() {}

  /**
   * An event as text.
   *
   * @param event the event
   * @return one JSON object on one line
   */
  public static String write(CourtEvent event) {
    return tree(event).toString();
  }

  /**
   * An event from text.
   *
   * @param text one JSON object
   * @return the event
   * @throws WrongJson if the text is no event of a known version and type
   */
  public static CourtEvent read(String text) {
    return JsonFields.read(text, EventJson::event);
  }

  /**
   * An event as a tree, for a larger object around it.
   *
   * @param event the event
   * @return the object
   */
  public static ObjectNode tree(CourtEvent event) {
    return TYPES.stream()
        .filter(type -> type.kind().isInstance(event))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("No JSON for " + event.getClass()))
        .tree(event);
  }

  /**
   * An event from its fields.
   *
   * @param fields the fields
   * @return the event
   */
  public static CourtEvent event(JsonFields fields) {
    fields.version(VERSION);
    String word = fields.text("type");
    CourtEvent.Stamp stamp =
        new CourtEvent.Stamp(
            fields.made("id", EventId::new),
            fields.made("session", SessionId::new),
            fields.wholeLong("at"),
            fields.text("by"),
            order(fields));
    return TYPES.stream()
        .filter(type -> type.word().equals(word))
        .findFirst()
        .orElseThrow(() -> unknown(word))
        .reading()
        .apply(stamp, fields);
  }

  private static PhoneOrder order(JsonFields fields) {
    long number = fields.maybeWholeLong("n").orElse(0);
    long seen = fields.maybeWholeLong("seen").orElse(-1);
    if (number < 0 || seen < -1) {
      throw new WrongJson(
          number < 0 ? "n" : "seen",
          "The phone's count (n %d, seen %d) must be 0 or more.".formatted(number, seen));
    }
    return new PhoneOrder(number, seen);
  }

  private static WrongJson unknown(String word) {
    String allowed = TYPES.stream().map(Type::word).collect(Collectors.joining(", "));
    return new WrongJson(
        "type",
        "The type of event \""
            + word
            + "\" is not known; allowed: "
            + allowed
            + ". Maybe a newer Rallywright wrote it; update this one.");
  }

  private static void putRally(ObjectNode tree, CourtEvent.RallyPlayed event) {
    tree.put("game", event.game().value())
        .put("winner", event.rally().winner().name())
        .put("bonus", event.rally().bonus().name());
    event
        .rally()
        .ending()
        .ifPresent(
            ending -> {
              ObjectNode note = tree.putObject("ending");
              ending.stage().ifPresent(stage -> note.put("stage", stage.name()));
              ending.stroke().ifPresent(stroke -> note.put("stroke", stroke.name()));
              ending.manner().ifPresent(manner -> note.put("manner", manner.name()));
            });
  }

  private static CourtEvent.RallyPlayed takeRally(CourtEvent.Stamp stamp, JsonFields fields) {
    Rally rally =
        new Rally(
            fields.oneOf("winner", Side.class),
            fields.oneOf("bonus", Rally.Bonus.class),
            fields.maybeInner(
                "ending",
                note ->
                    new Ending(
                        note.maybeOneOf("stage", Ending.Stage.class),
                        note.maybeOneOf("stroke", Ending.Stroke.class),
                        note.maybeOneOf("manner", Ending.Manner.class))));
    return new CourtEvent.RallyPlayed(stamp, game(fields), rally);
  }

  private static void putConditions(ObjectNode tree, CourtEvent.ConditionsNoted event) {
    Conditions conditions = event.conditions();
    tree.put("wind", conditions.wind().name()).put("sun", conditions.sun().name());
    conditions.temperatureCelsius().ifPresent(celsius -> tree.put("celsius", celsius));
    conditions.humidityPercent().ifPresent(percent -> tree.put("humidityPercent", percent));
  }

  private static CourtEvent.ConditionsNoted takeConditions(
      CourtEvent.Stamp stamp, JsonFields fields) {
    return new CourtEvent.ConditionsNoted(
        stamp,
        new Conditions(
            fields.oneOf("wind", Conditions.Wind.class),
            fields.oneOf("sun", Conditions.Sun.class),
            fields.maybeNumber("celsius"),
            fields.maybeNumber("humidityPercent")));
  }

  private static void putNote(ObjectNode tree, CourtEvent.NoteWritten event) {
    tree.put("text", event.text());
    event.player().ifPresent(player -> tree.put("player", player.value()));
    event.block().ifPresent(block -> tree.put("block", block.value()));
    event.instead().ifPresent(note -> tree.put("instead", note.value()));
  }

  private static CourtEvent.NoteWritten takeNote(CourtEvent.Stamp stamp, JsonFields fields) {
    return new CourtEvent.NoteWritten(
        stamp,
        fields.maybeMade("player", PlayerId::new),
        fields.maybeMade("block", BlockId::new),
        fields.text("text"),
        fields.maybeMade("instead", EventId::new));
  }

  private static void putLimit(ObjectNode tree, CourtEvent.BlockLimited event) {
    tree.put("block", event.block().value());
    event.minutesLeft().ifPresent(minutes -> tree.put("minutesLeft", minutes));
    if (!event.without().isEmpty()) {
      ArrayNode games = tree.putArray("without");
      event.without().forEach(game -> games.add(game.value()));
    }
  }

  private static CourtEvent.BlockLimited takeLimit(CourtEvent.Stamp stamp, JsonFields fields) {
    return new CourtEvent.BlockLimited(
        stamp, block(fields), fields.maybeWhole("minutesLeft"), games(fields));
  }

  private static List<GameId> games(JsonFields fields) {
    return fields.maybeMadeList("without", GameId::new);
  }

  private static GameId game(JsonFields fields) {
    return fields.made("game", GameId::new);
  }

  private static BlockId block(JsonFields fields) {
    return fields.made("block", BlockId::new);
  }

  private static PlayerId player(JsonFields fields) {
    return fields.made("player", PlayerId::new);
  }

  /** One type of event: its word, its class, how its own fields are written and read. */
  private record Type<E extends CourtEvent>(
      String word,
      Class<E> kind,
      BiConsumer<ObjectNode, E> writing,
      BiFunction<CourtEvent.Stamp, JsonFields, E> reading) {

    ObjectNode tree(CourtEvent event) {
      CourtEvent.Stamp stamp = event.stamp();
      ObjectNode tree = JsonFields.fresh();
      tree.put("v", VERSION)
          .put("type", word)
          .put("id", stamp.id().value())
          .put("session", stamp.session().value())
          .put("at", stamp.atMillis())
          .put("by", stamp.by());
      if (stamp.order().number() > 0) {
        tree.put("n", stamp.order().number());
      }
      if (stamp.order().seen() >= 0) {
        tree.put("seen", stamp.order().seen());
      }
      writing.accept(tree, kind.cast(event));
      return tree;
    }
  }
}
