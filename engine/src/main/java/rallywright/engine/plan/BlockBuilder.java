package rallywright.engine.plan;

import java.util.ArrayList;
import java.util.List;
import rallywright.engine.club.PlayerId;
import rallywright.engine.court.CourtLane;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.DrillKey;
import rallywright.engine.plan.PlannedBlock.End;
import rallywright.engine.plan.PlannedBlock.Kind;
import rallywright.engine.score.Side;

/** Makes blocks: games with places, roles and head starts, their time and their reason. */
final class BlockBuilder {

  /** The key under which a water break stands in the plan. */
  static final DrillKey WATER = new DrillKey("water-break");

  /** Rest and water. Assumption of this project. */
  static final double WATER_MINUTES = 3;

  private final PlanContext context;
  private final Reasons reasons;

  /** How long a rest is. */
  static double restMinutes(SessionWish wish) {
    return wish.requests().rests().map(Requests.Rests::minutes).orElse(WATER_MINUTES);
  }

  BlockBuilder(PlanContext context) {
    this.context = context;
    this.reasons = new Reasons(context);
  }

  PlannedBlock warmUp(BlockId id, Drill drill, double minutes) {
    return new PlannedBlock(
        id,
        Kind.WARM_UP,
        drill.key(),
        End.BY_CLOCK,
        new BlockTime(minutes, 0),
        List.of(),
        List.of(),
        reasons.ofWarmUp(drill));
  }

  PlannedBlock rest(BlockId id) {
    return new PlannedBlock(
        id,
        Kind.BREAK,
        WATER,
        End.BY_CLOCK,
        new BlockTime(restMinutes(context.wish()), 0),
        List.of(),
        List.of(),
        reasons.ofWater());
  }

  /** A closed test that everybody strikes in turn. */
  PlannedBlock yardstick(BlockId id, YardstickTimes.Planned planned) {
    return new PlannedBlock(
        id,
        Kind.YARDSTICK,
        planned.yardstick().key(),
        End.BY_CLOCK,
        new BlockTime(planned.minutes(), 0),
        List.of(),
        List.of(),
        reasons.ofYardstick(planned));
  }

  /** A block of so many stints with the next groups of the rotation. */
  PlannedBlock games(BlockId id, DrillLine line, int stints, Rotation rotation) {
    PlannedBlock block = empty(id, line);
    if (!line.isScored()) {
      double minutes = line.drill().minutes().orElseThrow();
      return block.withTime(new BlockTime(minutes + BlockClock.BLOCK_SECONDS / 60, 0));
    }
    for (int stint = 0; stint < stints; stint++) {
      block = withStint(block, line, rotation);
    }
    return block;
  }

  private PlannedBlock empty(BlockId id, DrillLine line) {
    Kind kind =
        switch (line.drill().kind()) {
          case FULL_GAME -> Kind.FULL_GAME;
          case COOPERATIVE -> Kind.TOGETHER;
          default -> Kind.DRILL;
        };
    return new PlannedBlock(
        id,
        kind,
        line.drill().key(),
        kind == Kind.TOGETHER ? End.BY_CLOCK : End.LAST_LANE,
        new BlockTime(0, 0),
        List.of(),
        List.of(),
        reasons.of(line));
  }

  /** The block with one stint more; the rotation already knows the block's own stints. */
  PlannedBlock withStint(PlannedBlock block, DrillLine line, Rotation rotation) {
    int done = block.sitting().size();
    Rotation.Stint stint = rotation.next(line);
    List<PlannedGame> games = new ArrayList<>(block.games());
    List<List<PlayerId>> sitting = new ArrayList<>(block.sitting());
    for (int turn = 0; turn < stint.turns(); turn++) {
      List<Integer> bench = context.everybody();
      for (int lane = 0; lane < stint.lanes().size(); lane++) {
        Duel duel = stint.lanes().get(lane).get(turn);
        CourtLane place = line.place(lane, done / stint.turns(), context.wish().courts());
        games.add(game(block.id(), line, done + turn + 1, place, duel));
        bench.removeAll(duel.players());
      }
      sitting.add(bench.stream().map(each -> context.attendees().get(each).id()).toList());
    }
    End end = BlockClock.endFor(stint.lanes().size(), context.wish());
    return timed(block.withGames(end, games, sitting));
  }

  /** The block without its last stint. */
  PlannedBlock withoutLastStint(PlannedBlock block) {
    int kept = block.sitting().size() - context.turnsPerStint(block);
    List<PlannedGame> games = block.games().stream().filter(game -> game.turn() <= kept).toList();
    return timed(block.withGames(block.end(), games, block.sitting().subList(0, kept)));
  }

  PlannedBlock timed(PlannedBlock block) {
    return block.withTime(BlockClock.time(block, context));
  }

  private PlannedGame game(BlockId block, DrillLine line, int turn, CourtLane place, Duel duel) {
    Seat a = context.seat(line, Side.A, duel.a());
    Seat b = context.seat(line, Side.B, duel.b());
    HeadStart start = context.problem().knowledge().fairStarts().of(line.drill(), a, b);
    GameId id = GameNames.of(block, turn, place, a, b);
    return new PlannedGame(id, turn, place, a, b, start);
  }
}
