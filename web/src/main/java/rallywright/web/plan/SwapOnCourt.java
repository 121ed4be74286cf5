package rallywright.web.plan;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicReference;
import org.springframework.stereotype.Component;
import rallywright.engine.club.PlayerId;
import rallywright.engine.plan.GameId;
import rallywright.engine.plan.PlanEdit;
import rallywright.engine.plan.PlanEditor;
import rallywright.engine.plan.PlannedBlock;
import rallywright.engine.session.SessionId;
import rallywright.web.oncourt.OpenSession;

/**
 * Two people change places from now on: in every game of the block that is on and of those to come
 * that has not begun. Games that were begun keep their players and scores.
 */
@Component
public final class SwapOnCourt {

  private final PlanDesk desk;
  private final PlanKeeper keeper;

  SwapOnCourt(PlanDesk desk, PlanKeeper keeper) {
    this.desk = desk;
    this.keeper = keeper;
  }

  /** What becomes of the games that the lanes are at, where nothing was scored in them yet. */
  public enum Present {
    /** They are being played, their results come at the end: the two finish them. */
    FINISH,
    /** The two change places in them too. */
    CHANGE
  }

  /**
   * Two people as a form names them.
   *
   * @param one the id of one of them
   * @param other the id of the other one
   * @param present what becomes of the games that the lanes are at
   */
  public record Wish(String one, String other, Present present) {}

  /**
   * Lets two people change places.
   *
   * @param session the session
   * @param wish who, and from which game on
   * @return what was done, or why nothing was, in a sentence
   */
  public String fromNowOn(SessionId session, Wish wish) {
    AtomicReference<String> done = new AtomicReference<>("");
    PlanEdit edit = keeper.change(session, open -> swapped(open, wish, done));
    return edit instanceof PlanEdit.Refused refused
        ? refused.sentence()
        : String.valueOf(done.get());
  }

  private PlanEdit swapped(OpenSession open, Wish wish, AtomicReference<String> done) {
    Optional<PlayerId> one = present(open, wish.one());
    Optional<PlayerId> other = present(open, wish.other());
    if (open.progress().isEnded()) {
      return new PlanEdit.Refused("The session has ended, so nobody changes places any more.");
    }
    if (one.isEmpty() || other.isEmpty() || one.equals(other)) {
      return new PlanEdit.Refused(
          "Two different people of this session must be chosen. Maybe choose the second one.");
    }
    List<String> not = new ArrayList<>();
    Set<GameId> staying = staying(open, wish.present());
    PlanEdit whole =
        desk.edit(
            open.session(),
            editor -> inEveryBlock(new Pass(editor, open, staying, not), one.get(), other.get()));
    String swapped =
        "%s and %s change places from the next game on; scores so far stay."
            .formatted(open.names().of(one.get()), open.names().of(other.get()));
    done.set(not.isEmpty() ? swapped : swapped + " Not everywhere: " + not.get(0));
    return whole instanceof PlanEdit.Refused && !not.isEmpty()
        ? new PlanEdit.Refused(not.get(0))
        : whole;
  }

  private static Optional<PlayerId> present(OpenSession open, String id) {
    return open.plan().present().stream().filter(each -> each.value().equals(id)).findFirst();
  }

  /**
   * One pass through the plan.
   *
   * @param editor changes the plan
   * @param open the session as it stands
   * @param staying games that keep their players
   * @param not why a block could not be changed; filled on the way
   */
  private record Pass(PlanEditor editor, OpenSession open, Set<GameId> staying, List<String> not) {}

  private static PlanEdit inEveryBlock(Pass pass, PlayerId one, PlayerId other) {
    SeatChange seats = new SeatChange(pass.editor(), pass.open());
    PlanEdit last =
        new PlanEdit.Refused(
            "Neither of the two has a game still to come. Maybe add games to the plan first.");
    for (PlannedBlock block : toCome(pass.open())) {
      PlanEdit edit =
          seats.inAllTurnsToCome(block, one, other, game -> pass.staying().contains(game.id()));
      if (edit instanceof PlanEdit.Changed) {
        last = edit;
      } else if (!edit.equals(SeatChange.NOTHING_TO_COME)) {
        pass.not().add(((PlanEdit.Refused) edit).sentence());
      }
    }
    return last;
  }

  /** Games that fall away keep their names; those that lanes are at are finished, if wished. */
  private static Set<GameId> staying(OpenSession open, Present present) {
    Set<GameId> staying = new HashSet<>();
    open.current()
        .ifPresent(
            block -> {
              block.games().stream()
                  .map(game -> game.id())
                  .filter(game -> open.progress().fallsAway(block.id(), game))
                  .forEach(staying::add);
              if (present == Present.FINISH) {
                open.gamesOn(block).forEach(game -> staying.add(game.id()));
              }
            });
    return staying;
  }

  /** The block that is on, and those behind it. */
  private static List<PlannedBlock> toCome(OpenSession open) {
    List<PlannedBlock> blocks = open.plan().blocks();
    int from = 0;
    for (int place = 0; place < blocks.size(); place++) {
      boolean begun = open.progress().startedAt(blocks.get(place).id()).isPresent();
      boolean on = open.current().filter(blocks.get(place)::equals).isPresent();
      from = on ? place : begun ? place + 1 : from;
    }
    return blocks.subList(Math.min(from, blocks.size()), blocks.size());
  }
}
