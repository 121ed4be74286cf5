package rallywright.engine.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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

  /**
   * A block to be made.
   *
   * @param line the drill and line
   * @param stints how many stints of games
   * @param startMinute when it begins on the plan's clock
   */
  record Request(DrillLine line, int stints, double startMinute) {}

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

  /**
   * A block of so many stints with the next groups of the rotation; a stint for which too few are
   * there is left out.
   */
  PlannedBlock games(BlockId id, Request request, Rotation rotation) {
    DrillLine line = request.line();
    PlannedBlock block = empty(id, request);
    if (!line.isScored()) {
      double minutes = line.drill().minutes().orElseThrow();
      return block.withTime(new BlockTime(minutes + BlockClock.BLOCK_SECONDS / 60, 0));
    }
    for (int stint = 0; stint < request.stints(); stint++) {
      block = withStint(block, line, request.startMinute(), rotation).orElse(block);
    }
    return block;
  }

  private PlannedBlock empty(BlockId id, Request request) {
    DrillLine line = request.line();
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
        reasons.of(line, there(line, request)));
  }

  /** Those who are there for the first stint at least; everybody where nobody is. */
  private List<Integer> there(DrillLine line, Request request) {
    Presence presence = context.presence();
    if (presence.isThroughout()) {
      return context.everybody();
    }
    double from = request.startMinute() + BlockClock.BLOCK_SECONDS / 60;
    double until = from + context.usualStint(line).time().seconds().mean() / 60;
    List<Integer> there = presence.places(presence.during(from, until));
    return context.eligible(line.drill(), there).isEmpty() ? context.everybody() : there;
  }

  /**
   * The block with one stint more; the rotation already knows the block's own stints. Empty where
   * too few are there for it by then.
   */
  Optional<PlannedBlock> withStint(
      PlannedBlock block, DrillLine line, double startMinute, Rotation rotation) {
    double from = startMinute + stintsUntilNow(block) + BlockClock.BLOCK_SECONDS / 60;
    double until = from + context.usualStint(line).time().seconds().mean() / 60;
    while (true) {
      long companies = context.presence().during(from, until);
      List<Integer> there = context.presence().places(companies);
      int turns =
          block.games().isEmpty()
              ? context.shape(line, there).turns()
              : context.turnsPerStint(block);
      Rotation.Stint stint = rotation.choose(line, there, turns);
      if (stint.lanes().isEmpty()) {
        return Optional.empty();
      }
      PlannedBlock longer = timed(with(block, line, stint, there));
      double end = endOfLast(longer, startMinute);
      if ((companies & ~context.presence().during(from, end)) == 0) {
        rotation.take(stint, there);
        return Optional.of(longer);
      }
      until = end;
    }
  }

  private static double stintsUntilNow(PlannedBlock block) {
    return block.games().isEmpty()
        ? 0
        : block.time().mean() + (BlockClock.STINT_SECONDS - BlockClock.BLOCK_SECONDS) / 60;
  }

  private double endOfLast(PlannedBlock block, double startMinute) {
    List<BlockClock.Span> spans = BlockClock.spans(block, startMinute, context);
    return spans.get(spans.size() - 1).untilMinute();
  }

  private PlannedBlock with(
      PlannedBlock block, DrillLine line, Rotation.Stint stint, List<Integer> there) {
    int done = block.sitting().size();
    List<PlannedGame> games = new ArrayList<>(block.games());
    List<List<PlayerId>> sitting = new ArrayList<>(block.sitting());
    for (int turn = 0; turn < stint.turns(); turn++) {
      List<Integer> bench = new ArrayList<>(there);
      for (int lane = 0; lane < stint.lanes().size(); lane++) {
        Duel duel = stint.lanes().get(lane).get(turn);
        CourtLane place = line.place(lane, done / stint.turns(), context.wish().courts());
        games.add(game(block.id(), line, done + turn + 1, place, duel));
        bench.removeAll(duel.players());
      }
      sitting.add(bench.stream().map(each -> context.attendees().get(each).id()).toList());
    }
    End end =
        block.games().isEmpty()
            ? BlockClock.endFor(stint.lanes().size(), context.wish())
            : block.end();
    return block.withGames(end, games, sitting);
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
