package rallywright.engine.plan;

import java.util.ArrayList;
import java.util.List;
import rallywright.engine.club.PlayerId;
import rallywright.engine.court.CourtLane;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.DrillKey;
import rallywright.engine.drill.DrillKind;
import rallywright.engine.plan.PlannedBlock.End;
import rallywright.engine.plan.PlannedBlock.Kind;

/** Makes blocks: games with places, roles and head starts, their time and their reason. */
final class BlockBuilder {

  /** The key under which a water break stands in the plan. */
  static final DrillKey WATER = new DrillKey("water-break");

  /** Rest and water. Assumption of this project. */
  static final double WATER_MINUTES = 3;

  private final PlanContext context;
  private final Reasons reasons;

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

  PlannedBlock water(BlockId id) {
    return new PlannedBlock(
        id,
        Kind.BREAK,
        WATER,
        End.BY_CLOCK,
        new BlockTime(WATER_MINUTES, 0),
        List.of(),
        List.of(),
        reasons.ofWater());
  }

  /** A block of so many stints with the next pairs of the rotation. */
  PlannedBlock games(BlockId id, DrillLine line, int stints, Rotation rotation) {
    PlannedBlock block = empty(id, line);
    for (int stint = 0; stint < stints; stint++) {
      block = withStint(block, line, rotation);
    }
    return block;
  }

  private PlannedBlock empty(BlockId id, DrillLine line) {
    Kind kind = line.drill().kind() == DrillKind.FULL_GAME ? Kind.FULL_GAME : Kind.DRILL;
    return new PlannedBlock(
        id,
        kind,
        line.drill().key(),
        End.LAST_LANE,
        new BlockTime(0, 0),
        List.of(),
        List.of(),
        reasons.of(line));
  }

  /** The block with one stint more; the rotation already knows the block's own stints. */
  PlannedBlock withStint(PlannedBlock block, DrillLine line, Rotation rotation) {
    int turns = line.turnsPerStint();
    int done = block.sitting().size();
    Rotation.Stint stint = rotation.next(line);
    List<PlannedGame> games = new ArrayList<>(block.games());
    List<List<PlayerId>> sitting = new ArrayList<>(block.sitting());
    for (int turn = 0; turn < turns; turn++) {
      for (int pair = 0; pair < stint.pairs().size(); pair++) {
        CourtLane place = line.place(pair, done / turns, context.wish().courts());
        boolean swap = turn == 1 && stint.pairs().get(pair).roles() == Rotation.Roles.SWAPPED;
        Duel duel =
            swap ? Duel.of(stint.pairs().get(pair)).swapped() : Duel.of(stint.pairs().get(pair));
        games.add(game(block.id(), line, done + turn + 1, place, duel));
      }
      sitting.add(stint.sitting().stream().map(this::idOf).toList());
    }
    End end = BlockClock.endFor(stint.pairs().size());
    return timed(block.withGames(end, games, sitting));
  }

  /** The block without its last stint. */
  PlannedBlock withoutLastStint(PlannedBlock block) {
    int turns = DrillLine.turnsPerStint(context.drill(block.drill()));
    int kept = block.sitting().size() - turns;
    List<PlannedGame> games = block.games().stream().filter(game -> game.turn() <= kept).toList();
    return timed(block.withGames(block.end(), games, block.sitting().subList(0, kept)));
  }

  PlannedBlock timed(PlannedBlock block) {
    return block.withTime(BlockClock.time(block, context));
  }

  private record Duel(int a, int b) {
    static Duel of(Rotation.Pair pair) {
      return new Duel(pair.first(), pair.second());
    }

    Duel swapped() {
      return new Duel(b, a);
    }
  }

  private PlannedGame game(BlockId block, DrillLine line, int turn, CourtLane place, Duel duel) {
    var sides = line.game().layout().sides();
    Seat a = new Seat(sides.a().role(), List.of(idOf(duel.a())));
    Seat b = new Seat(sides.b().role(), List.of(idOf(duel.b())));
    HeadStart start = context.problem().knowledge().fairStarts().of(line.drill(), a, b);
    GameId id = GameNames.of(block, turn, place, a, b);
    return new PlannedGame(id, turn, place, a, b, start);
  }

  private PlayerId idOf(int place) {
    return context.attendees().get(place).id();
  }
}
