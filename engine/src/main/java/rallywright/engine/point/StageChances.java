package rallywright.engine.point;

/**
 * What may happen in one stage of a point; the chances sum to 1.
 *
 * @param serverWins the rally ends here for the server's side
 * @param receiverWins the rally ends here for the receiver's side
 * @param again the rally goes on and stays in this stage
 * @param onward the rally goes on to the next stage
 */
public record StageChances(double serverWins, double receiverWins, double again, double onward) {

  /**
   * The chance that the rally ends in this stage once it has come here, however often it stays.
   *
   * @return from 0 to 1
   */
  public double endsHere() {
    return (serverWins + receiverWins) / (1 - again);
  }
}
