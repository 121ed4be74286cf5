package rallywright.web.progress;

import java.util.List;
import java.util.Locale;
import rallywright.engine.club.Player;
import rallywright.engine.drill.Skill;
import rallywright.engine.practice.Need;
import rallywright.engine.practice.SkillWorth;
import rallywright.engine.reading.ClubReading;
import rallywright.engine.reading.GameOutlook;
import rallywright.engine.reading.PlayedGame;
import rallywright.engine.reading.SkillReading;
import rallywright.engine.reading.SkillReading.WeekPoint;
import rallywright.engine.score.Score;
import rallywright.engine.score.Side;
import rallywright.store.archive.SheetTable;

/** The tables behind the pages, for a spreadsheet: one heading a column, with its unit. */
final class ProgressTables {

  private ProgressTables() {}

  /** Every skill of a player in every week. */
  static String skills(Player player, ClubReading reading) {
    SheetTable table =
        SheetTable.with(
            "player",
            "skill",
            "week from (Monday)",
            "skill (logits; 0 = level 3.5)",
            "standard deviation (logits)",
            "rallies won of 100 against the club's average",
            "low end of 80 % (of 100)",
            "high end of 80 % (of 100)",
            "rallies and balls so far",
            "enough to tell");
    for (Skill skill : Skill.values()) {
      SkillReading one = reading.skill(player.id(), skill);
      for (WeekPoint point : one.course()) {
        table.row(
            player.name(),
            skill.words(),
            point.monday(),
            rounded(point.estimate().mean()),
            rounded(point.estimate().sd()),
            percent(one.shareAt(point.estimate().mean())),
            percent(one.shareAt(point.estimate().low80())),
            percent(one.shareAt(point.estimate().high80())),
            rounded(one.rallies()),
            one.enough() ? "yes" : "no");
      }
    }
    return table.text();
  }

  /** Every game of a player, oldest first. */
  static String games(Player player, ClubReading reading) {
    SheetTable table =
        SheetTable.with(
            "player",
            "date",
            "drill",
            "points",
            "opponents' points",
            "expected points",
            "opponents' expected points",
            "chance to win (of 100)",
            "ended");
    for (PlayedGame played : reading.games(player.id())) {
      GameOutlook outlook = reading.outlook(played);
      boolean isA = played.sideOf(player.id()) == Side.A;
      Score score = isA ? played.game().score() : played.game().score().swapped();
      table.row(
          player.name(),
          played.date(),
          played.drill().name(),
          score.a(),
          score.b(),
          rounded(isA ? outlook.pointsA() : outlook.pointsB()),
          rounded(isA ? outlook.pointsB() : outlook.pointsA()),
          percent(isA ? outlook.winA() : 1 - outlook.winA()),
          played.game().status().name().toLowerCase(Locale.ROOT).replace('_', ' '));
    }
    return table.text();
  }

  /** What each player of a list needs, and how each skill stands. */
  static String needs(List<Player> players, ClubReading reading, SkillWorth worth) {
    SheetTable table =
        SheetTable.with(
            "player",
            "skill",
            "need (share of this player's needs, of 100)",
            "why",
            "rallies won of 100 against the club's average",
            "low end of 80 % (of 100)",
            "high end of 80 % (of 100)",
            "enough to tell");
    for (Player player : players) {
      List<Need> needs = PlayerNeeds.of(player, reading, worth);
      double all = needs.stream().mapToDouble(Need::value).sum();
      for (Need need : needs) {
        SkillReading one = reading.skill(player.id(), need.skill());
        table.row(
            player.name(),
            need.skill().words(),
            percent(all > 0 ? need.value() / all : 0),
            need.sentence(),
            percent(one.share()),
            percent(one.lowShare()),
            percent(one.highShare()),
            one.enough() ? "yes" : "no");
      }
    }
    return table.text();
  }

  /** The values that the model works with. */
  static String values(List<ModelValue> values) {
    SheetTable table = SheetTable.with("what it is", "value", "where it comes from");
    values.forEach(each -> table.row(each.words(), each.value(), each.source()));
    return table.text();
  }

  static double rounded(double value) {
    return Math.round(1000 * value) / 1000.0;
  }

  static double percent(double share) {
    return Math.round(1000 * share) / 10.0;
  }
}
