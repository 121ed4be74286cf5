package rallywright.web.progress;

import java.util.List;
import rallywright.engine.club.Player;
import rallywright.engine.point.BreakdownLine;
import rallywright.engine.point.BreakdownLine.Verdict;
import rallywright.engine.point.SkillWorths.Play;
import rallywright.engine.practice.SessionLoad;
import rallywright.engine.reading.GainReading;
import rallywright.engine.reading.PartnerLine;
import rallywright.engine.reading.PointReading;
import rallywright.engine.reading.WorthLine;
import rallywright.store.archive.SheetTable;

/** The tables behind points, load and drills, for a spreadsheet. */
final class PointTables {

  private PointTables() {}

  /** Where rallies were lost, in half-court games and doubles. */
  static String breakdown(Player player, PointReading points) {
    SheetTable table =
        SheetTable.with(
            "player",
            "games",
            "lost",
            "noted lost rallies of this kind",
            "noted lost rallies in all",
            "share (of 100)",
            "low end of 80 % (of 100)",
            "high end of 80 % (of 100)",
            "expected share (of 100)",
            "standard deviation of the expected share (of 100)",
            "chance to see so many if nothing were wrong (of 100)",
            "verdict");
    for (Play play : Play.values()) {
      for (BreakdownLine line : points.breakdown(player.id(), play).lines()) {
        table.row(
            player.name(),
            play == Play.DOUBLES ? "doubles" : "half court",
            line.topic().words(),
            line.lost(),
            line.of(),
            ProgressTables.percent(line.share()),
            ProgressTables.percent(line.low()),
            ProgressTables.percent(line.high()),
            ProgressTables.percent(line.expected().mean()),
            ProgressTables.percent(line.expected().sd()),
            ProgressTables.percent(line.chance()),
            words(line.verdict()));
      }
    }
    return table.text();
  }

  private static String words(Verdict verdict) {
    return switch (verdict) {
      case BREAKDOWN -> "breakdown";
      case AS_EXPECTED -> "as expected";
      case TOO_FEW -> "too early to tell";
    };
  }

  /** What each skill is worth, in half-court games and doubles. */
  static String worth(Player player, PointReading points) {
    SheetTable table =
        SheetTable.with(
            "player",
            "games",
            "skill",
            "skill (logits; 0 = level 3.5)",
            "standard deviation (logits)",
            "games won in 100 more for 0.2 logits more",
            "games won in 100 more for an hour of practice");
    for (Play play : Play.values()) {
      for (WorthLine line : points.worths(player.id(), play)) {
        table.row(
            player.name(),
            play == Play.DOUBLES ? "doubles" : "half court",
            line.skill().words(),
            ProgressTables.rounded(line.now().mean()),
            ProgressTables.rounded(line.now().sd()),
            ProgressTables.rounded(line.gamesIn100()),
            ProgressTables.rounded(line.gamesIn100PerHour()));
      }
    }
    return table.text();
  }

  /** How a player would do with each partner. */
  static String partners(Player player, PointReading points) {
    SheetTable table =
        SheetTable.with(
            "player",
            "partner",
            "games won of 100 against two average players",
            "low end of 80 % (of 100)",
            "high end of 80 % (of 100)",
            "games in 100 more than their mean",
            "games in 100 more on their best sides");
    for (PartnerLine line : points.partners(player.id())) {
      table.row(
          player.name(),
          line.name(),
          ProgressTables.percent(line.outlook().chance()),
          ProgressTables.percent(line.outlook().low()),
          ProgressTables.percent(line.outlook().high()),
          ProgressTables.rounded(line.gain()),
          ProgressTables.rounded(line.sidesGain()));
    }
    return table.text();
  }

  /** What each session asked of a player. */
  static String load(Player player, List<SessionLoad> sessions) {
    SheetTable table =
        SheetTable.with(
            "player", "date", "minutes", "effort (0 to 10)", "load (effort times minutes)");
    for (SessionLoad session : sessions) {
      table.row(
          player.name(),
          session.date(),
          ProgressTables.rounded(session.minutes()),
          session.effort().isPresent() ? session.effort().get().value() : "",
          session.load().isPresent() ? ProgressTables.rounded(session.load().getAsDouble()) : "");
    }
    return table.text();
  }

  /** What a minute of each drill is thought to bring. */
  static String gains(List<GainReading> gains) {
    SheetTable table =
        SheetTable.with(
            "drill",
            "gain (logits per effective minute)",
            "standard deviation (logits per effective minute)",
            "low end of 80 %",
            "high end of 80 %",
            "chance that it is above 0 (of 100)",
            "assumed before (logits per effective minute)",
            "standard deviation assumed before",
            "effective minutes of all players",
            "players");
    for (GainReading gain : gains) {
      table.row(
          gain.drill().name(),
          gain.perMinute().mean(),
          gain.perMinute().sd(),
          gain.perMinute().low80(),
          gain.perMinute().high80(),
          ProgressTables.percent(gain.perMinute().chanceAbove(0)),
          gain.before().mean(),
          gain.before().sd(),
          ProgressTables.rounded(gain.effectiveMinutes()),
          gain.players());
    }
    return table.text();
  }
}
