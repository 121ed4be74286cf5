package rallywright.store.archive;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import rallywright.engine.club.Limit;
import rallywright.engine.club.Player;
import rallywright.engine.club.PlayerId;
import rallywright.engine.plan.BlockId;
import rallywright.engine.plan.GameId;
import rallywright.engine.plan.PlannedBlock;
import rallywright.engine.plan.PlannedGame;
import rallywright.engine.plan.Seat;
import rallywright.engine.score.Side;
import rallywright.engine.session.Conditions;
import rallywright.engine.session.CourtEvent;
import rallywright.engine.session.EventId;
import rallywright.engine.session.Session;
import rallywright.engine.session.SessionId;
import rallywright.engine.session.SessionProgress;
import rallywright.store.ClubContents;
import rallywright.store.json.EventJson;

/**
 * The club as tables for a spreadsheet (RFC 4180). A text that a spreadsheet would take for a
 * formula is given an apostrophe in front.
 */
final class CsvTables {

  private final ClubContents contents;
  private final Map<PlayerId, String> names = new HashMap<>();
  private final Map<SessionId, List<CourtEvent>> counting;

  private CsvTables(ClubContents contents) {
    this.contents = contents;
    contents.players().forEach(player -> names.put(player.id(), player.name()));
    this.counting =
        contents.events().stream()
            .collect(
                Collectors.groupingBy(
                    event -> event.stamp().session(),
                    Collectors.collectingAndThen(Collectors.toList(), SessionProgress::counting)));
  }

  /** The texts of all tables by file name. */
  static Map<String, String> of(ClubContents contents) {
    CsvTables tables = new CsvTables(contents);
    Map<String, String> files = new LinkedHashMap<>();
    files.put("players.csv", tables.players());
    files.put("groups.csv", tables.groups());
    files.put("venues.csv", tables.venues());
    files.put("sessions.csv", tables.sessions());
    files.put("games.csv", tables.games());
    files.put("yardsticks.csv", tables.yardsticks());
    files.put("efforts.csv", tables.efforts());
    files.put("notes.csv", tables.notes());
    files.put("conditions.csv", tables.conditions());
    files.put("events.csv", tables.events());
    return files;
  }

  private String players() {
    SheetTable table =
        SheetTable.with("id", "name", "level", "hand", "limits", "notes", "age group", "standing");
    for (Player player : contents.players()) {
      table.row(
          player.id(),
          player.name(),
          player.level() == null ? "" : player.level().value(),
          player.hand().words(),
          player.limits().stream().sorted().map(Limit::words).collect(Collectors.joining("; ")),
          player.notes(),
          word(player.ageGroup()),
          word(player.standing()));
    }
    return table.text();
  }

  private String groups() {
    SheetTable table = SheetTable.with("group id", "group", "player id", "player");
    contents
        .groups()
        .forEach(
            group ->
                group.members().stream()
                    .sorted(java.util.Comparator.comparing(PlayerId::value))
                    .forEach(member -> table.row(group.id(), group.name(), member, name(member))));
    return table.text();
  }

  private String venues() {
    SheetTable table =
        SheetTable.with("id", "name", "courts", "setting", "ball", "surface", "altitude in metres");
    contents
        .venues()
        .forEach(
            venue ->
                table.row(
                    venue.id(),
                    venue.name(),
                    venue.courts(),
                    word(venue.setting()),
                    venue.ball(),
                    venue.surface(),
                    venue.altitudeMetres()));
    return table.text();
  }

  private String sessions() {
    SheetTable table =
        SheetTable.with(
            "id",
            "name",
            "date",
            "start",
            "venue id",
            "group id",
            "state",
            "minutes",
            "courts",
            "players");
    for (Session session : contents.sessions()) {
      table.row(
          session.id(),
          session.name(),
          session.date(),
          session.start(),
          session.venue(),
          session.group(),
          word(session.state()),
          session.plan().minutes(),
          session.plan().courts(),
          session.plan().present().stream().map(this::name).collect(Collectors.joining("; ")));
    }
    return table.text();
  }

  private String games() {
    SheetTable table =
        SheetTable.with(
            "session id",
            "date",
            "block",
            "drill",
            "game id",
            "turn",
            "court",
            "lane",
            "players a",
            "role a",
            "players b",
            "role b",
            "head start a",
            "head start b",
            "rallies won by a",
            "rallies won by b",
            "final a",
            "final b",
            "finish");
    for (Session session : contents.sessions()) {
      for (PlannedBlock block : session.plan().blocks()) {
        block.games().forEach(game -> game(table, session, block, game));
      }
    }
    return table.text();
  }

  private void game(SheetTable table, Session session, PlannedBlock block, PlannedGame game) {
    List<CourtEvent> events = counting.getOrDefault(session.id(), List.of());
    CourtEvent.FinalScoreGiven given =
        events.stream()
            .filter(CourtEvent.FinalScoreGiven.class::isInstance)
            .map(CourtEvent.FinalScoreGiven.class::cast)
            .filter(event -> event.game().equals(game.id()))
            .reduce((first, last) -> last)
            .orElse(null);
    table.row(
        session.id(),
        session.date(),
        block.id(),
        block.drill(),
        game.id(),
        game.turn(),
        game.place().court(),
        game.place().lane().words(),
        names(game.a()),
        game.a().role().words(),
        names(game.b()),
        game.b().role().words(),
        game.headStart().a(),
        game.headStart().b(),
        rallies(events, game.id(), Side.A),
        rallies(events, game.id(), Side.B),
        given == null ? "" : given.score().a(),
        given == null ? "" : given.score().b(),
        given == null ? "" : word(given.finish()));
  }

  private String yardsticks() {
    SheetTable table =
        SheetTable.with("session id", "block", "player id", "player", "hits", "balls");
    counted(CourtEvent.YardstickCounted.class)
        .forEach(
            event ->
                table.row(
                    event.stamp().session(),
                    event.block(),
                    event.player(),
                    name(event.player()),
                    event.hits(),
                    event.balls()));
    return table.text();
  }

  private String efforts() {
    SheetTable table = SheetTable.with("session id", "player id", "player", "rating from 0 to 10");
    counted(CourtEvent.EffortRated.class)
        .forEach(
            event ->
                table.row(
                    event.stamp().session(), event.player(), name(event.player()), event.rating()));
    return table.text();
  }

  private String notes() {
    SheetTable table =
        SheetTable.with("session id", "at", "player id", "player", "block", "note", "corrects");
    counted(CourtEvent.NoteWritten.class)
        .forEach(
            event ->
                table.row(
                    event.stamp().session(),
                    event.stamp().atMillis(),
                    event.player().map(PlayerId::value).orElse(""),
                    event.player().map(this::name).orElse(""),
                    event.block().map(BlockId::value).orElse(""),
                    event.text(),
                    event.instead().map(EventId::value).orElse("")));
    return table.text();
  }

  private String conditions() {
    SheetTable table =
        SheetTable.with("session id", "at", "wind", "sun", "temperature in °C", "humidity in %");
    counted(CourtEvent.ConditionsNoted.class)
        .forEach(
            event -> {
              Conditions noted = event.conditions();
              table.row(
                  event.stamp().session(),
                  event.stamp().atMillis(),
                  word(noted.wind()),
                  word(noted.sun()),
                  number(noted.temperatureCelsius()),
                  number(noted.humidityPercent()));
            });
    return table.text();
  }

  private String events() {
    SheetTable table = SheetTable.with("id", "session id", "at", "by", "what, as JSON");
    contents
        .events()
        .forEach(
            event ->
                table.row(
                    event.stamp().id(),
                    event.stamp().session(),
                    event.stamp().atMillis(),
                    event.stamp().by(),
                    EventJson.write(event)));
    return table.text();
  }

  private <E extends CourtEvent> List<E> counted(Class<E> kind) {
    return contents.sessions().stream()
        .flatMap(session -> counting.getOrDefault(session.id(), List.of()).stream())
        .filter(kind::isInstance)
        .map(kind::cast)
        .toList();
  }

  private static long rallies(List<CourtEvent> events, GameId game, Side winner) {
    return events.stream()
        .filter(CourtEvent.RallyPlayed.class::isInstance)
        .map(CourtEvent.RallyPlayed.class::cast)
        .filter(event -> event.game().equals(game) && event.rally().winner() == winner)
        .count();
  }

  private String names(Seat seat) {
    return seat.players().stream().map(this::name).collect(Collectors.joining("; "));
  }

  private String name(PlayerId player) {
    return names.getOrDefault(player, player.value());
  }

  private static String word(Enum<?> constant) {
    return constant.name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
  }

  private static Object number(OptionalDouble number) {
    return number.isPresent() ? number.getAsDouble() : "";
  }
}
