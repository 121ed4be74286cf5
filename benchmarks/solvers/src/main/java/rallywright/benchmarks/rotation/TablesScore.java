package rallywright.benchmarks.rotation;

import ai.timefold.solver.core.api.score.buildin.simplelong.SimpleLongScore;
import ai.timefold.solver.core.api.score.calculator.IncrementalScoreCalculator;

/** The cost as a score, kept up with each seat that changes. */
public final class TablesScore implements IncrementalScoreCalculator<Tables, SimpleLongScore> {

  private int players;
  private int[] partners = {};
  private int[] opponents = {};
  private long[] millilogits = {};
  private int[][] lines = {};
  private long cost;

  @Override
  public void resetWorkingSolution(Tables tables) {
    millilogits = tables.millilogits();
    players = millilogits.length;
    partners = new int[players * players];
    opponents = new int[players * players];
    lines = new int[tables.rounds()][players];
    cost = 0;
    for (int[] line : lines) {
      java.util.Arrays.fill(line, -1);
    }
    for (Seat seat : tables.seats()) {
      enter(seat);
    }
  }

  private void enter(Seat seat) {
    Integer player = seat.getPlayer();
    if (player != null) {
      change(lines[seat.round()], seat.place(), player, 1);
    }
  }

  private void leave(Seat seat) {
    Integer player = seat.getPlayer();
    if (player != null) {
      change(lines[seat.round()], seat.place(), player, -1);
    }
  }

  private void change(int[] line, int place, int player, int by) {
    int first = place / 4 * 4;
    cost -= balance(line, first);
    line[place] = by > 0 ? player : -1;
    for (int other = first; other < first + 4; other++) {
      if (other != place && line[other] >= 0) {
        boolean close = other / 2 == place / 2;
        int low = Math.min(player, line[other]);
        int cell = low * players + Math.max(player, line[other]);
        int[] counts = close ? partners : opponents;
        long weight = close ? Weights.PARTNER_AGAIN : Weights.OPPONENT_AGAIN;
        cost += by > 0 ? weight * counts[cell] : -weight * (counts[cell] - 1);
        counts[cell] += by;
      }
    }
    cost += balance(line, first);
  }

  private long balance(int[] line, int first) {
    long difference = 0;
    for (int place = first; place < first + 4; place++) {
      if (line[place] < 0) {
        return 0;
      }
      difference += (place < first + 2 ? 1 : -1) * millilogits[line[place]];
    }
    return Weights.ofDifference(Math.abs(difference));
  }

  @Override
  public void beforeVariableChanged(Object entity, String variable) {
    leave((Seat) entity);
  }

  @Override
  public void afterVariableChanged(Object entity, String variable) {
    enter((Seat) entity);
  }

  @Override
  public void beforeEntityAdded(Object entity) {}

  @Override
  public void afterEntityAdded(Object entity) {
    enter((Seat) entity);
  }

  @Override
  public void beforeEntityRemoved(Object entity) {
    leave((Seat) entity);
  }

  @Override
  public void afterEntityRemoved(Object entity) {}

  @Override
  public SimpleLongScore calculateScore() {
    return SimpleLongScore.of(-cost);
  }
}
