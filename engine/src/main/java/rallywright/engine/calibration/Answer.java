package rallywright.engine.calibration;

import rallywright.engine.skill.Estimate;

/**
 * An answer of the model beside the truth.
 *
 * @param estimate mean and SD that the model gave; the SD above 0
 * @param truth the number that was drawn, in the same unit
 * @param priorSd how unsure the model was before the season, in the same unit
 */
public record Answer(Estimate estimate, double truth, double priorSd) {
  /**
   * How far the truth lies from the estimate.
   *
   * @return in SDs of the estimate
   */
  public double error() {
    return (truth - estimate.mean()) / estimate.sd();
  }
}
