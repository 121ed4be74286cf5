package rallywright.web.progress;

import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Collectors;
import rallywright.engine.club.PlayerId;
import rallywright.engine.drill.Role;
import rallywright.engine.plan.PlannedGame;
import rallywright.engine.plan.Seat;
import rallywright.engine.reading.GameOutlook;
import rallywright.engine.reading.PlayedGame;
import rallywright.engine.score.Score;
import rallywright.engine.score.Side;
import rallywright.engine.session.GameProgress;

/**
 * A game on a player's page, the player's points first.
 *
 * @param date the day
 * @param drill the drill's name
 * @param key the drill's key, for its page
 * @param detail role, direction and opponent
 * @param score how it ended
 * @param expected the expected score, empty for a game that was cut off
 * @param verdict how the one lies to the other
 */
public record GameLine(
    String date,
    String drill,
    String key,
    String detail,
    String score,
    String expected,
    String verdict) {

  static GameLine of(
      PlayedGame played, PlayerId player, GameOutlook outlook, Function<PlayerId, String> names) {
    PlannedGame game = played.game().game();
    boolean isA = played.sideOf(player) == Side.A;
    Seat own = isA ? game.a() : game.b();
    Seat other = isA ? game.b() : game.a();
    Score score = isA ? played.game().score() : played.game().score().swapped();
    boolean cut = played.game().status() != GameProgress.Status.PLAYED_OUT;
    return new GameLine(
        SkillWords.DAY.format(played.date()),
        played.drill().name(),
        played.drill().key().value(),
        role(own)
            + game.place().lane().direction().words()
            + ", against "
            + together(other.players(), names),
        score.a() + "–" + score.b(),
        cut ? "" : expected(outlook, isA),
        cut ? "time called" : verdict(outlook, played.game().score(), isA));
  }

  private static String role(Seat seat) {
    return seat.role() == Role.EVEN ? "" : seat.role().words() + ", ";
  }

  private static String together(List<PlayerId> players, Function<PlayerId, String> names) {
    return players.stream().map(names).collect(Collectors.joining(" and "));
  }

  private static String expected(GameOutlook outlook, boolean isA) {
    double own = isA ? outlook.pointsA() : outlook.pointsB();
    double other = isA ? outlook.pointsB() : outlook.pointsA();
    return String.format(Locale.ROOT, "%.1f–%.1f", own, other);
  }

  private static String verdict(GameOutlook outlook, Score score, boolean isA) {
    if (outlook.expects(score)) {
      return "as expected";
    }
    int lead = isA ? score.a() - score.b() : score.b() - score.a();
    double expectedLead =
        isA ? outlook.pointsA() - outlook.pointsB() : outlook.pointsB() - outlook.pointsA();
    return lead > expectedLead ? "better than expected" : "below expectation";
  }
}
