package rallywright.web.plan;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import rallywright.engine.club.PlayerId;
import rallywright.engine.court.CourtLane;
import rallywright.engine.plan.BlockId;
import rallywright.engine.plan.PlanCheck;
import rallywright.engine.plan.PlannedBlock;
import rallywright.engine.plan.PlannedGame;
import rallywright.engine.plan.Seat;
import rallywright.paper.FirstNames;
import rallywright.web.oncourt.OpenSession;

/**
 * One block on the plan page.
 *
 * @param id the block's id
 * @param title the drill's name
 * @param key the drill's key, or empty where there is no page for it
 * @param clock from–to by the clock, on average
 * @param minutes how long it usually takes
 * @param lines the directions that are played
 * @param reason why it is in the plan
 * @param turns who plays whom, turn by turn
 * @param spared whom a limit keeps out of this drill, may be empty
 * @param kind what sort of block it is
 * @param locked whether it was begun and stays as it is
 */
public record PlanBlock(
    String id,
    String title,
    String key,
    String clock,
    long minutes,
    String lines,
    String reason,
    List<Turn> turns,
    String spared,
    PlannedBlock.Kind kind,
    boolean locked) {

  /**
   * Games that run side by side.
   *
   * @param games each game in words
   * @param sitting who sits out, may be empty
   * @param away who is not there by then, may be empty
   */
  public record Turn(List<String> games, String sitting, String away) {}

  /** Whether games can be added and taken. */
  public boolean hasGames() {
    return !turns.isEmpty();
  }

  static List<PlanBlock> of(
      OpenSession open, Set<BlockId> touched, Function<PlannedBlock, List<PlayerId>> spared) {
    List<PlanBlock> blocks = new ArrayList<>();
    double gone = 0;
    for (PlannedBlock block : open.plan().blocks()) {
      double end = gone + block.time().mean();
      blocks.add(
          new PlanBlock(
              block.id().value(),
              open.title(block),
              open.drill(block).map(drill -> drill.key().value()).orElse(""),
              at(open, gone) + "–" + at(open, end),
              Math.round(block.time().mean()),
              lines(block),
              block.reason(),
              turns(open, block),
              open.names().listed(spared.apply(block)),
              block.kind(),
              touched.contains(block.id())));
      gone = end;
    }
    return blocks;
  }

  /** What the coach wants to know of a plan, by the session's clock. */
  static List<String> notes(OpenSession open, PlanCheck check) {
    return check.notes().stream()
        .map(note -> note.words(minute -> at(open, minute).toString()))
        .toList();
  }

  private static LocalTime at(OpenSession open, double minutes) {
    return open.session().start().plusMinutes(Math.round(minutes));
  }

  private static String lines(PlannedBlock block) {
    return block.games().stream()
        .map(game -> game.place().lane().direction().words())
        .distinct()
        .collect(Collectors.joining(" and "));
  }

  private static List<Turn> turns(OpenSession open, PlannedBlock block) {
    List<Turn> turns = new ArrayList<>();
    for (int number = 1; number <= PlanDesk.turns(block); number++) {
      int turn = number;
      List<String> games =
          block.games().stream()
              .filter(game -> game.turn() == turn)
              .map(game -> words(game, open.names()))
              .toList();
      String sitting =
          number <= block.sitting().size()
              ? open.names().listed(block.sitting().get(number - 1))
              : "";
      String away = open.names().listed(block.away(open.plan().present(), number));
      turns.add(new Turn(games, sitting, away));
    }
    return turns;
  }

  private static String words(PlannedGame game, FirstNames names) {
    String start =
        game.headStart().a() + game.headStart().b() == 0
            ? ""
            : ", starts " + game.headStart().a() + "–" + game.headStart().b();
    CourtLane place = game.place();
    return place.words() + ": " + seat(game.a(), names) + " v " + seat(game.b(), names) + start;
  }

  private static String seat(Seat seat, FirstNames names) {
    String role = seat.role().words();
    return names.listed(seat.players()) + (role.equals("even") ? "" : " (" + role + ")");
  }
}
