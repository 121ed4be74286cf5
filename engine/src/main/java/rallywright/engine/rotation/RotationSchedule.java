package rallywright.engine.rotation;

import java.util.List;

/**
 * The rounds of a rotation and what they come to.
 *
 * @param rounds the rounds in order, those played already first
 * @param measures how often partners and opponents repeat, how even the matches are
 */
public record RotationSchedule(List<RotationRound> rounds, RotationMeasures measures) {

  /** Keeps the rounds as they are. */
  public RotationSchedule {
    rounds = List.copyOf(rounds);
  }
}
