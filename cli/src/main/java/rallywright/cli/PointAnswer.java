package rallywright.cli;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import rallywright.cli.PointQuestion.Named;
import rallywright.cli.PointQuestion.Noted;
import rallywright.engine.drill.Skill;
import rallywright.engine.drill.SkillWeights;
import rallywright.engine.point.Breakdown;
import rallywright.engine.point.BreakdownLine;
import rallywright.engine.point.NotedRally;
import rallywright.engine.point.NotedRally.Expectation;
import rallywright.engine.point.PointGame;
import rallywright.engine.point.RallyChain.Winner;
import rallywright.engine.point.SkillWorths;
import rallywright.engine.point.StageContest;
import rallywright.engine.point.StageLearning;
import rallywright.engine.quantity.Probability;
import rallywright.engine.score.Ending.Stage;
import rallywright.engine.score.Partner;
import rallywright.engine.score.Side;

/** A point and its game, for scripts and for people. */
final class PointAnswer {

  private final PointQuestion question;
  private final PointGame game;
  private final Breakdown breakdown;

  private PointAnswer(PointQuestion asked) {
    StageLearning learning =
        StageLearning.from(
            asked.stages(),
            asked.clubEndings().stream().map(noted -> noted(noted, Expectation.EVEN)).toList());
    question = asked.withStages(learning.stages());
    game = question.game();
    breakdown =
        Breakdown.of(
            new Breakdown.Own(ofServer(Side.A), ofServer(Side.B), List.of()),
            new Breakdown.Others(learning, Map.of(), List.of()));
  }

  static PointAnswer to(PointQuestion question) {
    return new PointAnswer(question);
  }

  private static NotedRally noted(Noted noted, Expectation expectation) {
    return new NotedRally(expectation, noted.stage(), noted.role());
  }

  private List<NotedRally> ofServer(Side server) {
    Map<Stage, Double> edges = new EnumMap<>(Stage.class);
    for (Stage stage : Stage.values()) {
      StageContest contest = question.stages().of(stage);
      edges.put(
          stage,
          mean(question.players().of(server), contest.server())
              - mean(question.players().of(server.opponent()), contest.receiver()));
    }
    Expectation expectation = new Expectation(edges, Map.of());
    return question.endings().stream()
        .filter(noted -> noted.server() == server)
        .map(noted -> noted(noted, expectation))
        .toList();
  }

  private static double mean(List<Named> players, SkillWeights weights) {
    return players.stream()
        .mapToDouble(player -> player.skills().weighted(weights))
        .average()
        .orElse(0);
  }

  /** The answer as one object with unrounded numbers. */
  Map<String, Object> asJson() {
    Map<String, Object> answer = new LinkedHashMap<>();
    answer.put("play", PointQuestion.nameOf(question.play()));
    answer.put("stagesFrom", question.stages().source().words());
    answer.put("serveA", serving(Side.A));
    answer.put("serveB", serving(Side.B));
    answer.put("winA", game.winA());
    answer.put("stages", stages());
    answer.put("worth", worth());
    answer.put("derivatives", derivatives());
    answer.put("breakdown", lostRallies());
    return answer;
  }

  /** One chance for each player who serves; one number in games of two. */
  private Object serving(Side side) {
    List<Double> values = game.chances().values().stream().map(Probability::value).toList();
    int each = values.size() / 2;
    List<Double> own = values.subList(side == Side.A ? 0 : each, side == Side.A ? each : 2 * each);
    return each == 1 ? own.get(0) : own;
  }

  List<Map<String, Object>> stages() {
    List<Map<String, Object>> rows = new ArrayList<>();
    for (Side side : Side.values()) {
      for (Stage stage : Stage.values()) {
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("server", side.name().toLowerCase(Locale.ROOT));
        row.put("stage", PointQuestion.nameOf(stage));
        row.put("reached", game.reaches(side, stage));
        row.put("serverWins", game.endsIn(side, stage, Winner.SERVER));
        row.put("receiverWins", game.endsIn(side, stage, Winner.RECEIVER));
        rows.add(row);
      }
    }
    return rows;
  }

  /** The worth of each skill of a's players against an even side. */
  List<Map<String, Object>> worth() {
    List<Map<String, Object>> rows = new ArrayList<>();
    for (Named player : question.players().a()) {
      SkillWorths worths = SkillWorths.of(question.stages(), player.skills(), question.play());
      for (Skill skill : worths.ranked()) {
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("player", player.name());
        row.put("skill", PointQuestion.nameOf(skill));
        row.put("perLogit", worths.perLogit(skill));
        row.put("gamesIn100", worths.gamesIn100(skill));
        rows.add(row);
      }
    }
    return rows;
  }

  /** How a's chance to win this game changes with each skill of each player. */
  List<Map<String, Object>> derivatives() {
    PointGame.Slopes slopes = game.slopes();
    List<Map<String, Object>> rows = new ArrayList<>();
    for (Side side : Side.values()) {
      List<Named> players = question.players().of(side);
      for (int i = 0; i < players.size(); i++) {
        Partner who = i == 0 ? Partner.RIGHT_AT_EVEN : Partner.LEFT_AT_EVEN;
        for (Skill skill : Skill.values()) {
          Map<String, Object> row = new LinkedHashMap<>();
          row.put("player", players.get(i).name());
          row.put("side", side.name().toLowerCase(Locale.ROOT));
          row.put("skill", PointQuestion.nameOf(skill));
          row.put("perLogit", slopes.of(side, who, skill));
          rows.add(row);
        }
      }
    }
    return rows;
  }

  List<Map<String, Object>> lostRallies() {
    List<Map<String, Object>> rows = new ArrayList<>();
    for (BreakdownLine line : breakdown.lines()) {
      Map<String, Object> row = new LinkedHashMap<>();
      row.put("lost", line.topic().words());
      row.put("count", line.lost());
      row.put("of", line.of());
      row.put("share", line.share());
      row.put("low80", line.low());
      row.put("high80", line.high());
      row.put("expected", line.expected().mean());
      row.put("expectedSd", line.expected().sd());
      row.put("chance", line.chance());
      row.put("verdict", line.verdict().name().toLowerCase(Locale.ROOT).replace('_', '-'));
      rows.add(row);
    }
    return rows;
  }

  /** The answer in a few lines for people. */
  List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add(
        "A point of %s; stages: %s."
            .formatted(PointQuestion.nameOf(question.play()), question.stages().source().words()));
    for (Side side : Side.values()) {
      lines.add("When %s serves (rallies in 100):".formatted(side));
      for (Stage stage : Stage.values()) {
        lines.add(
            text(
                "  %-13s reached %5.1f, ends for the server %4.1f, for the receiver %4.1f",
                PointQuestion.nameOf(stage),
                100 * game.reaches(side, stage),
                100 * game.endsIn(side, stage, Winner.SERVER),
                100 * game.endsIn(side, stage, Winner.RECEIVER)));
      }
    }
    lines.add(text("A wins %.1f games to 11 in 100.", 100 * game.winA()));
    lines.add("What a small step (0.2) is worth, in games in 100 against an even side:");
    for (Map<String, Object> row : worth()) {
      lines.add(
          text(
              "  %-10s %-16s %4.1f",
              Objects.requireNonNull(row.get("player")),
              Objects.requireNonNull(row.get("skill")),
              Objects.requireNonNull(row.get("gamesIn100"))));
    }
    if (!question.endings().isEmpty()) {
      lines.add(
          breakdown.breakdowns().isEmpty()
              ? "Nothing stands out in the noted endings beyond what chance brings."
              : "What stands out in the noted endings:");
      breakdown.breakdowns().forEach(line -> lines.add("  " + line.sentence()));
    }
    return lines;
  }

  private static String text(String pattern, Object... values) {
    return String.format(Locale.ROOT, pattern, values);
  }
}
