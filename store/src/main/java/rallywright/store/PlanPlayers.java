package rallywright.store;

import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rallywright.engine.club.PlayerId;
import rallywright.engine.plan.GameId;
import rallywright.engine.plan.PlannedBlock;
import rallywright.engine.plan.PlannedGame;
import rallywright.engine.plan.Seat;
import rallywright.engine.plan.SessionPlan;

/** Who stands in a plan, and the same plan with others or without one. */
final class PlanPlayers {

  /** What stands in place of a reason that may have named somebody who was erased. */
  static final String FORGOTTEN_REASON = "Its reason went with a person who was erased.";

  private static final Set<PlannedBlock.Kind> NAMES_NOBODY =
      Set.of(PlannedBlock.Kind.WARM_UP, PlannedBlock.Kind.BREAK);

  private PlanPlayers() {}

  /** Everybody whom the plan names. */
  static Set<PlayerId> named(SessionPlan plan) {
    return Stream.concat(
            plan.present().stream(),
            plan.blocks().stream()
                .flatMap(
                    block ->
                        Stream.concat(
                            block.games().stream().flatMap(PlanPlayers::seated),
                            block.sitting().stream().flatMap(List::stream))))
        .collect(Collectors.toSet());
  }

  /** The games in which a player is seated. */
  static Set<GameId> gamesOf(SessionPlan plan, PlayerId player) {
    return plan.blocks().stream()
        .flatMap(block -> block.games().stream())
        .filter(game -> seated(game).anyMatch(player::equals))
        .map(PlannedGame::id)
        .collect(Collectors.toSet());
  }

  /** The plan with other players in place of some. */
  static SessionPlan replaced(SessionPlan plan, UnaryOperator<PlayerId> other) {
    return changed(
        plan,
        players -> players.stream().map(other).distinct().toList(),
        games ->
            games.stream()
                .map(
                    game ->
                        new PlannedGame(
                            game.id(),
                            game.turn(),
                            game.place(),
                            replaced(game.a(), other),
                            replaced(game.b(), other),
                            game.headStart()))
                .toList(),
        UnaryOperator.identity());
  }

  /**
   * The plan without the reasons of its games. They name people by the names that these had when
   * the plan was made, so that somebody who is to be forgotten cannot be found in them for certain.
   */
  static SessionPlan withoutReasons(SessionPlan plan) {
    return changed(
        plan,
        UnaryOperator.identity(),
        UnaryOperator.identity(),
        block ->
            NAMES_NOBODY.contains(block.kind())
                ? block
                : new PlannedBlock(
                    block.id(),
                    block.kind(),
                    block.drill(),
                    block.end(),
                    block.time(),
                    block.games(),
                    block.sitting(),
                    FORGOTTEN_REASON));
  }

  /** The plan without a player and without the games in which the player is seated. */
  static SessionPlan without(SessionPlan plan, PlayerId player) {
    Predicate<PlayerId> stays = Predicate.not(player::equals);
    return changed(
        plan,
        players -> players.stream().filter(stays).toList(),
        games -> games.stream().filter(game -> seated(game).allMatch(stays)).toList(),
        UnaryOperator.identity());
  }

  private static SessionPlan changed(
      SessionPlan plan,
      UnaryOperator<List<PlayerId>> players,
      UnaryOperator<List<PlannedGame>> games,
      UnaryOperator<PlannedBlock> reasons) {
    List<PlannedBlock> blocks =
        plan.blocks().stream()
            .map(
                block ->
                    new PlannedBlock(
                        block.id(),
                        block.kind(),
                        block.drill(),
                        block.end(),
                        block.time(),
                        games.apply(block.games()),
                        block.sitting().stream().map(players).toList(),
                        block.reason()))
            .map(reasons)
            .toList();
    return new SessionPlan(plan.minutes(), plan.courts(), players.apply(plan.present()), blocks);
  }

  private static Seat replaced(Seat seat, UnaryOperator<PlayerId> other) {
    return new Seat(seat.role(), seat.players().stream().map(other).toList());
  }

  static Stream<PlayerId> seated(PlannedGame game) {
    return Stream.concat(game.a().players().stream(), game.b().players().stream());
  }
}
