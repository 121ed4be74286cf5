package rallywright.web.oncourt;

import jakarta.servlet.http.HttpServletRequest;
import java.time.InstantSource;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import rallywright.engine.plan.BlockId;
import rallywright.engine.score.BySide;
import rallywright.engine.score.GameState;
import rallywright.engine.score.Partner;
import rallywright.engine.score.Side;
import rallywright.engine.session.CourtEvent;
import rallywright.engine.session.GameProgress;
import rallywright.engine.session.SessionId;
import rallywright.store.json.EventJson;
import rallywright.store.json.PlanJson;
import rallywright.web.page.UnitChoice;
import rallywright.web.signin.Visitor;
import rallywright.web.weather.WeatherBook;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * Where a session stands, for phones: the events that a phone does not have yet, from which it
 * works out the games itself; the games as the engine sees them come along where they are asked
 * for. The plan comes along only where the phone has another one.
 */
@RestController
final class CourtStates {

  private static final JsonMapper JSON = JsonMapper.builder().build();

  private final SessionDesk desk;
  private final CourtAccess access;
  private final UnitChoice units;
  private final WeatherBook weather;
  private final CourtApp app;
  private final InstantSource clock = InstantSource.system();
  private final SentPlans plans = new SentPlans();

  CourtStates(
      SessionDesk desk, CourtAccess access, UnitChoice units, WeatherBook weather, CourtApp app) {
    this.desk = desk;
    this.access = access;
    this.units = units;
    this.weather = weather;
    this.app = app;
  }

  @GetMapping(path = "/court/{session}/state", produces = MediaType.APPLICATION_JSON_VALUE)
  ResponseEntity<String> state(
      @PathVariable String session,
      @RequestParam(defaultValue = "0") int since,
      @RequestParam(defaultValue = "") String plan,
      @RequestParam(defaultValue = "") String games,
      HttpServletRequest request) {
    SessionId id = access.allowed(session, request);
    OpenSession open = desk.find(id).orElseThrow(() -> CourtAccess.notHere(session));
    String mark = open.cast().planMark(() -> mark(open));
    int from = since < 0 || since > open.events().size() ? 0 : since;
    Map<String, Object> out = new LinkedHashMap<>();
    out.put("v", 1);
    out.put("form", EventForm.CURRENT);
    out.put("build", app.build());
    out.put("now", clock.millis());
    boolean coach = Visitor.of(request.getUserPrincipal()) instanceof Visitor.Coach;
    out.put("visitor", coach ? "coach" : "phone");
    out.put("session", id.value());
    out.put("state", open.session().state().name());
    out.put("current", open.progress().current().map(BlockId::value).orElse(null));
    out.put("ended", open.progress().isEnded());
    if (!games.isEmpty()) {
      out.put("games", open.progress().games().stream().map(CourtStates::game).toList());
    }
    out.put("from", from);
    out.put("events", events(open, from, coach));
    out.put("planMark", mark);
    if (!mark.equals(plan)) {
      out.put(
          "plan", plans.of(id, mark, () -> PhonePlan.of(open, units.current(), weather.of(id))));
    }
    return ResponseEntity.ok(JSON.writeValueAsString(out));
  }

  /** Tells one plan from another; also names and drills are part of what a phone shows. */
  private String mark(OpenSession open) {
    int mark =
        31 * PlanJson.write(open.plan()).hashCode()
            + open.players().stream().map(player -> player.name()).toList().hashCode()
            + units.current().name().hashCode()
            + weather.of(open.session().id()).hashCode();
    return Integer.toHexString(mark);
  }

  private static List<JsonNode> events(OpenSession open, int from, boolean coach) {
    return open.events().subList(from, open.events().size()).stream()
        .<JsonNode>map(event -> shown(event, coach))
        .toList();
  }

  /** A note may say anything of anybody: only the coach reads it; others learn that it is there. */
  private static JsonNode shown(CourtEvent event, boolean coach) {
    ObjectNode tree = EventJson.tree(event);
    if (event instanceof CourtEvent.NoteWritten && !coach) {
      tree.remove(List.of("text", "player", "block"));
    }
    return tree;
  }

  private static Map<String, Object> game(GameProgress game) {
    Map<String, Object> out = new LinkedHashMap<>();
    out.put("id", game.game().id().value());
    out.put("status", game.status().name());
    out.put("a", game.score().a());
    out.put("b", game.score().b());
    out.put("rallies", game.rallies().size());
    out.put("last", game.lastEvent().map(event -> event.value()).orElse(null));
    game.state().ifPresent(state -> putServe(out, state));
    return out;
  }

  private static void putServe(Map<String, Object> out, GameState state) {
    out.put("call", state.call());
    out.put("server", state.serve().side().name());
    out.put("serverNumber", state.serve().number().called());
    out.put("serverPartner", state.serve().server().name());
    out.put("serverCourt", state.serverCourt().name());
    out.put("receiver", state.receiver().name());
    out.put("changeEnds", state.changeOfEnds() == GameState.ChangeOfEnds.CHANGE_NOW);
    BySide<List<String>> courts =
        BySide.of(Side.A, Side.B)
            .map(
                side ->
                    List.of(
                        state.courtOf(side, Partner.RIGHT_AT_EVEN).name(),
                        state.courtOf(side, Partner.LEFT_AT_EVEN).name()));
    out.put("courts", List.of(courts.a(), courts.b()));
  }
}
