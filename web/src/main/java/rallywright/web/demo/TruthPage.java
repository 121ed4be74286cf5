package rallywright.web.demo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import rallywright.engine.drill.Skill;
import rallywright.web.demo.TruthCheck.Claim;
import rallywright.web.demo.TruthCheck.OfPlayer;
import rallywright.web.demo.TruthCheck.Outcome;
import rallywright.web.demo.TruthCheck.Way;

/** Writes the document that holds the tool's statements about the demo against the truth. */
public final class TruthPage {

  /** The demo's last session in this document is on the Tuesday before. */
  private static final LocalDate TODAY = LocalDate.of(2026, 3, 11);

  private static final int SKILLS = Skill.values().length;
  private static final double[] BANDS = {0.8, 0.85, 0.9, 0.95, 1};

  private TruthPage() {}

  /**
   * Writes the document.
   *
   * @param arguments the file to write, and how many clubs beside the demo club to pool
   * @throws IOException if the file cannot be written
   */
  public static void main(String[] arguments) throws IOException {
    if (arguments.length != 2 || !arguments[1].matches("[0-9]{1,4}")) {
      System.err.println(
          "Two words are needed: the file to write and the number of further clubs (0 to 9999)."
              + " Maybe: docs/demo-truth.md 24");
      System.exit(2);
    }
    Files.writeString(Path.of(arguments[0]), text(Integer.parseInt(arguments[1])));
  }

  /** The document with the demo club and a number of further clubs. */
  static String text(int further) {
    TruthCheck demo = check(DemoClub.SEED);
    List<TruthCheck> others = new ArrayList<>();
    for (int club = 1; club <= further; club++) {
      others.add(check(DemoClub.SEED + club));
    }
    String clubs = further == 0 ? "" : CLUBS.formatted(further) + pooled(others);
    return HEAD + players(demo) + BETWEEN.formatted(chances(demo.claims())) + clubs + LIMITS;
  }

  private static TruthCheck check(long seed) {
    return TruthCheck.of(DemoSeason.played(seed, TODAY, ZoneOffset.UTC), TODAY);
  }

  private static String players(TruthCheck demo) {
    StringBuilder table = new StringBuilder();
    demo.players().forEach(each -> table.append(row(each.name(), List.of(each))));
    return table.append(row("**All twelve**", demo.players())).toString();
  }

  private static String row(String name, List<OfPlayer> players) {
    List<Claim> claims = players.stream().flatMap(each -> each.claims().stream()).toList();
    int skills = SKILLS * players.size();
    return "| %s | %d of %d | %d of %d | %s | %s | %s | %d of %d | %s |%n"
        .formatted(
            name,
            players.stream().mapToInt(OfPlayer::covered).sum(),
            skills,
            players.stream().mapToInt(OfPlayer::moved).sum(),
            skills,
            right(outcomes(claims, Way.ROSE)),
            right(outcomes(claims, Way.FELL)),
            stated(claims),
            players.stream().mapToInt(OfPlayer::needs).sum(),
            TruthCheck.NEEDS * players.size(),
            right(players.stream().flatMap(each -> each.behind().stream()).toList()));
  }

  private static String pooled(List<TruthCheck> clubs) {
    int players = clubs.stream().mapToInt(each -> each.players().size()).sum();
    List<Claim> claims = clubs.stream().flatMap(each -> each.claims().stream()).toList();
    return String.format(
        Locale.ROOT,
        """
        - Skills inside their 80 %% interval: %s.
        - Changes since a player's first week inside their 80 %% interval: %s.
        - Of the three needs named for each player, among the three true ones: %s.
          Names drawn from a hat would be right in 27 of 100.
        - Skills said to be behind the others that truly are: %s.
          A coin would be right in 50 of 100.

        | Stated chance of a change | Changes named | Mean stated chance | True | "Rose" | "Fell" |
        | --- | --- | --- | --- | --- | --- |
        %s
        """,
        of(covered(clubs), (long) SKILLS * players),
        of(moved(clubs), (long) SKILLS * players),
        of(needs(clubs), (long) TruthCheck.NEEDS * players),
        right(behind(clubs)),
        chances(claims).strip());
  }

  /** One line for each band of stated chances. */
  private static String chances(List<Claim> claims) {
    StringBuilder lines = new StringBuilder();
    for (int band = 0; band + 1 < BANDS.length; band++) {
      double from = BANDS[band];
      double to = BANDS[band + 1];
      boolean last = band + 2 == BANDS.length;
      List<Claim> in =
          claims.stream()
              .filter(each -> each.chance() >= from && (each.chance() < to || last))
              .toList();
      lines.append(
          String.format(
              Locale.ROOT,
              "| %.0f to %.0f of 100 | %d | %s | %s | %s | %s |%n",
              100 * from,
              100 * to,
              in.size(),
              stated(in),
              right(outcomes(in)),
              right(outcomes(in, Way.ROSE)),
              right(outcomes(in, Way.FELL))));
    }
    return lines.toString();
  }

  private static String stated(List<Claim> claims) {
    return claims.isEmpty()
        ? "–"
        : String.format(
            Locale.ROOT,
            "%.0f of 100",
            100 * claims.stream().mapToDouble(Claim::chance).average().orElseThrow());
  }

  private static List<Outcome> outcomes(List<Claim> claims, Way way) {
    return outcomes(claims.stream().filter(each -> each.way() == way).toList());
  }

  private static List<Outcome> outcomes(List<Claim> claims) {
    return claims.stream().map(Claim::outcome).toList();
  }

  private static String right(List<Outcome> outcomes) {
    long right = outcomes.stream().filter(each -> each == Outcome.RIGHT).count();
    return outcomes.isEmpty() ? "none named" : of(right, outcomes.size());
  }

  /** So many of so many, with the share where there are enough to speak of one. */
  private static String of(long right, long all) {
    String counts = right + " of " + all;
    return all < 100
        ? counts
        : counts + String.format(Locale.ROOT, " (%.1f of 100)", 100.0 * right / all);
  }

  private static int covered(List<TruthCheck> clubs) {
    return clubs.stream()
        .flatMap(club -> club.players().stream())
        .mapToInt(OfPlayer::covered)
        .sum();
  }

  private static int moved(List<TruthCheck> clubs) {
    return clubs.stream().flatMap(club -> club.players().stream()).mapToInt(OfPlayer::moved).sum();
  }

  private static int needs(List<TruthCheck> clubs) {
    return clubs.stream().flatMap(club -> club.players().stream()).mapToInt(OfPlayer::needs).sum();
  }

  private static List<Outcome> behind(List<TruthCheck> clubs) {
    return clubs.stream()
        .flatMap(club -> club.players().stream())
        .flatMap(each -> each.behind().stream())
        .toList();
  }

  private static final String HEAD =
      """
      # The demo beside the truth

      The demo club is invented, so what its players can really do is known: it was drawn before
      the first session, and every score was played from it. This page holds what the tool says
      after ten weeks against that truth. It is written by a command and not by hand:

          benchmarks/demo-truth

      ## The demo club

      Twelve players, ten Tuesdays and six Fridays, read on the day after the last session. "Rose"
      and "Fell" are named from a chance of 8 in 10 on; "Behind" is the reason of a need that a
      skill stands behind what level and other skills lead one to expect.

      | Player | Skills in their 80 % interval | Changes in theirs | "Rose", true | "Fell", true | \
      Mean stated chance | Needs named right | "Behind", true |
      | --- | --- | --- | --- | --- | --- | --- | --- |
      """;

  private static final String BETWEEN =
      """

      A change is named when its chance is at least 8 in 10, a rise or a fall, from the player's
      first week to today, in skills with enough rallies. By the chance that was stated with it:

      | Stated chance of a change | Changes named | Mean stated chance | True | "Rose" | "Fell" |
      | --- | --- | --- | --- | --- | --- |
      %s
      """;

  private static final String CLUBS =
      """
      ## Further clubs

      One club is few: the skills of a player rise and fall together, and so do those who play each
      other. So the same twelve people, with other skills, were drawn anew for %d further clubs.

      """;

  private static final String LIMITS =
      """

      ## What this cannot say

      - The truth is drawn from what the model believes before any score (how far players of a
        level differ, how far a skill wanders), so this page shows that the reading is honest if
        those beliefs hold. It does not show that they hold for real players.
      - Practice works more simply in the truth than in the model: every minute of a skill brings
        the same, whatever the drill.
      - "Needs named right" compares with the same rule fed with the true skills. It does not show
        that the rule is a good one.
      - Most rises in ten weeks are smaller than what ten weeks of scores can show. Few changes are
        named, and that is how it should be.
      """;
}
