package rallywright.store.archive;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rallywright.engine.club.Group;
import rallywright.engine.club.Player;
import rallywright.engine.club.PlayerId;
import rallywright.engine.club.Venue;
import rallywright.engine.drill.DrillKey;
import rallywright.engine.plan.SessionPlan;
import rallywright.engine.rotation.SavedDay;
import rallywright.engine.session.CourtEvent;
import rallywright.engine.session.Session;
import rallywright.store.ClubContents;
import rallywright.store.ClubContents.Mark;
import rallywright.store.Settings;
import rallywright.store.json.ClubJson;
import rallywright.store.json.DayJson;
import rallywright.store.json.EventJson;
import rallywright.store.json.JsonFields;
import rallywright.store.json.PlanJson;
import rallywright.store.json.WrongJson;

/** Reads an archive whole and lists everything that is wrong with it; stores nothing. */
final class ArchiveReading {

  private final ArchiveLines lines;
  private final List<ImportProblem> problems;
  private final List<Line<Player>> players;
  private final List<Line<Group>> groups;
  private final List<Line<Venue>> venues;
  private final List<Line<Session>> sessions;
  private final List<Line<Map.Entry<String, SessionPlan>>> templates;
  private final List<Line<CourtEvent>> events;
  private final List<Line<Map.Entry<String, String>>> settings;
  private final List<Line<Map.Entry<DrillKey, String>>> drills;
  private final List<Line<Mark>> forgotten;
  private final List<Line<Map.Entry<PlayerId, PlayerId>>> merged;
  private final List<Line<SavedDay>> days;

  private ArchiveReading(ArchiveLines lines) {
    this.lines = lines;
    this.problems = new ArrayList<>(lines.problems());
    players = json(ArchiveFiles.PLAYERS, ClubJson::player);
    groups = json(ArchiveFiles.GROUPS, ClubJson::group);
    venues = json(ArchiveFiles.VENUES, ClubJson::venue);
    sessions = json(ArchiveFiles.SESSIONS, ClubJson::session);
    templates = pairs(ArchiveFiles.TEMPLATES, ArchiveReading::template);
    events = json(ArchiveFiles.EVENTS, EventJson::event);
    settings = pairs(ArchiveFiles.SETTINGS, ArchiveReading::setting);
    drills = pairs(ArchiveFiles.DRILLS, ArchiveReading::drill);
    forgotten = pairs(ArchiveFiles.FORGOTTEN, ArchiveReading::mark);
    merged = pairs(ArchiveFiles.MERGED, ArchiveReading::merged);
    days = json(ArchiveFiles.DAYS, DayJson::day);
  }

  /** What an archive holds; to be trusted only where no problem was found. */
  record Read(ClubContents contents, List<ImportProblem> problems) {}

  /** One line that was read. */
  private record Line<T>(int number, T value) {}

  static Read of(Path archive) {
    return new ArchiveReading(ArchiveLines.of(archive)).read();
  }

  private Read read() {
    check();
    ClubContents contents =
        new ClubContents(
            values(players),
            values(groups),
            values(venues),
            values(sessions),
            map(templates),
            values(events),
            map(settings),
            map(drills),
            values(forgotten),
            map(merged),
            values(days));
    return new Read(contents, inOrder());
  }

  /** Finds ids that come twice and names of what is not there. */
  private void check() {
    var playerIds = unique(ArchiveFiles.PLAYERS, players, Player::id);
    var groupIds = unique(ArchiveFiles.GROUPS, groups, Group::id);
    var venueIds = unique(ArchiveFiles.VENUES, venues, Venue::id);
    var sessionIds = unique(ArchiveFiles.SESSIONS, sessions, Session::id);
    unique(ArchiveFiles.TEMPLATES, templates, Map.Entry::getKey);
    unique(ArchiveFiles.EVENTS, events, event -> event.stamp().id());
    unique(ArchiveFiles.SETTINGS, settings, Map.Entry::getKey);
    unique(ArchiveFiles.DRILLS, drills, Map.Entry::getKey);
    unique(ArchiveFiles.MERGED, merged, Map.Entry::getKey);
    unique(ArchiveFiles.DAYS, days, SavedDay::id);
    known(ArchiveFiles.GROUPS, "members", groups, each -> each.members().stream(), playerIds);
    known(ArchiveFiles.SESSIONS, "plan", sessions, ArchiveReading::seatedIn, playerIds);
    known(ArchiveFiles.SESSIONS, "venue", sessions, each -> orNone(each.venue()), venueIds);
    known(ArchiveFiles.SESSIONS, "group", sessions, each -> orNone(each.group()), groupIds);
    known(
        ArchiveFiles.TEMPLATES,
        "plan",
        templates,
        each -> ClubContents.namedIn(each.getValue()).stream(),
        playerIds);
    known(
        ArchiveFiles.EVENTS,
        "session",
        events,
        each -> Stream.of(each.stamp().session()),
        sessionIds);
    known(ArchiveFiles.MERGED, "into", merged, each -> Stream.of(each.getValue()), playerIds);
  }

  private <T> List<Line<T>> json(String file, Function<JsonFields, T> reading) {
    return each(file, text -> JsonFields.read(text, reading));
  }

  private <T> List<Line<T>> pairs(String file, Function<JsonFields, T> reading) {
    return each(file, text -> ClubJson.readVersioned(text, reading));
  }

  private <T> List<Line<T>> each(String file, Function<String, T> reading) {
    List<Line<T>> read = new ArrayList<>();
    List<String> texts = lines.of(file);
    for (int at = 0; at < texts.size(); at++) {
      if (texts.get(at).isEmpty()) {
        continue;
      }
      try {
        read.add(new Line<>(at + 1, reading.apply(texts.get(at))));
      } catch (WrongJson problem) {
        add(file, at + 1, problem.field(), String.valueOf(problem.getMessage()));
      }
    }
    return read;
  }

  /** The line of each id; an id that comes twice is a problem. */
  private <T, K> Map<K, Integer> unique(String file, List<Line<T>> read, Function<T, K> identity) {
    Map<K, Integer> first = new HashMap<>();
    for (Line<T> line : read) {
      K id = identity.apply(line.value());
      Integer before = first.putIfAbsent(id, line.number());
      if (before != null) {
        add(file, line.number(), "id", "\"" + id + "\" stands in line " + before + " already.");
      }
    }
    return first;
  }

  private <T, K> void known(
      String file,
      String column,
      List<Line<T>> read,
      Function<T, Stream<K>> named,
      Map<K, Integer> known) {
    for (Line<T> line : read) {
      String strangers =
          named
              .apply(line.value())
              .filter(id -> !known.containsKey(id))
              .map(Object::toString)
              .sorted()
              .collect(Collectors.joining(", "));
      if (!strangers.isEmpty()) {
        add(
            file,
            line.number(),
            column,
            "This names " + strangers + ", which the export does not hold or holds wrongly.");
      }
    }
  }

  private void add(String file, int line, String column, String reason) {
    problems.add(new ImportProblem(file, line, column, reason));
  }

  private List<ImportProblem> inOrder() {
    return problems.stream()
        .sorted(
            java.util.Comparator.comparing(
                    (ImportProblem problem) -> ArchiveFiles.DATA.indexOf(problem.file()))
                .thenComparing(ImportProblem::line))
        .toList();
  }

  private static Stream<PlayerId> seatedIn(Session session) {
    return ClubContents.namedIn(session.plan()).stream();
  }

  private static <T> Stream<T> orNone(@org.jspecify.annotations.Nullable T value) {
    return value == null ? Stream.empty() : Stream.of(value);
  }

  private static Map.Entry<String, SessionPlan> template(JsonFields fields) {
    return Map.entry(
        fields.made("name", ArchiveReading::templateName), fields.inner("plan", PlanJson::plan));
  }

  private static String templateName(String name) {
    if (name.isBlank() || name.length() > Player.LONGEST_NAME) {
      throw new IllegalArgumentException(
          "The template's name \""
              + name
              + "\" must have 1 to "
              + Player.LONGEST_NAME
              + " characters.");
    }
    return name;
  }

  private static Map.Entry<String, String> setting(JsonFields fields) {
    return Map.entry(fields.made("name", ArchiveReading::openSetting), fields.text("content"));
  }

  private static String openSetting(String name) {
    if (name.startsWith(Settings.SECRET_PREFIX)) {
      throw new IllegalArgumentException(
          "The setting \"" + name + "\" is a secret and is not taken from a file.");
    }
    return name;
  }

  private static Map.Entry<DrillKey, String> drill(JsonFields fields) {
    return Map.entry(fields.made("key", DrillKey::new), fields.text("yaml"));
  }

  private static Mark mark(JsonFields fields) {
    return new Mark(fields.text("kind"), fields.text("id"));
  }

  private static Map.Entry<PlayerId, PlayerId> merged(JsonFields fields) {
    return Map.entry(fields.made("id", PlayerId::new), fields.made("into", PlayerId::new));
  }

  private static <T> List<T> values(List<Line<T>> read) {
    return read.stream().map(Line::value).toList();
  }

  private static <K, V> Map<K, V> map(List<Line<Map.Entry<K, V>>> read) {
    Map<K, V> map = new LinkedHashMap<>();
    read.forEach(line -> map.putIfAbsent(line.value().getKey(), line.value().getValue()));
    return map;
  }
}
