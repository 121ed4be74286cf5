package rallywright.web.progress;

import java.util.List;
import java.util.Locale;
import rallywright.engine.club.PlayerId;
import rallywright.engine.point.Breakdown;
import rallywright.engine.point.BreakdownLine;
import rallywright.engine.point.BreakdownLine.Verdict;
import rallywright.engine.point.BreakdownLine.WithStroke;
import rallywright.engine.point.RallyChain.Winner;
import rallywright.engine.point.SkillWorths.Play;
import rallywright.engine.reading.PartnerLine;
import rallywright.engine.reading.PointReading;
import rallywright.engine.reading.WorthLine;
import rallywright.web.page.Estimate;

/**
 * What a player's points say: where they are lost, what skills are worth, with whom they are won.
 *
 * @param found the breakdowns that may be named, in sentences; often none
 * @param courts serving and receiving
 * @param strokes the strokes with which rallies were lost, where enough were noted
 * @param worths what each skill is worth, the most valuable first
 * @param partners how the player would do with each other player, best first
 */
public record PointView(
    List<String> found,
    List<StageCourt> courts,
    List<StrokeRow> strokes,
    List<WorthRow> worths,
    List<PartnerRow> partners) {

  private static final Estimate.Scale GAMES = new Estimate.Scale(0, 1, "none", "10 in 10");
  private static final double WIDTH = 320;

  /** Copies the lists. */
  public PointView {
    found = List.copyOf(found);
    courts = List.copyOf(courts);
    strokes = List.copyOf(strokes);
    worths = List.copyOf(worths);
    partners = List.copyOf(partners);
  }

  /**
   * A stroke with which rallies were lost.
   *
   * @param words by a missed …, or beaten by a …
   * @param lost how many of how many
   * @param expected how many were to be expected
   * @param verdict "breakdown" or an empty text
   */
  public record StrokeRow(String words, String lost, String expected, String verdict) {}

  /**
   * What a skill is worth.
   *
   * @param skill the skill
   * @param words games won in 100 more, for a small step and for an hour
   * @param width how long its bar is, of 320
   */
  public record WorthRow(String skill, String words, String width) {}

  /**
   * A possible partner.
   *
   * @param id the partner's id
   * @param name the partner's name
   * @param estimate the chance of a game with its sentence
   */
  public record PartnerRow(String id, String name, Estimate estimate) {}

  static PointView of(PlayerId player, PointReading points) {
    Breakdown breakdown = points.breakdown(player, Play.HALF_COURT);
    return new PointView(
        breakdown.breakdowns().stream().map(BreakdownLine::sentence).toList(),
        List.of(
            StageCourt.of(breakdown.lines(), Winner.SERVER),
            StageCourt.of(breakdown.lines(), Winner.RECEIVER)),
        breakdown.lines().stream()
            .filter(line -> line.topic() instanceof WithStroke)
            .filter(line -> line.verdict() != Verdict.TOO_FEW && line.lost() > 0)
            .map(PointView::stroke)
            .toList(),
        worths(points.worths(player, Play.DOUBLES)),
        points.partners(player).stream().map(PointView::partner).toList());
  }

  private static StrokeRow stroke(BreakdownLine line) {
    return new StrokeRow(
        SkillWords.capital(line.topic().words()),
        line.lost() + " of " + line.of(),
        "about " + Math.round(line.expected().mean() * line.of()),
        line.verdict() == Verdict.BREAKDOWN ? "breakdown" : "");
  }

  private static List<WorthRow> worths(List<WorthLine> lines) {
    double largest = lines.stream().mapToDouble(WorthLine::gamesIn100).max().orElse(1);
    return lines.stream()
        .map(
            line ->
                new WorthRow(
                    SkillWords.capital(line.skill().words()),
                    "A small step better: %s more games won in 100; an hour of it: %s."
                        .formatted(few(line.gamesIn100()), few(line.gamesIn100PerHour())),
                    String.format(
                        Locale.ROOT,
                        "%.1f",
                        WIDTH * Math.max(0, line.gamesIn100()) / Math.max(1e-9, largest))))
        .toList();
  }

  private static String few(double games) {
    return games < 0.05 ? "hardly any" : String.format(Locale.ROOT, "about %.1f", games);
  }

  private static PartnerRow partner(PartnerLine line) {
    return new PartnerRow(
        line.partner().value(),
        line.name(),
        Estimate.ofChance(
            GAMES,
            line.outlook().low(),
            line.outlook().chance(),
            line.outlook().high(),
            line.sentence()));
  }
}
