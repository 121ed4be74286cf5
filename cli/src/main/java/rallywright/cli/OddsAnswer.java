package rallywright.cli;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import rallywright.cli.OddsQuestion.Given;
import rallywright.cli.OddsQuestion.Shape;
import rallywright.engine.odds.FairGame;
import rallywright.engine.odds.GameOdds;
import rallywright.engine.odds.HeadStartSearch;
import rallywright.engine.odds.RallyLengths;
import rallywright.engine.odds.RallyMoments;
import rallywright.engine.odds.ScoreDistribution;
import rallywright.engine.odds.ScoreDistribution.ScoreChance;
import rallywright.engine.score.Score;
import rallywright.engine.score.Side;

/** The odds of a game, for scripts and for people. */
final class OddsAnswer {

  private static final int SCORES_SHOWN = 6;

  private final OddsQuestion question;
  private final GameOdds odds;
  private final RallyLengths lengths;
  private final Optional<FairGame> fair;

  private OddsAnswer(OddsQuestion question) {
    this.question = question;
    odds =
        GameOdds.of(question.format(), question.chances()).from(question.score(), question.serve());
    lengths = odds.lengths(0.9);
    fair =
        question
            .fair()
            .map(
                wish ->
                    HeadStartSearch.fairest(
                        question.format(), question.chances(), wish, question.firstServe()));
  }

  static OddsAnswer to(OddsQuestion question) {
    return new OddsAnswer(question);
  }

  /** The answer as one object with unrounded numbers. */
  Map<String, Object> asJson() {
    RallyMoments moments = odds.rallies();
    Map<String, Object> rallies = new LinkedHashMap<>();
    rallies.put("mean", moments.mean());
    rallies.put("sd", moments.sd());
    rallies.put("p10", lengths.quantile(0.1));
    rallies.put("p50", lengths.quantile(0.5));
    rallies.put("p90", lengths.quantile(0.9));
    ScoreDistribution distribution = odds.scores();
    Map<String, Object> answer = new LinkedHashMap<>();
    answer.put("winA", odds.winChance(Side.A));
    answer.put("rallies", rallies);
    answer.put("scores", distribution.scores().stream().map(OddsAnswer::scoreAsJson).toList());
    answer.put("tail", distribution.tail());
    answer.put("derivatives", derivatives());
    fair.ifPresent(found -> addFair(answer, found));
    return answer;
  }

  private static Map<String, Object> scoreAsJson(ScoreChance listed) {
    Map<String, Object> entry = new LinkedHashMap<>();
    entry.put("a", listed.score().a());
    entry.put("b", listed.score().b());
    entry.put("chance", listed.chance());
    return entry;
  }

  private Map<String, Object> derivatives() {
    List<Double> slopes = odds.winSlopes();
    Map<String, Object> derivatives = new LinkedHashMap<>();
    for (Given given : question.given()) {
      List<Double> own = given.places().stream().map(slopes::get).toList();
      double together = own.stream().mapToDouble(Double::doubleValue).sum();
      derivatives.put(given.name(), given.shape() == Shape.ONE_EACH ? own : (Object) together);
    }
    return derivatives;
  }

  private static void addFair(Map<String, Object> answer, FairGame found) {
    Map<String, Object> headStart = new LinkedHashMap<>();
    headStart.put("a", found.headStart().a());
    headStart.put("b", found.headStart().b());
    headStart.put("winA", found.headStart().winA());
    answer.put("headStart", headStart);
    found
        .unequalTargets()
        .ifPresent(
            targets -> {
              Map<String, Object> unequal = new LinkedHashMap<>();
              unequal.put("targetA", targets.targetA());
              unequal.put("targetB", targets.targetB());
              unequal.put("winA", targets.winA());
              answer.put("unequalTargets", unequal);
            });
  }

  /** The answer in a few lines for people. */
  List<String> lines() {
    List<String> lines = new ArrayList<>();
    RallyMoments moments = odds.rallies();
    lines.add("Game %s.".formatted(question.format().label()));
    lines.add("From %s, %s serves.".formatted(question.score(), server()));
    lines.add("A wins %s games in 100.".formatted(inHundred(odds.winChance(Side.A))));
    lines.add(
        text(
            "Rallies: %.1f on average (SD %.1f); 8 games in 10 take about %d to %d.",
            moments.mean(), moments.sd(), lengths.quantile(0.1), lengths.quantile(0.9)));
    lines.add("Likeliest scores (games in 100): " + likeliest() + ".");
    fair.ifPresent(found -> lines.addAll(fairLines(found)));
    return lines;
  }

  private String server() {
    return question.serve().side()
        + (question.format().scoring().hasTwoServers()
            ? String.valueOf(question.serve().number().called())
            : "");
  }

  private String likeliest() {
    List<ScoreChance> scores = new ArrayList<>(odds.scores().scores());
    scores.sort(Comparator.comparingDouble(ScoreChance::chance).reversed());
    List<String> shown =
        scores.stream()
            .limit(SCORES_SHOWN)
            .map(listed -> listed.score() + " " + inHundred(listed.chance()))
            .toList();
    return String.join(", ", shown);
  }

  private static List<String> fairLines(FairGame found) {
    List<String> lines = new ArrayList<>();
    lines.add(
        "Fairest start: %s, then A wins %s in 100."
            .formatted(
                Score.of(found.headStart().a(), found.headStart().b()),
                inHundred(found.headStart().winA())));
    found
        .unequalTargets()
        .ifPresent(
            targets ->
                lines.add(
                    "No head start comes within 5 in 100; from 0-0 with A to %d and B to %d, win by"
                            .formatted(targets.targetA(), targets.targetB())
                        + " 1, A wins %s in 100.".formatted(inHundred(targets.winA()))));
    return lines;
  }

  private static String inHundred(double chance) {
    return text("%.1f", 100 * chance);
  }

  private static String text(String pattern, Object... values) {
    return String.format(Locale.ROOT, pattern, values);
  }
}
