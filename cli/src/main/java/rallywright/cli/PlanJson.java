package rallywright.cli;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import rallywright.catalogue.Catalogue;
import rallywright.engine.club.PlayerId;
import rallywright.engine.court.CourtLane;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.Yardstick;
import rallywright.engine.plan.Line;
import rallywright.engine.plan.PlanAnswer;
import rallywright.engine.plan.PlanCheck;
import rallywright.engine.plan.PlannedBlock;
import rallywright.engine.plan.PlannedGame;
import rallywright.engine.plan.SessionPlan;

/**
 * A plan as one JSON object.
 *
 * @param blocks the blocks in the order in which they are played
 * @param minutesMean the mean time of the session in minutes
 * @param minutesP90 done by then nine times in ten
 * @param benefit what the drills bring a player on average, in units that only compare plans
 * @param bound what no plan for the same wish can pass
 * @param reasons why each block is there, in the order of the blocks
 * @param warnings what the plan does not keep to
 * @param notes who comes late or leaves early, and courts that stay empty
 */
record PlanJson(
    List<Block> blocks,
    double minutesMean,
    double minutesP90,
    double benefit,
    double bound,
    List<String> reasons,
    List<String> warnings,
    List<String> notes) {

  /**
   * A block.
   *
   * @param order its place, from 1
   * @param kind warm-up, drill, full game or break
   * @param drill the drill's name
   * @param direction straight or cross-court; null where nothing is played on lanes
   * @param roles the roles of the two sides; null where nothing is played on lanes
   * @param games how many games are played in it, all lanes together
   * @param minutesMean the mean time in minutes
   * @param minutesSd its standard deviation in minutes
   * @param lanes what is played on each lane
   * @param sitting who sits out, by turn
   * @param away who is not there by then, by turn
   */
  record Block(
      int order,
      String kind,
      String drill,
      @Nullable String direction,
      @Nullable String roles,
      int games,
      double minutesMean,
      double minutesSd,
      List<LaneGames> lanes,
      List<List<String>> sitting,
      List<List<String>> away) {}

  /**
   * The games of one lane.
   *
   * @param court the court's number, from 1
   * @param lane the lane on it
   * @param games its games in the order of turns
   */
  record LaneGames(int court, String lane, List<Game> games) {}

  /**
   * A game; side A is the near side.
   *
   * @param turn the turn of the block, from 1
   * @param a who plays side A
   * @param roleA in which role
   * @param b who plays side B
   * @param roleB in which role
   * @param headStartA points given to side A
   * @param headStartB points given to side B
   */
  record Game(
      int turn,
      List<String> a,
      String roleA,
      List<String> b,
      String roleB,
      int headStartA,
      int headStartB) {}

  static PlanJson of(PlanAnswer.Planned planned, Catalogue catalogue) {
    List<Block> blocks = new ArrayList<>();
    for (PlannedBlock block : planned.plan().blocks()) {
      blocks.add(block(blocks.size() + 1, block, planned.plan(), catalogue));
    }
    PlanCheck check = planned.check();
    return new PlanJson(
        blocks,
        check.clock().minutesMean(),
        check.clock().minutesP90(),
        check.benefit(),
        check.bound(),
        planned.plan().blocks().stream().map(PlannedBlock::reason).toList(),
        check.brokenRules().stream().map(PlanCheck.BrokenRule::sentence).toList(),
        check.notes().stream().map(each -> each.words(minute -> "minute " + minute)).toList());
  }

  private static Block block(int order, PlannedBlock block, SessionPlan plan, Catalogue catalogue) {
    boolean played = !block.games().isEmpty();
    return new Block(
        order,
        switch (block.kind()) {
          case WARM_UP -> "warm-up";
          case DRILL -> "drill";
          case FULL_GAME -> "full game";
          case TOGETHER -> "together";
          case YARDSTICK -> "yardstick";
          case BREAK -> "break";
        },
        name(block, catalogue),
        played ? Line.of(block.games().get(0).place().lane()).words() : null,
        played ? roles(block.games().get(0)) : null,
        block.games().size(),
        block.time().mean(),
        block.time().sd(),
        lanes(block),
        block.sitting().stream().map(PlanJson::names).toList(),
        IntStream.rangeClosed(1, block.sitting().size())
            .mapToObj(turn -> names(block.away(plan.present(), turn)))
            .toList());
  }

  private static String name(PlannedBlock block, Catalogue catalogue) {
    return catalogue
        .drill(block.drill())
        .map(Drill::name)
        .or(() -> catalogue.yardstick(block.drill()).map(Yardstick::name))
        .orElse("Water and rest");
  }

  private static String roles(PlannedGame game) {
    return game.a().role().words() + " v " + game.b().role().words();
  }

  private static List<LaneGames> lanes(PlannedBlock block) {
    List<CourtLane> places =
        block.games().stream().map(PlannedGame::place).distinct().sorted(BY_PLACE).toList();
    return places.stream().map(place -> laneGames(place, games(block, place))).toList();
  }

  private static LaneGames laneGames(CourtLane place, List<Game> games) {
    boolean whole = games.stream().anyMatch(game -> game.a().size() + game.b().size() > 2);
    return new LaneGames(place.court(), whole ? "whole court" : place.lane().words(), games);
  }

  private static final Comparator<CourtLane> BY_PLACE =
      Comparator.comparing(CourtLane::court).thenComparing(CourtLane::lane);

  private static List<Game> games(PlannedBlock block, CourtLane place) {
    return block.games().stream()
        .filter(game -> game.place().equals(place))
        .map(
            game ->
                new Game(
                    game.turn(),
                    names(game.a().players()),
                    game.a().role().words(),
                    names(game.b().players()),
                    game.b().role().words(),
                    game.headStart().a(),
                    game.headStart().b()))
        .toList();
  }

  private static List<String> names(List<PlayerId> players) {
    return players.stream().map(PlayerId::value).toList();
  }
}
