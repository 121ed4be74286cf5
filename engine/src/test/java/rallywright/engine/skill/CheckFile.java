package rallywright.engine.skill;

import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import rallywright.engine.score.Goal;
import rallywright.engine.score.Score;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A check file of published/skill-checks: data, and what an independent program made of them. */
final class CheckFile {
  final JsonNode root;
  final Club club;
  final SkillPrior prior;
  final List<Evidence> evidence = new ArrayList<>();
  final Set<Integer> weeks;

  private CheckFile(JsonNode root) {
    this.root = root;
    weeks = IntStream.range(0, root.get("weeks").asInt()).boxed().collect(Collectors.toSet());
    prior =
        new SkillPrior(
            root.get("sigmaL").asDouble(),
            root.get("sigmaG").asDouble(),
            root.get("sigmaS").asDouble(),
            root.get("tau").asDouble(),
            root.get("beta").asDouble(),
            0.4);
    List<Integer> groups = new ArrayList<>();
    root.get("group").forEach(group -> groups.add(group.asInt()));
    List<Entrant> entrants = new ArrayList<>();
    root.get("levels")
        .forEach(level -> entrants.add(new Entrant(OptionalDouble.of(level.asDouble()), 0)));
    List<SharedEffect> effects = new ArrayList<>();
    boolean learn = root.get("learnDrillEffects").asBoolean();
    root.get("drills").forEach(drill -> effects.add(effect(drill, "alpha", learn)));
    root.get("yardsticks").forEach(yardstick -> effects.add(effect(yardstick, "b", learn)));
    club = new Club(new SkillGroups(groups), entrants, effects);
    root.get("games").forEach(game -> evidence.add(game(game)));
    root.get("yardstickResults").forEach(result -> evidence.add(yardstick(result)));
  }

  static CheckFile read(String name) throws Exception {
    try (InputStream in = CheckFile.class.getResourceAsStream("/published/skill-checks/" + name)) {
      return new CheckFile(new JsonMapper().readTree(in));
    }
  }

  Posterior fit() {
    return SkillModel.of(club, prior).fit(evidence, weeks);
  }

  private static SharedEffect effect(JsonNode node, String mean, boolean learn) {
    double sd = learn ? node.get(mean + "Sd").asDouble() : 0;
    return new SharedEffect(node.get("name").asString(), node.get(mean).asDouble(), sd);
  }

  private static Weights weights(JsonNode node) {
    return Weights.of(node.valueStream().mapToDouble(JsonNode::asDouble).toArray());
  }

  private static List<Integer> players(JsonNode node) {
    return node.valueStream().map(JsonNode::asInt).toList();
  }

  private Game game(JsonNode node) {
    int number = node.get("drill").asInt();
    JsonNode drill = root.get("drills").get(number);
    boolean sideOut = node.path("format").asString("every-rally").equals("side-out");
    Contest contest =
        new Contest(
            weights(drill.get("a")),
            weights(drill.get("b")),
            sideOut ? Contest.Roles.BY_SERVE : Contest.Roles.BY_SIDE,
            List.of(number));
    return new Game(
        node.get("week").asInt(),
        contest,
        new Sides(players(node.get("a")), players(node.get("b"))),
        sideOut ? sideOut(node) : everyRally(node));
  }

  private static Result everyRally(JsonNode node) {
    Score start =
        node.has("start")
            ? Score.of(node.get("start").get(0).asInt(), node.get("start").get(1).asInt())
            : Score.LOVE_ALL;
    return RalliesWon.between(
        start, Score.of(node.get("aPoints").asInt(), node.get("bPoints").asInt()));
  }

  private static Result sideOut(JsonNode node) {
    if (node.has("rallies")) {
      List<String> rallies = node.get("rallies").valueStream().map(JsonNode::asString).toList();
      return new RalliesByServer(
          (int) rallies.stream().filter(rally -> rally.startsWith("a")).count(),
          (int) rallies.stream().filter("aa"::equals).count(),
          (int) rallies.stream().filter(rally -> rally.startsWith("b")).count(),
          (int) rallies.stream().filter("bb"::equals).count());
    }
    return new ScorePath(
        ScorePath.Counting.SERVER_ONLY,
        Score.LOVE_ALL,
        Score.of(node.get("aPoints").asInt(), node.get("bPoints").asInt()),
        Goal.firstTo(5),
        ScorePath.Ending.FINISHED,
        ScorePath.FirstServer.valueOf(node.get("firstServer").asString().equals("a") ? "A" : "B"));
  }

  private YardstickResult yardstick(JsonNode node) {
    int number = node.get("yardstick").asInt();
    return new YardstickResult(
        node.get("week").asInt(),
        new YardstickResult.Test(
            node.get("player").asInt(),
            root.get("yardsticks").get(number).get("skill").asInt(),
            root.get("drills").size() + number),
        node.get("hits").asInt(),
        node.get("balls").asInt());
  }
}
