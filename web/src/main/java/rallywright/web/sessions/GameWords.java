package rallywright.web.sessions;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import rallywright.engine.plan.GameId;
import rallywright.engine.plan.PlannedBlock;
import rallywright.engine.plan.PlannedGame;
import rallywright.engine.session.GameProgress;
import rallywright.paper.FirstNames;
import rallywright.web.oncourt.OpenSession;

/**
 * One game in words.
 *
 * @param id its id
 * @param turn its turn in the block, from 1
 * @param place court and lane
 * @param a who plays side A, with role where there are two
 * @param b who plays side B
 * @param headStart the head start in words, or an empty text
 * @param result the score and how the game stands
 */
public record GameWords(
    String id, int turn, String place, String a, String b, String headStart, String result) {

  /** The order of the court sheet: turn by turn, within a turn by court and lane. */
  static final Comparator<PlannedGame> SHEET_ORDER =
      Comparator.comparingInt(PlannedGame::turn)
          .thenComparingInt(game -> game.place().court())
          .thenComparing(game -> game.place().lane());

  /** The games of a block in the order of the court sheet. */
  static List<GameWords> of(OpenSession open, PlannedBlock block) {
    FirstNames names = open.names();
    return block.games().stream().sorted(SHEET_ORDER).map(game -> of(open, game, names)).toList();
  }

  private static GameWords of(OpenSession open, PlannedGame game, FirstNames names) {
    return new GameWords(
        game.id().value(),
        game.turn(),
        game.place().words(),
        seat(names.listed(game.a().players()), game.a().role().words()),
        seat(names.listed(game.b().players()), game.b().role().words()),
        headStart(game),
        open.progress().game(game.id()).map(GameWords::result).orElse("")
            + doubts(open, game.id()));
  }

  /** What other phones say that did not hear of these entries; the phones ask which is right. */
  private static String doubts(OpenSession open, GameId game) {
    return open.progress().disputes().stream()
        .filter(dispute -> dispute.game().equals(game))
        .map(dispute -> "; another phone says " + dispute.score().a() + "–" + dispute.score().b())
        .collect(Collectors.joining());
  }

  private static String seat(String who, String role) {
    return role.equals("even") ? who : who + ", " + role;
  }

  private static String headStart(PlannedGame game) {
    int points = game.headStart().a() + game.headStart().b();
    return points == 0 ? "" : game.headStart().a() + "–" + game.headStart().b();
  }

  private static String result(GameProgress game) {
    String score = game.score().a() + "–" + game.score().b();
    return switch (game.status()) {
      case NOT_BEGUN -> "";
      case RUNNING -> score + ", not finished";
      case PLAYED_OUT -> score;
      case TIME_CALLED -> score + ", time called";
    };
  }
}
