package rallywright.engine.flight;

/**
 * What an opponent has when a ball comes.
 *
 * @param met whether they can meet it in the air; after the bounce it is the time to the landing
 * @param ball the ball there, with its seconds after contact
 * @param spareSeconds what is left after reaction and swing; below 0 they are late
 * @param stepM how far they can step in the time to spare, in metres
 */
public record TimeLeft(Met met, Passage ball, double spareSeconds, double stepM) {

  /** Where the ball is met. */
  public enum Met {
    /** It gets to their reach before it lands. */
    IN_THE_AIR,
    /** It lands before their reach. */
    AFTER_THE_BOUNCE
  }
}
