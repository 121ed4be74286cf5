package rallywright.engine.rotation;

import java.util.List;
import java.util.stream.Stream;
import rallywright.engine.club.PlayerId;
import rallywright.engine.odds.FairGame.HeadStart;

/**
 * Those who play together in one round.
 *
 * @param court the court, from 1
 * @param lane the lane on the court, from 1; 1 where a court is not split
 * @param a the side that begins; in a group of mates everyone
 * @param b the other side; nobody in a group of more than two mates
 * @param headStart points given before the first rally, with the chance that side a then wins
 */
public record RotationMatch(
    int court, int lane, List<PlayerId> a, List<PlayerId> b, HeadStart headStart) {

  /** An even match: nothing is given. */
  public static final HeadStart EVEN = new HeadStart(0, 0, 0.5);

  /** Keeps the sides as they are. */
  public RotationMatch {
    a = List.copyOf(a);
    b = List.copyOf(b);
  }

  /** The same place, with nobody on it yet. */
  RotationMatch withNobody() {
    return new RotationMatch(court, lane, List.of(), List.of(), EVEN);
  }

  /**
   * Everyone in the match.
   *
   * @return side a, then side b
   */
  public List<PlayerId> players() {
    return Stream.concat(a.stream(), b.stream()).toList();
  }
}
