package rallywright.web.oncourt;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;
import rallywright.engine.club.PlayerId;
import rallywright.engine.drill.Advice;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.DrillForm;
import rallywright.engine.drill.Feed;
import rallywright.engine.drill.Yardstick;
import rallywright.engine.plan.PlannedBlock;
import rallywright.engine.plan.PlannedGame;
import rallywright.engine.plan.Seat;
import rallywright.engine.score.BySide;
import rallywright.engine.score.GameFormat;
import rallywright.engine.score.Places;
import rallywright.engine.score.RoundThePost;
import rallywright.engine.score.ServiceCourt;
import rallywright.engine.score.Side;
import rallywright.paper.FirstNames;
import rallywright.paper.LanePicture;
import rallywright.web.page.Units;
import rallywright.web.weather.ExpectedWeather;

/**
 * The plan as phones may see it: first names, places, rules. The reasons of the plan, notes and
 * limits stay at the desk.
 */
final class PhonePlan {

  private static final List<String> CAUTIONS =
      List.of(
          "Stop at pain; see a physician or physiotherapist.",
          "A second ball rolls in: call \"ball\", stop, replay.",
          "A lob: turn and run, never back-pedal.",
          "Eye protection and court shoes. Drink at every break.");

  private final OpenSession open;
  private final FirstNames names;
  private final Map<String, String> drawn = new LinkedHashMap<>();

  private PhonePlan(OpenSession open) {
    this.open = open;
    this.names = open.names();
  }

  /** The plan as an object that becomes JSON. */
  static Map<String, Object> of(OpenSession open, Units units, ExpectedWeather expected) {
    return new PhonePlan(open).session(units, expected);
  }

  private Map<String, Object> session(Units units, ExpectedWeather expected) {
    Map<String, Object> plan = new LinkedHashMap<>();
    plan.put("name", open.session().name());
    plan.put("indoors", open.isIndoors());
    plan.put("units", units.name());
    plan.put(
        "players",
        open.plan().present().stream()
            .map(id -> Map.of("id", id.value(), "name", names.of(id)))
            .toList());
    plan.put("cautions", CAUTIONS);
    plan.put("weather", PhoneWeather.of(expected));
    plan.put("blocks", open.plan().blocks().stream().map(this::block).toList());
    plan.put("drawings", drawn);
    return plan;
  }

  private Map<String, Object> block(PlannedBlock block) {
    Optional<Drill> drill = open.drill(block);
    Optional<Yardstick> yardstick = open.yardstick(block);
    Map<String, Object> out = new LinkedHashMap<>();
    out.put("id", block.id().value());
    out.put("kind", block.kind().name());
    out.put("title", open.title(block));
    out.put("rule", drill.map(Drill::rule).or(() -> yardstick.map(Yardstick::setUp)).orElse(""));
    out.put("cues", cues(drill.map(Drill::advice).or(() -> yardstick.map(Yardstick::advice))));
    out.put("end", block.end().name());
    out.put("minutes", block.time().mean());
    out.put(
        "yardstick",
        yardstick.map(test -> Map.of("balls", test.balls(), "hit", test.hit())).orElse(null));
    out.put("drawing", yardstick.flatMap(LanePicture::of).map(svg -> keep(block, svg)).orElse(""));
    out.put(
        "sitting",
        block.sitting().stream().map(turn -> turn.stream().map(names::of).toList()).toList());
    out.put("games", block.games().stream().map(game -> game(block, game)).toList());
    return out;
  }

  private static List<String> cues(Optional<Advice> advice) {
    List<String> cues = new ArrayList<>();
    advice.ifPresent(
        words -> {
          cues.addAll(words.cues());
          cues.addAll(words.safety());
        });
    return cues;
  }

  private Map<String, Object> game(PlannedBlock block, PlannedGame game) {
    Optional<DrillForm.Scored> scored = open.drill(block).flatMap(Drill::scored);
    GameFormat format = open.formatOf(block, game);
    Map<String, Object> out = new LinkedHashMap<>();
    out.put("id", game.id().value());
    out.put("turn", game.turn());
    out.put("lane", game.place().court() + " " + game.place().lane().name());
    out.put("place", game.place().words());
    out.put("direction", game.place().lane().direction().words());
    out.put("drawing", drawing(block, game));
    out.put("a", seat(game.a(), scored, Side.A));
    out.put("b", seat(game.b(), scored, Side.B));
    out.put("headStart", List.of(game.headStart().a(), game.headStart().b()));
    out.put("format", format(format));
    out.put("counted", format.goal().label() + ", " + format.scoring().label());
    out.put("feed", scored.map(form -> feed(form.feed())).orElse("TURN"));
    out.put(
        "roundThePost",
        scored
            .map(form -> form.roundThePostIn(game.place().lane().direction()))
            .filter(reading -> reading == RoundThePost.LEGAL_ON_FULL_COURT)
            .isPresent());
    return out;
  }

  private String keep(PlannedBlock block, String svg) {
    drawn.put(block.drill().value(), svg);
    return block.drill().value();
  }

  private String drawing(PlannedBlock block, PlannedGame game) {
    return open.drill(block)
        .flatMap(drill -> LanePicture.of(drill, game.place().lane()))
        .map(
            svg -> {
              String key = block.drill().value() + " " + game.place().lane().name();
              drawn.put(key, svg);
              return key;
            })
        .orElse("");
  }

  private Map<String, Object> seat(Seat seat, Optional<DrillForm.Scored> scored, Side side) {
    String task = scored.map(form -> form.layout().sides().of(side).task()).orElse("");
    return Map.of(
        "ids", seat.players().stream().map(PlayerId::value).toList(),
        "names", seat.players().stream().map(names::of).toList(),
        "role", seat.role().words(),
        "task", task);
  }

  private static String feed(Feed feed) {
    return switch (feed.by()) {
      case FIRST_ROLE -> "A";
      case SECOND_ROLE -> "B";
      case RALLY_WINNER -> "WINNER";
      case IN_TURN -> "TURN";
      case SERVER -> "SERVE";
    };
  }

  /** A format as the phone's scoring takes it. */
  static Map<String, Object> format(GameFormat format) {
    OptionalInt cap = format.goal().cap();
    Map<String, Object> out = new LinkedHashMap<>();
    out.put("scoring", format.scoring().name());
    out.put("places", places(format.places()));
    out.put("courts", courts(format.places()));
    out.put("targets", List.of(format.goal().targets().a(), format.goal().targets().b()));
    out.put("winBy", format.goal().winBy().points());
    out.put("cap", cap.isPresent() ? cap.getAsInt() : null);
    out.put("start", List.of(format.start().a(), format.start().b()));
    out.put("firstServer", format.firstServer().name());
    out.put("ends", format.ends().name());
    return out;
  }

  private static String places(Places places) {
    if (places instanceof Places.Pairs) {
      return "PAIRS";
    }
    return places instanceof Places.FixedLane ? "FIXED_LANE" : "BY_SCORE";
  }

  private static @Nullable List<String> courts(Places places) {
    if (places instanceof Places.FixedLane lane) {
      BySide<ServiceCourt> courts = lane.courts();
      return List.of(courts.a().name(), courts.b().name());
    }
    return null;
  }
}
