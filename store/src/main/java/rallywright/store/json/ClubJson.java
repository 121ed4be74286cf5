package rallywright.store.json;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import rallywright.engine.club.AgeGroup;
import rallywright.engine.club.Group;
import rallywright.engine.club.GroupId;
import rallywright.engine.club.Hand;
import rallywright.engine.club.Level;
import rallywright.engine.club.Limit;
import rallywright.engine.club.Player;
import rallywright.engine.club.PlayerId;
import rallywright.engine.club.Standing;
import rallywright.engine.club.Venue;
import rallywright.engine.club.VenueId;
import rallywright.engine.plan.SessionPlan;
import rallywright.engine.session.Session;
import rallywright.engine.session.SessionId;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Players, groups, venues, sessions and templates as JSON, one object a line. */
public final class ClubJson {

  private static final int VERSION = 1;

  private ClubJson() {}

  /**
   * A player as text.
   *
   * @param player the player
   * @return one JSON object on one line
   */
  public static String write(Player player) {
    ObjectNode tree = fresh();
    tree.put("id", player.id().value()).put("name", player.name());
    Level level = player.level();
    if (level != null) {
      tree.put("level", level.value());
    }
    tree.put("hand", player.hand().name());
    ArrayNode limits = tree.putArray("limits");
    player.limits().stream().sorted().forEach(limit -> limits.add(limit.name()));
    return tree.put("notes", player.notes())
        .put("ageGroup", player.ageGroup().name())
        .put("standing", player.standing().name())
        .toString();
  }

  /**
   * A player from the fields of a text.
   *
   * @param fields the fields
   * @return the player
   */
  public static Player player(JsonFields fields) {
    fields.version(VERSION);
    var level = fields.maybeNumber("level");
    return new Player(
        fields.made("id", PlayerId::new),
        fields.text("name"),
        level.isPresent() ? fields.ranged("level", () -> new Level(level.getAsDouble())) : null,
        fields.oneOf("hand", Hand.class),
        Set.copyOf(fields.listOf("limits", Limit.class)),
        fields.text("notes"),
        fields.oneOf("ageGroup", AgeGroup.class),
        fields.oneOf("standing", Standing.class));
  }

  /**
   * A group as text.
   *
   * @param group the group
   * @return one JSON object on one line
   */
  public static String write(Group group) {
    ObjectNode tree = fresh();
    tree.put("id", group.id().value()).put("name", group.name());
    ArrayNode members = tree.putArray("members");
    group.members().stream().map(PlayerId::value).sorted().forEach(members::add);
    return tree.toString();
  }

  /**
   * A group from the fields of a text.
   *
   * @param fields the fields
   * @return the group
   */
  public static Group group(JsonFields fields) {
    fields.version(VERSION);
    return new Group(
        fields.made("id", GroupId::new),
        fields.text("name"),
        Set.copyOf(fields.madeList("members", PlayerId::new)));
  }

  /**
   * A venue as text.
   *
   * @param venue the venue
   * @return one JSON object on one line
   */
  public static String write(Venue venue) {
    return fresh()
        .put("id", venue.id().value())
        .put("name", venue.name())
        .put("courts", venue.courts())
        .put("setting", venue.setting().name())
        .put("ball", venue.ball())
        .put("surface", venue.surface())
        .put("altitudeMetres", venue.altitudeMetres())
        .toString();
  }

  /**
   * A venue from the fields of a text.
   *
   * @param fields the fields
   * @return the venue
   */
  public static Venue venue(JsonFields fields) {
    fields.version(VERSION);
    return new Venue(
        fields.made("id", VenueId::new),
        fields.text("name"),
        fields.whole("courts"),
        fields.oneOf("setting", Venue.Setting.class),
        fields.text("ball"),
        fields.text("surface"),
        fields.number("altitudeMetres"));
  }

  /**
   * A session as text.
   *
   * @param session the session
   * @return one JSON object on one line
   */
  public static String write(Session session) {
    ObjectNode tree = fresh();
    tree.put("id", session.id().value())
        .put("name", session.name())
        .put("date", session.date().toString())
        .put("start", session.start().toString());
    VenueId venue = session.venue();
    if (venue != null) {
      tree.put("venue", venue.value());
    }
    GroupId group = session.group();
    if (group != null) {
      tree.put("group", group.value());
    }
    tree.put("state", session.state().name());
    tree.set("plan", PlanJson.tree(session.plan()));
    return tree.toString();
  }

  /**
   * A session from the fields of a text.
   *
   * @param fields the fields
   * @return the session
   */
  public static Session session(JsonFields fields) {
    fields.version(VERSION);
    return new Session(
        fields.made("id", SessionId::new),
        fields.text("name"),
        fields.made("date", LocalDate::parse),
        fields.made("start", LocalTime::parse),
        orNull(fields, "venue", VenueId::new),
        orNull(fields, "group", GroupId::new),
        fields.inner("plan", PlanJson::plan),
        fields.oneOf("state", Session.State.class));
  }

  /**
   * A template as text.
   *
   * @param name its name
   * @param plan its plan
   * @return one JSON object on one line
   */
  public static String writeTemplate(String name, SessionPlan plan) {
    ObjectNode tree = fresh().put("name", name);
    tree.set("plan", PlanJson.tree(plan));
    return tree.toString();
  }

  /**
   * A pair of texts as text, for settings, drills, marks and merged walk-ins.
   *
   * @param first the name of the first field
   * @param firstText its text
   * @param second the name of the second field
   * @param secondText its text
   * @return one JSON object on one line
   */
  public static String writePair(String first, String firstText, String second, String secondText) {
    return fresh().put(first, firstText).put(second, secondText).toString();
  }

  /**
   * A value from the fields of a text, after its version was checked.
   *
   * @param text one JSON object
   * @param reading takes the fields
   * @param <T> what is read
   * @return the value
   */
  public static <T> T readVersioned(String text, Function<JsonFields, T> reading) {
    return JsonFields.read(
        text,
        fields -> {
          fields.version(VERSION);
          return reading.apply(fields);
        });
  }

  private static ObjectNode fresh() {
    return JsonFields.fresh().put("v", VERSION);
  }

  private static <T> @Nullable T orNull(
      JsonFields fields, String name, Function<String, T> making) {
    return fields.maybeMade(name, making).orElse(null);
  }
}
