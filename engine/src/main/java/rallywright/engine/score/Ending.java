package rallywright.engine.score;

import java.util.Optional;

/**
 * How a rally ended, as far as somebody noted it. Each part may be missing, not all three.
 *
 * @param stage in which stage of the point
 * @param stroke with which stroke: the loser's failed one after an error, the winner's after being
 *     beaten
 * @param manner error or beaten
 */
public record Ending(Optional<Stage> stage, Optional<Stroke> stroke, Optional<Manner> manner) {

  /** The stages of a point in the order of play. */
  public enum Stage {
    /** The serve. */
    SERVE,
    /** The return of serve. */
    RETURN,
    /** The serving side's third shot. */
    THIRD_SHOT,
    /** The way to the line, between baseline and non-volley zone. */
    TRANSITION,
    /** Both sides at the non-volley line. */
    NET_EXCHANGE
  }

  /** The strokes, in the trade's words. */
  public enum Stroke {
    /** The stroke that starts the point. */
    SERVE,
    /** The answer to the serve. */
    RETURN,
    /** A fast flat ball from behind. */
    DRIVE,
    /** A soft ball from behind into the kitchen. */
    DROP,
    /** A soft ball out of trouble from the transition zone. */
    RESET,
    /** A soft ball from kitchen to kitchen. */
    DINK,
    /** A speed-up from the line. */
    ATTACK,
    /** A block or counter-volley against an attack. */
    COUNTER,
    /** A volley that keeps the other side deep. */
    PRESSING_VOLLEY,
    /** A high ball over the other side. */
    LOB,
    /** The answer to a high ball, struck from above. */
    OVERHEAD
  }

  /** Whose doing the end was. */
  public enum Manner {
    /** The loser of the rally missed a ball that could be played. */
    ERROR,
    /** The winner's ball could not be played. */
    BEATEN
  }

  /** Checks that something was noted. */
  public Ending {
    if (stage.isEmpty() && stroke.isEmpty() && manner.isEmpty()) {
      throw new IllegalArgumentException(
          "The note (nothing) must name a stage, a stroke, or error or beaten. Maybe leave the"
              + " note out.");
    }
  }

  /**
   * A full note.
   *
   * @param stage in which stage of the point
   * @param stroke with which stroke
   * @param manner error or beaten
   * @return the note
   */
  public static Ending of(Stage stage, Stroke stroke, Manner manner) {
    return new Ending(Optional.of(stage), Optional.of(stroke), Optional.of(manner));
  }
}
