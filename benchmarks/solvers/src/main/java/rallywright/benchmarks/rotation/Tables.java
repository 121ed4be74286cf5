package rallywright.benchmarks.rotation;

import ai.timefold.solver.core.api.domain.solution.PlanningEntityCollectionProperty;
import ai.timefold.solver.core.api.domain.solution.PlanningScore;
import ai.timefold.solver.core.api.domain.solution.PlanningSolution;
import ai.timefold.solver.core.api.domain.solution.ProblemFactCollectionProperty;
import ai.timefold.solver.core.api.domain.valuerange.ValueRangeProvider;
import ai.timefold.solver.core.api.score.buildin.simplelong.SimpleLongScore;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** All seats of all rounds. */
@PlanningSolution
public final class Tables {

  @ProblemFactCollectionProperty @ValueRangeProvider private List<Integer> players = List.of();
  @PlanningEntityCollectionProperty private List<Seat> seats = List.of();
  @PlanningScore private @Nullable SimpleLongScore score;
  private int rounds;
  private long[] millilogits = {};

  /** For the solver. */
  public Tables() {}

  Tables(int rounds, long[] millilogits, List<Seat> seats) {
    this.rounds = rounds;
    this.millilogits = millilogits;
    this.seats = seats;
    players = IntStream.range(0, millilogits.length).boxed().toList();
  }

  int rounds() {
    return rounds;
  }

  long[] millilogits() {
    return millilogits;
  }

  /**
   * Who can sit anywhere.
   *
   * @return the places of the players in the list, from 0
   */
  public List<Integer> getPlayers() {
    return players;
  }

  List<Seat> seats() {
    return seats;
  }

  /**
   * The score.
   *
   * @return the score, if any was set
   */
  public @Nullable SimpleLongScore getScore() {
    return score;
  }

  /**
   * Sets the score.
   *
   * @param next the score
   */
  public void setScore(@Nullable SimpleLongScore next) {
    score = next;
  }
}
