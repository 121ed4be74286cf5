package rallywright.engine.point;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import rallywright.engine.quantity.Source;
import rallywright.engine.score.Ending.Stage;

/**
 * The stages of a point with what is contested in each: data, like a drill's weights.
 *
 * @param name for people, for example "doubles"
 * @param contests one for each stage; at the net the rally stays until it ends
 * @param errorShare of the rallies that end, how many end by an error of the loser, 0 to 1
 * @param source where the numbers come from
 */
public record PointStages(
    String name, Map<Stage, StageContest> contests, double errorShare, Source source) {

  /** Copies the map; asks for every stage; the checks are written so that NaN fails them. */
  public PointStages {
    Map<Stage, StageContest> copy = new EnumMap<>(Stage.class);
    for (Stage stage : Stage.values()) {
      StageContest contest = contests.get(stage);
      if (contest == null) {
        throw new IllegalArgumentException(
            "The stage %s of %s is missing; every stage is needed.".formatted(stage, name));
      }
      copy.put(stage, contest);
    }
    if (Objects.requireNonNull(copy.get(Stage.NET_EXCHANGE)).again() != 1) {
      throw new IllegalArgumentException(
          "A rally that goes on at the net stays there: the chance to stay must be 1.");
    }
    if (!(errorShare >= 0 && errorShare <= 1)) {
      throw new IllegalArgumentException(
          "The share of errors (%s) must lie from 0 to 1. Maybe 0.6.".formatted(errorShare));
    }
    contests = Collections.unmodifiableMap(copy);
  }

  /**
   * One stage.
   *
   * @param stage the stage
   * @return what is contested in it
   */
  public StageContest of(Stage stage) {
    return Objects.requireNonNull(contests.get(stage));
  }

  /**
   * These stages with one changed.
   *
   * @param stage which
   * @param contest what is contested in it
   * @return the changed stages
   */
  public PointStages with(Stage stage, StageContest contest) {
    Map<Stage, StageContest> changed = new EnumMap<>(contests);
    changed.put(stage, contest);
    return new PointStages(name, changed, errorShare, source);
  }

  /**
   * These stages with numbers from somewhere else.
   *
   * @param other where they come from
   * @return the same stages with that source
   */
  public PointStages from(Source other) {
    return new PointStages(name, contests, errorShare, other);
  }
}
