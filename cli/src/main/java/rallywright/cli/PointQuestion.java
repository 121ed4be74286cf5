package rallywright.cli;

import java.util.List;
import java.util.Locale;
import rallywright.engine.drill.Skill;
import rallywright.engine.point.PointGame;
import rallywright.engine.point.PointStages;
import rallywright.engine.point.RallyChain.Winner;
import rallywright.engine.point.SkillProfile;
import rallywright.engine.point.SkillWorths.Play;
import rallywright.engine.point.Team;
import rallywright.engine.score.BySide;
import rallywright.engine.score.Ending.Stage;
import rallywright.engine.score.GameFormat;
import rallywright.engine.score.Side;

/**
 * What {@code point} is asked, checked.
 *
 * @param play which game
 * @param stages what is contested in a point
 * @param players who plays
 * @param endings noted endings of a's rallies
 * @param clubEndings noted endings of others
 */
record PointQuestion(
    Play play,
    PointStages stages,
    BySide<List<Named>> players,
    List<Noted> endings,
    List<Noted> clubEndings) {

  /** A player with a name. */
  record Named(String name, SkillProfile skills) {}

  /** A noted ending. */
  record Noted(Side server, Stage stage, Side winner) {
    Winner role() {
      return winner == server ? Winner.SERVER : Winner.RECEIVER;
    }
  }

  PointQuestion withStages(PointStages other) {
    return new PointQuestion(play, other, players, endings, clubEndings);
  }

  PointGame game() {
    BySide<Team> teams = BySide.of(team(Side.A), team(Side.B));
    return PointGame.of(
        stages,
        teams,
        play == Play.DOUBLES ? GameFormat.DOUBLES_TO_11 : PointGame.HALF_COURT_TO_11);
  }

  Team team(Side side) {
    List<Named> named = players.of(side);
    return play == Play.DOUBLES
        ? new Team.Pair(named.get(0).skills(), named.get(1).skills(), Team.CourtSides.BY_SCORE)
        : new Team.Single(named.get(0).skills());
  }

  /** The name of a skill in files and options. */
  static String nameOf(Skill skill) {
    return skill.words().replace(' ', '-');
  }

  /** The name of a stage in files and options. */
  static String nameOf(Stage stage) {
    return stage.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  static String nameOf(Play play) {
    return play == Play.DOUBLES ? "doubles" : "half-court";
  }
}
