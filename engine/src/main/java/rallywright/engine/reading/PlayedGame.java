package rallywright.engine.reading;

import java.time.LocalDate;
import java.util.List;
import rallywright.engine.club.PlayerId;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.DrillSide;
import rallywright.engine.drill.SkillWeights;
import rallywright.engine.plan.Seat;
import rallywright.engine.score.BySide;
import rallywright.engine.score.Side;
import rallywright.engine.session.GameProgress;
import rallywright.engine.session.SessionId;

/**
 * A game that tells something: rallies were played in it and its drill is known.
 *
 * @param session the session
 * @param date the day
 * @param drill the drill
 * @param game how it went
 */
public record PlayedGame(SessionId session, LocalDate date, Drill drill, GameProgress game) {

  /** Whether a player took part. */
  boolean has(PlayerId player) {
    return sidePlayers(Side.A).contains(player) || sidePlayers(Side.B).contains(player);
  }

  /**
   * The side of a player in this game.
   *
   * @param player a player who took part
   * @return A or B
   */
  public Side sideOf(PlayerId player) {
    return sidePlayers(Side.A).contains(player) ? Side.A : Side.B;
  }

  private List<PlayerId> sidePlayers(Side side) {
    return side == Side.A ? game.game().a().players() : game.game().b().players();
  }

  /** How many rallies are known to have been played, at least. */
  int rallies() {
    int points = game.score().total() - game.format().start().total();
    return Math.max(points, game.rallies().size());
  }

  /** How long it took, by the drill's usual seconds a rally. */
  double minutes() {
    return rallies() * drill.scored().orElseThrow().seconds().mean() / 60;
  }

  /** On which skills the players of a seat worked. */
  SkillWeights weightsOf(Seat seat) {
    BySide<DrillSide> sides = drill.scored().orElseThrow().layout().sides();
    return (sides.a().role() == seat.role() ? sides.a() : sides.b()).weights();
  }
}
