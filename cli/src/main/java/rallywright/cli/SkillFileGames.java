package rallywright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rallywright.engine.score.Goal;
import rallywright.engine.score.Score;
import rallywright.engine.score.WinBy;
import rallywright.engine.skill.Club;
import rallywright.engine.skill.Contest;
import rallywright.engine.skill.Evidence;
import rallywright.engine.skill.Game;
import rallywright.engine.skill.RalliesWon;
import rallywright.engine.skill.Result;
import rallywright.engine.skill.ScorePath;
import rallywright.engine.skill.Sides;
import rallywright.engine.skill.Weights;
import rallywright.engine.skill.YardstickResult;

/**
 * Reads the games and yardstick results of a {@link SkillFile}. Reading taken: in games in which
 * only the server scores, a drill's weights {@code a} belong to the server and {@code b} to the
 * receiver; in all others to side A and side B.
 */
final class SkillFileGames {

  private static final String SIDE_OUT = "side-out";
  private static final List<String> FORMATS = List.of("every-rally", SIDE_OUT);

  /** The usual target of a drill game where the file names none. */
  private static final int USUAL_TARGET = 5;

  private static final int MOST_BALLS = 10_000;

  private final JsonField root;
  private final Club club;
  private final int weeks;
  private final List<JsonField> drills;
  private final List<JsonField> yardsticks;

  private SkillFileGames(JsonField root, Club club, int weeks) {
    this.root = root;
    this.club = club;
    this.weeks = weeks;
    drills = root.list("drills");
    yardsticks = root.list("yardsticks");
  }

  static SkillFileGames of(JsonField root, Club club, int weeks) {
    return new SkillFileGames(root, club, weeks);
  }

  /** The largest number of a player who is named in any result, or −1. */
  static int largestPlayer(JsonField root) {
    Stream<JsonField> sides =
        root.list("games").stream().flatMap(game -> Stream.of(game.field("a"), game.field("b")));
    Stream<JsonField> tested =
        root.list("yardstickResults").stream().map(result -> result.field("player"));
    return Stream.concat(sides.flatMap(SkillFileGames::members), tested)
        .mapToInt(player -> player.integer(0, SkillFile.MOST_PLAYERS - 1))
        .max()
        .orElse(-1);
  }

  private static Stream<JsonField> members(JsonField side) {
    return side.isList() ? side.elements().stream() : Stream.of(side);
  }

  List<Evidence> evidence() {
    List<Contest> bySide = new ArrayList<>();
    List<Contest> byServe = new ArrayList<>();
    for (int drill = 0; drill < drills.size(); drill++) {
      bySide.add(contest(drill, Contest.Roles.BY_SIDE));
      byServe.add(contest(drill, Contest.Roles.BY_SERVE));
    }
    List<Evidence> evidence = new ArrayList<>();
    for (JsonField game : root.list("games")) {
      evidence.add(isSideOut(game) ? game(game, byServe) : game(game, bySide));
    }
    yardsticks.forEach(this::skillOf);
    for (JsonField result : root.list("yardstickResults")) {
      evidence.add(yardstick(result));
    }
    return evidence;
  }

  private static boolean isSideOut(JsonField game) {
    return game.optional("format").map(f -> f.oneOf(FORMATS)).orElse("").equals(SIDE_OUT);
  }

  private Contest contest(int drill, Contest.Roles roles) {
    JsonField field = drills.get(drill);
    return new Contest(weights(field.field("a")), weights(field.field("b")), roles, List.of(drill));
  }

  private Weights weights(JsonField field) {
    return Weights.of(
        field.elements(club.skills().skills()).stream()
            .mapToDouble(weight -> weight.number(0, 1))
            .toArray());
  }

  private Game game(JsonField field, List<Contest> contests) {
    int week = field.field("week").integer(0, weeks - 1);
    int drill = index(field.field("drill"), drills.size(), "drills");
    List<Integer> a = players(field.field("a"));
    List<Integer> b = players(field.field("b"));
    try {
      Result result = isSideOut(field) ? sideOut(field) : everyRally(field);
      return new Game(week, contests.get(drill), new Sides(a, b), result);
    } catch (IllegalArgumentException refusal) {
      throw field.refused(refusal);
    }
  }

  private static int index(JsonField field, int count, String list) {
    if (count == 0) {
      throw field.wrong(
          "the number of an entry of " + list + ", of which there are none", "add " + list);
    }
    return field.integer(0, count - 1);
  }

  private List<Integer> players(JsonField side) {
    return members(side).map(player -> index(player, club.entrants().size(), "levels")).toList();
  }

  private static Score start(JsonField field) {
    return field
        .optional("start")
        .map(start -> start.elements(2))
        .map(pair -> Score.of(points(pair.get(0)), points(pair.get(1))))
        .orElse(Score.LOVE_ALL);
  }

  private static Score end(JsonField field) {
    return Score.of(points(field.field("aPoints")), points(field.field("bPoints")));
  }

  private static int points(JsonField field) {
    return field.integer(0, Goal.MAX_TARGET);
  }

  private Result everyRally(JsonField field) {
    Score start = start(field);
    Score end = end(field);
    boolean called = field.optional("timeCalled").map(JsonField::flag).orElse(false);
    if (!called && rule(field, "target").isPresent() && goal(field, end).winnerAt(end).isEmpty()) {
      throw notOver(field, end);
    }
    if (end.a() < start.a() || end.b() < start.b()) {
      throw field.wrong(
          "a score not below the head start (%s)".formatted(start),
          "the head start was left out of the score");
    }
    return RalliesWon.between(start, end);
  }

  private WrongInput notOver(JsonField field, Score end) {
    return field.wrong(
        "a score at which a game %s is over".formatted(goal(field, end).label()),
        "\"timeCalled\": true is missing");
  }

  private Result sideOut(JsonField field) {
    Score end = end(field);
    boolean called = field.optional("timeCalled").map(JsonField::flag).orElse(false);
    ScorePath path =
        new ScorePath(
            ScorePath.Counting.SERVER_ONLY,
            start(field),
            end,
            called && rule(field, "target").isEmpty()
                ? Goal.firstTo(Goal.MAX_TARGET)
                : goal(field, end),
            called ? ScorePath.Ending.TIME_CALLED : ScorePath.Ending.FINISHED,
            firstServer(field));
    return field
        .optional("rallies")
        .<Result>map(rallies -> RallyLog.of(rallies).checkedAgainst(path))
        .orElse(path);
  }

  private static ScorePath.FirstServer firstServer(JsonField field) {
    return field
        .optional("firstServer")
        .map(server -> server.oneOf(List.of("a", "b")))
        .map(server -> server.equals("a") ? ScorePath.FirstServer.A : ScorePath.FirstServer.B)
        .orElse(ScorePath.FirstServer.UNKNOWN);
  }

  /** A rule as the game names it, else its drill, else the file. */
  private Optional<JsonField> rule(JsonField field, String name) {
    JsonField drill = drills.get(field.field("drill").integer(0, drills.size() - 1));
    return field.optional(name).or(() -> drill.optional(name)).or(() -> root.optional(name));
  }

  /** The goal that the file names; else to 5, or to the points of a higher score. */
  private Goal goal(JsonField field, Score end) {
    int reached = Math.max(end.a(), end.b());
    int target =
        rule(field, "target")
            .map(t -> t.integer(1, Goal.MAX_TARGET))
            .orElse(Math.max(USUAL_TARGET, reached));
    int winBy = rule(field, "winBy").map(w -> w.integer(1, 2)).orElse(1);
    return Goal.firstTo(target).withWinBy(winBy == 1 ? WinBy.ONE : WinBy.TWO);
  }

  private int skillOf(JsonField yardstick) {
    return yardstick.field("skill").integer(0, club.skills().skills() - 1);
  }

  private YardstickResult yardstick(JsonField field) {
    int week = field.field("week").integer(0, weeks - 1);
    int yardstick = index(field.field("yardstick"), yardsticks.size(), "yardsticks");
    int player = index(field.field("player"), club.entrants().size(), "levels");
    int skill = skillOf(yardsticks.get(yardstick));
    int balls = field.field("balls").integer(0, MOST_BALLS);
    int hits = field.field("hits").integer(0, balls);
    return new YardstickResult(
        week, new YardstickResult.Test(player, skill, drills.size() + yardstick), hits, balls);
  }
}
