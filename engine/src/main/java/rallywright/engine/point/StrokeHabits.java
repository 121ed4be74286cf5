package rallywright.engine.point;

import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import rallywright.engine.point.NotedStroke.Context;
import rallywright.engine.point.NotedStroke.FirstShares;
import rallywright.engine.score.Ending.Stroke;
import rallywright.engine.skill.Estimate;

/**
 * With which strokes lost rallies of other players end, setting by setting.
 *
 * <p>Model: in each setting the shares of the strokes have a Dirichlet prior that weighs {@link
 * #PRIOR_RALLIES} rallies and is shaped like the drill's skill weights; what the others' noted
 * rallies say is added. A player's skills then tilt the shares: a stroke that is weaker than the
 * player's others ends more.
 */
final class StrokeHabits {

  /** How many rallies the first idea of a setting weighs: an assumption. */
  static final double PRIOR_RALLIES = 20;

  private final Map<Context, FirstShares> first;
  private final Map<Context, Map<Stroke, Integer>> counts = new LinkedHashMap<>();
  private final Map<Context, Integer> totals = new LinkedHashMap<>();

  StrokeHabits(Map<Context, FirstShares> first, List<NotedStroke> others) {
    this.first = first;
    for (NotedStroke noted : others) {
      counts
          .computeIfAbsent(noted.context(), context -> new EnumMap<>(Stroke.class))
          .merge(noted.stroke(), 1, Integer::sum);
      totals.merge(noted.context(), 1, Integer::sum);
    }
  }

  /** The mean share of a stroke over some lost rallies; its SD as if all erred together. */
  Estimate share(Stroke stroke, List<NotedStroke> own) {
    double mean = 0;
    double sd = 0;
    for (NotedStroke noted : own) {
      double share = shareOf(stroke, noted);
      double size = PRIOR_RALLIES + totals.getOrDefault(noted.context(), 0) + 1;
      double leftOut = share * (1 - share) * ExpectedEndings.LEFT_OUT_SD;
      mean += share / own.size();
      sd += Math.sqrt(share * (1 - share) / size + leftOut * leftOut) / own.size();
    }
    return new Estimate(mean, sd);
  }

  private double shareOf(Stroke stroke, NotedStroke noted) {
    FirstShares shares = first.getOrDefault(noted.context(), new FirstShares(Map.of()));
    Map<Stroke, Integer> seen = counts.getOrDefault(noted.context(), Map.of());
    Set<Stroke> possible = new HashSet<>(shares.shares().keySet());
    possible.addAll(seen.keySet());
    double wanted = 0;
    double sum = 0;
    for (Stroke each : possible) {
      double weight =
          (PRIOR_RALLIES * shares.shares().getOrDefault(each, 0.0) + seen.getOrDefault(each, 0))
              * Math.exp(noted.tilt().getOrDefault(each, 0.0));
      sum += weight;
      wanted += each == stroke ? weight : 0;
    }
    return sum > 0 ? wanted / sum : 0;
  }
}
