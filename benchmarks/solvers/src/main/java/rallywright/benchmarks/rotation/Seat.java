package rallywright.benchmarks.rotation;

import ai.timefold.solver.core.api.domain.entity.PlanningEntity;
import ai.timefold.solver.core.api.domain.lookup.PlanningId;
import ai.timefold.solver.core.api.domain.variable.PlanningVariable;
import org.jspecify.annotations.Nullable;

/** A place at a table in one round, with the player who takes it. */
@PlanningEntity
public final class Seat {

  @PlanningId private int id;
  private int round;
  private int place;
  @PlanningVariable private @Nullable Integer player;

  /** For the solver. */
  public Seat() {}

  Seat(int id, int round, int place, int player) {
    this.id = id;
    this.round = round;
    this.place = place;
    this.player = player;
  }

  int id() {
    return id;
  }

  int round() {
    return round;
  }

  int place() {
    return place;
  }

  int table() {
    return place / 4;
  }

  /**
   * Who sits here.
   *
   * @return the place of the player in the list, from 0
   */
  public @Nullable Integer getPlayer() {
    return player;
  }

  /**
   * Seats somebody.
   *
   * @param next the place of the player in the list, from 0
   */
  public void setPlayer(@Nullable Integer next) {
    player = next;
  }
}
