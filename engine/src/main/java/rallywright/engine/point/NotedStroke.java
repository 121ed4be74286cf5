package rallywright.engine.point;

import java.util.EnumMap;
import java.util.Map;
import rallywright.engine.score.Ending.Manner;
import rallywright.engine.score.Ending.Stroke;

/**
 * A lost rally of which somebody noted the stroke and whether it was an error.
 *
 * @param context in which setting
 * @param stroke the stroke
 * @param tilt by how much the skills make each stroke likelier, in logits; a stroke that is missing
 *     is as likely as it usually is
 */
public record NotedStroke(Context context, Stroke stroke, Map<Stroke, Double> tilt) {

  /** Copies the map. */
  public NotedStroke {
    tilt = Map.copyOf(tilt);
  }

  /**
   * A setting in which strokes can be compared.
   *
   * @param drill the drill
   * @param role the role of the side that lost
   * @param manner error or beaten
   */
  public record Context(String drill, String role, Manner manner) {}

  /**
   * What is believed of a setting before any stroke was noted.
   *
   * @param shares how often each stroke ends a lost rally; they sum to 1
   */
  public record FirstShares(Map<Stroke, Double> shares) {
    /** A stroke that may be played is believed to end at least this share. */
    private static final double LEAST = 0.02;

    /** Brings the sum to 1. */
    public FirstShares {
      Map<Stroke, Double> kept = new EnumMap<>(Stroke.class);
      double sum = 0;
      for (Map.Entry<Stroke, Double> share : shares.entrySet()) {
        if (!(share.getValue() >= 0 && share.getValue() < Double.POSITIVE_INFINITY)) {
          throw new IllegalArgumentException(
              "The share of a stroke (%s) must be 0 or more.".formatted(share.getValue()));
        }
        double value = Math.max(LEAST, share.getValue());
        kept.put(share.getKey(), value);
        sum += value;
      }
      double total = sum;
      kept.replaceAll((stroke, value) -> value / total);
      shares = Map.copyOf(kept);
    }
  }
}
