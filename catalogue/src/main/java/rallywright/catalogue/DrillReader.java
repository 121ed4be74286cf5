package rallywright.catalogue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rallywright.engine.court.Direction;
import rallywright.engine.drill.Advice;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.DrillForm;
import rallywright.engine.drill.DrillKey;
import rallywright.engine.drill.DrillKind;
import rallywright.engine.drill.DrillSide;
import rallywright.engine.drill.Feed;
import rallywright.engine.drill.Intensity;
import rallywright.engine.drill.Layout;
import rallywright.engine.drill.Progression;
import rallywright.engine.drill.RallySeconds;
import rallywright.engine.drill.Role;
import rallywright.engine.drill.RoleAdvantage;
import rallywright.engine.drill.SecondsPrior;
import rallywright.engine.drill.Serving;
import rallywright.engine.quantity.Source;
import rallywright.engine.score.BySide;
import rallywright.engine.score.GameFormat;
import rallywright.engine.score.RoundThePost;

/** Reads a drill from its file. */
final class DrillReader {

  private static final List<String> WORDS =
      List.of("key", "name", "kind", "progression", "purpose", "rule", "intensity");
  private static final List<String> ADVICE = List.of("equipment", "cues", "mistakes", "safety");
  private static final List<String> ON_COURT = List.of("players", "directions", "feed", "sides");
  private static final List<String> GAME = List.of("game", "seconds");
  private static final List<String> GAME_EXTRAS = List.of("round-the-post", "advantage");

  private DrillReader() {}

  static Drill read(Entry file) {
    DrillKind kind = kind(file);
    Block block = block(file, kind);
    DrillForm form = kind.isScored() ? scored(block) : timed(block);
    Advice advice = advice(block);
    DrillKey key = block.get("key").make(() -> new DrillKey(block.get("key").text()));
    return file.make(
        () ->
            new Drill(
                key,
                block.get("name").text(),
                block.get("purpose").text(),
                block.get("rule").text(),
                kind,
                block.get("progression").choice(Progression.class),
                form,
                block.get("intensity").choice(Intensity.class),
                advice));
  }

  private static DrillKind kind(Entry file) {
    return Block.open(file)
        .find("kind")
        .orElseThrow(
            () ->
                file.problem(
                    "\"drill\" has no \"kind\", which must be one of: %s. Maybe \"scored-game\"."
                        .formatted(String.join(", ", Choice.words(DrillKind.class)))))
        .choice(DrillKind.class);
  }

  private static Block block(Entry file, DrillKind kind) {
    List<String> required = new ArrayList<>(WORDS);
    required.addAll(ADVICE);
    List<String> optional = new ArrayList<>();
    if (kind.isScored()) {
      required.addAll(ON_COURT);
      required.addAll(GAME);
      optional.addAll(GAME_EXTRAS);
    } else {
      required.add("minutes");
      (kind == DrillKind.GENERAL_WARM_UP ? optional : required).addAll(ON_COURT);
    }
    return Block.of(file, required, optional);
  }

  static Advice advice(Block block) {
    return block
        .get("safety")
        .make(
            () ->
                new Advice(
                    block.get("equipment").texts(),
                    block.get("cues").texts(),
                    block.get("mistakes").texts(),
                    block.get("safety").texts()));
  }

  private static DrillForm timed(Block block) {
    Entry minutes = block.get("minutes");
    Optional<Layout> layout = block.find("sides").map(sides -> layout(block, sides));
    Optional<Feed> feed = block.find("feed").map(DrillReader::feed);
    return minutes.make(() -> new DrillForm.Timed(layout, feed, minutes.number()));
  }

  private static DrillForm scored(Block block) {
    Layout layout = layout(block, block.get("sides"));
    Feed feed = feed(block.get("feed"));
    GameReader.Counting counting = GameReader.counting(block.get("game"));
    RallySeconds seconds = seconds(block.get("seconds"));
    RoundThePost roundThePost =
        block
            .find("round-the-post")
            .map(entry -> entry.choice(RoundThePost.class))
            .orElse(RoundThePost.NOT_ALLOWED);
    RoleAdvantage advantage =
        block.find("advantage").map(DrillReader::advantage).orElse(RoleAdvantage.NONE);
    Entry place = block.find("advantage").orElse(block.get("game"));
    return place.make(
        () -> scored(layout, feed, counting, roundThePost, new Priors(advantage, seconds)));
  }

  private record Priors(RoleAdvantage advantage, RallySeconds seconds) {}

  private static DrillForm scored(
      Layout layout,
      Feed feed,
      GameReader.Counting counting,
      RoundThePost roundThePost,
      Priors priors) {
    GameFormat format = counting.format();
    Serving serving = counting.serving();
    return new DrillForm.Scored(
        layout, feed, format, serving, roundThePost, priors.advantage(), priors.seconds());
  }

  private static Layout layout(Block block, Entry sides) {
    List<Direction> directions = new ArrayList<>();
    if (block.find("directions").isEmpty()) {
      throw sides.problem("Sides need \"directions\". Maybe add \"directions: [straight]\".");
    }
    for (Entry each : block.get("directions").entries()) {
      directions.add(each.choice(Direction.class));
    }
    BySide<DrillSide> both = sides(sides);
    Layout layout = sides.make(() -> new Layout(directions, both));
    block
        .find("players")
        .filter(players -> players.whole() != layout.players())
        .ifPresent(
            players -> {
              throw players.problem(
                  "\"players\" is %d, but the sides place %d. Maybe %d was meant."
                      .formatted(players.whole(), layout.players(), layout.players()));
            });
    return layout;
  }

  /** One side, if both do the same; else two in the order in which the advantage is told. */
  private static BySide<DrillSide> sides(Entry entry) {
    List<DrillSide> sides = entry.entries().stream().map(SideReader::read).toList();
    if (sides.size() == 1 && sides.get(0).role() == Role.EVEN) {
      return BySide.both(sides.get(0));
    }
    if (sides.size() == 2) {
      return BySide.of(sides.get(0), sides.get(1));
    }
    throw entry.problem(
        "\"sides\" must be one even side or two roles, but %d %s given. Maybe %s."
            .formatted(
                sides.size(),
                sides.size() == 1 ? "with a role of its own was" : "were",
                sides.size() == 1 ? "add the other role" : "keep two"));
  }

  private static Feed feed(Entry entry) {
    Block block = Block.of(entry, List.of("by", "how"), List.of());
    Feed.By by = block.get("by").choice(Feed.By.class);
    return block.get("how").make(() -> new Feed(by, block.get("how").text()));
  }

  private static RoleAdvantage advantage(Entry entry) {
    Block block = Block.of(entry, List.of("logit", "sd", "source"), List.of());
    return entry.make(
        () ->
            new RoleAdvantage(
                block.get("logit").number(),
                block.get("sd").number(),
                new Source(block.get("source").text())));
  }

  private static RallySeconds seconds(Entry entry) {
    Block block = Block.of(entry, List.of("in-play", "between", "source"), List.of());
    return entry.make(
        () ->
            new RallySeconds(
                seconds(block, "in-play"),
                seconds(block, "between"),
                new Source(block.get("source").text())));
  }

  static SecondsPrior seconds(Block whole, String name) {
    Entry entry = whole.get(name);
    Block block = Block.of(entry, List.of("mean", "sd"), List.of());
    return entry.make(() -> new SecondsPrior(block.get("mean").number(), block.get("sd").number()));
  }
}
