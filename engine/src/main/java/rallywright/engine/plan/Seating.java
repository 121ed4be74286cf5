package rallywright.engine.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rallywright.engine.club.PlayerId;
import rallywright.engine.drill.Drill;
import rallywright.engine.score.Side;

/** Who plays and who sits out in the turns of one block, and the same after a swap. */
final class Seating {

  private final PlanContext context;
  private final PlannedBlock block;
  private final Drill drill;

  Seating(PlanContext context, PlannedBlock block) {
    this.context = context;
    this.block = block;
    this.drill = context.drill(block.drill());
  }

  /** Why the two cannot change places, if they cannot. */
  Optional<String> refusal(SeatSwap swap, SessionPlan plan) {
    if (swap.one().equals(swap.other())) {
      return Optional.of("The same person was chosen twice. Maybe choose who comes in.");
    }
    if (!plan.present().contains(swap.one()) || !plan.present().contains(swap.other())) {
      return Optional.of("Somebody chosen is not in this session. Maybe add the name first.");
    }
    if (swap.turn() < 1 || swap.turn() > block.turns()) {
      return Optional.of(
          "The turn (%d) must be from 1 to %d. Maybe the block was changed since."
              .formatted(swap.turn(), block.turns()));
    }
    if (gamesOf(swap).isEmpty()) {
      return Optional.of(
          "Neither %s nor %s plays in turn %d. Maybe choose another turn."
              .formatted(context.name(swap.one()), context.name(swap.other()), swap.turn()));
    }
    return Stream.concat(
            notThere(swap, plan),
            gamesOf(swap).stream().flatMap(game -> unfit(swapped(game, swap))))
        .findFirst();
  }

  /** Says who is not there when they would play. */
  private Stream<String> notThere(SeatSwap swap, SessionPlan plan) {
    if (context.presence().isThroughout()) {
      return Stream.of();
    }
    double start = BlockClock.startMinute(plan.blocks(), plan.blocks().indexOf(block));
    int stint = (swap.turn() - 1) / context.turnsPerStint(block);
    BlockClock.Span span = BlockClock.spans(block, start, context).get(stint);
    return gamesOf(swap).stream()
        .flatMap(game -> seated(swapped(game, swap)))
        .filter(id -> id.equals(swap.one()) || id.equals(swap.other()))
        .filter(
            id ->
                !context
                    .presence()
                    .isThere(context.placeOf(id), span.fromMinute(), span.untilMinute()))
        .map(
            id ->
                "%s is there %s; turn %d is played from minute %.0f to %.0f."
                        .formatted(
                            context.name(id),
                            context.attendee(id).stay().words(),
                            swap.turn(),
                            span.fromMinute(),
                            span.untilMinute())
                    + " Maybe choose somebody else.");
  }

  /** The games in which one of the two is seated. */
  private List<PlannedGame> gamesOf(SeatSwap swap) {
    return block.games().stream()
        .filter(game -> game.turn() == swap.turn())
        .filter(game -> seated(game).anyMatch(id -> !swap.after(id).equals(id)))
        .toList();
  }

  private static Stream<PlayerId> seated(PlannedGame game) {
    return Stream.concat(game.a().players().stream(), game.b().players().stream());
  }

  /** Says who is not asked to play a game like this; the limit itself is not named. */
  private Stream<String> unfit(PlannedGame game) {
    return Stream.concat(unfit(game.a(), Side.A), unfit(game.b(), Side.B));
  }

  private Stream<String> unfit(Seat seat, Side side) {
    return seat.players().stream()
        .filter(id -> !context.access(context.attendee(id), drill).mayTake(side))
        .map(
            id ->
                "%s is not planned for this part of %s. Maybe choose somebody else."
                    .formatted(context.name(id), drill.name()));
  }

  /** The block after the swap, its time not yet counted anew. */
  PlannedBlock swapped(SeatSwap swap) {
    List<PlannedGame> changed = gamesOf(swap);
    List<PlannedGame> games =
        block.games().stream()
            .map(game -> changed.contains(game) ? swapped(game, swap) : game)
            .toList();
    List<List<PlayerId>> sitting = new ArrayList<>(block.sitting());
    sitting.set(swap.turn() - 1, sittingAfter(games, swap));
    return block.withGames(block.end(), games, sitting);
  }

  private PlannedGame swapped(PlannedGame game, SeatSwap swap) {
    Seat a = swapped(game.a(), swap);
    Seat b = swapped(game.b(), swap);
    HeadStart start = context.problem().knowledge().fairStarts().of(drill, a, b);
    GameId id = GameNames.of(block.id(), game.turn(), game.place(), a, b);
    return new PlannedGame(id, game.turn(), game.place(), a, b, start);
  }

  private static Seat swapped(Seat seat, SeatSwap swap) {
    return new Seat(seat.role(), seat.players().stream().map(swap::after).toList());
  }

  /** Those who sat out, and of the two the one who has no seat now. */
  private List<PlayerId> sittingAfter(List<PlannedGame> games, SeatSwap swap) {
    List<PlayerId> playing =
        games.stream().filter(game -> game.turn() == swap.turn()).flatMap(Seating::seated).toList();
    return Stream.concat(
            block.sitting().get(swap.turn() - 1).stream(), Stream.of(swap.one(), swap.other()))
        .distinct()
        .filter(id -> !playing.contains(id))
        .toList();
  }
}
