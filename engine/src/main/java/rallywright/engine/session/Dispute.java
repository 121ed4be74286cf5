package rallywright.engine.session;

import java.util.List;
import rallywright.engine.plan.GameId;
import rallywright.engine.score.Score;

/**
 * Two phones scored one game without knowing of each other and do not say the same. The game stands
 * as the entries say that reached the server first; the other phone's wait here until somebody says
 * which is right, by undoing the ones or the others.
 *
 * @param game the game
 * @param phone the phone whose entries wait
 * @param score the score that this phone shows
 * @param over whether the game is over for this phone
 * @param waiting the entries that wait, in order
 * @param standing the entries that count and that this phone did not know of, in order
 */
public record Dispute(
    GameId game,
    String phone,
    Score score,
    boolean over,
    List<EventId> waiting,
    List<EventId> standing) {

  /** Copies the lists. */
  public Dispute {
    waiting = List.copyOf(waiting);
    standing = List.copyOf(standing);
  }
}
