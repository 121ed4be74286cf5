package rallywright.store.json;

import java.util.List;
import rallywright.engine.club.PlayerId;
import rallywright.engine.court.CourtLane;
import rallywright.engine.court.Lane;
import rallywright.engine.drill.DrillKey;
import rallywright.engine.drill.Role;
import rallywright.engine.plan.BlockId;
import rallywright.engine.plan.BlockTime;
import rallywright.engine.plan.GameId;
import rallywright.engine.plan.HeadStart;
import rallywright.engine.plan.PlannedBlock;
import rallywright.engine.plan.PlannedGame;
import rallywright.engine.plan.Seat;
import rallywright.engine.plan.SessionPlan;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** A session's plan as JSON. Players stand in it by id only, never by name. */
public final class PlanJson {

  private static final int VERSION = 1;

  private PlanJson() {}

  /**
   * A plan as text.
   *
   * @param plan the plan
   * @return one JSON object on one line
   */
  public static String write(SessionPlan plan) {
    return tree(plan).toString();
  }

  /**
   * A plan from text.
   *
   * @param text one JSON object
   * @return the plan
   * @throws WrongJson if the text is no plan of a known version
   */
  public static SessionPlan read(String text) {
    return JsonFields.read(text, PlanJson::plan);
  }

  /**
   * A plan as a tree, for a larger object around it.
   *
   * @param plan the plan
   * @return the object
   */
  public static ObjectNode tree(SessionPlan plan) {
    ObjectNode tree = JsonFields.fresh();
    tree.put("v", VERSION).put("minutes", plan.minutes()).put("courts", plan.courts());
    ids(tree.putArray("present"), plan.present());
    ArrayNode blocks = tree.putArray("blocks");
    plan.blocks().forEach(block -> blocks.add(tree(block)));
    return tree;
  }

  /**
   * A plan from its fields.
   *
   * @param fields the fields
   * @return the plan
   */
  public static SessionPlan plan(JsonFields fields) {
    fields.version(VERSION);
    return new SessionPlan(
        fields.whole("minutes"),
        fields.whole("courts"),
        fields.madeList("present", PlayerId::new),
        fields.inners("blocks", PlanJson::block));
  }

  private static ObjectNode tree(PlannedBlock block) {
    ObjectNode tree = JsonFields.fresh();
    tree.put("id", block.id().value())
        .put("kind", block.kind().name())
        .put("drill", block.drill().value())
        .put("end", block.end().name())
        .put("meanMinutes", block.time().mean())
        .put("sdMinutes", block.time().sd());
    ArrayNode games = tree.putArray("games");
    block.games().forEach(game -> games.add(tree(game)));
    ArrayNode sitting = tree.putArray("sitting");
    block.sitting().forEach(turn -> ids(sitting.addArray(), turn));
    return tree.put("reason", block.reason());
  }

  private static PlannedBlock block(JsonFields fields) {
    return new PlannedBlock(
        fields.made("id", BlockId::new),
        fields.oneOf("kind", PlannedBlock.Kind.class),
        fields.made("drill", DrillKey::new),
        fields.oneOf("end", PlannedBlock.End.class),
        new BlockTime(fields.number("meanMinutes"), fields.number("sdMinutes")),
        fields.inners("games", PlanJson::game),
        fields.madeLists("sitting", PlayerId::new),
        fields.text("reason"));
  }

  private static ObjectNode tree(PlannedGame game) {
    ObjectNode tree = JsonFields.fresh();
    tree.put("id", game.id().value())
        .put("turn", game.turn())
        .put("court", game.place().court())
        .put("lane", game.place().lane().name());
    tree.set("a", tree(game.a()));
    tree.set("b", tree(game.b()));
    return tree.put("headStartA", game.headStart().a()).put("headStartB", game.headStart().b());
  }

  private static PlannedGame game(JsonFields fields) {
    return new PlannedGame(
        fields.made("id", GameId::new),
        fields.whole("turn"),
        new CourtLane(fields.whole("court"), fields.oneOf("lane", Lane.class)),
        fields.inner("a", PlanJson::seat),
        fields.inner("b", PlanJson::seat),
        new HeadStart(fields.whole("headStartA"), fields.whole("headStartB")));
  }

  private static ObjectNode tree(Seat seat) {
    ObjectNode tree = JsonFields.fresh();
    tree.put("role", seat.role().name());
    ids(tree.putArray("players"), seat.players());
    return tree;
  }

  private static Seat seat(JsonFields fields) {
    return new Seat(fields.oneOf("role", Role.class), fields.madeList("players", PlayerId::new));
  }

  private static void ids(ArrayNode list, List<PlayerId> players) {
    players.forEach(player -> list.add(player.value()));
  }
}
