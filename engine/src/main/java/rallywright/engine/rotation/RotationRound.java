package rallywright.engine.rotation;

import java.util.List;
import rallywright.engine.club.PlayerId;

/**
 * One round: who plays and who sits out.
 *
 * @param number the round, from 1
 * @param matches the matches in the order of the courts
 * @param sitting who is there and sits out
 */
public record RotationRound(int number, List<RotationMatch> matches, List<PlayerId> sitting) {

  /** Keeps the round as it is. */
  public RotationRound {
    matches = List.copyOf(matches);
    sitting = List.copyOf(sitting);
  }
}
