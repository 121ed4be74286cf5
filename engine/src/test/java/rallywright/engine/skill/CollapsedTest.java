package rallywright.engine.skill;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class CollapsedTest {
  private static final Contest EVEN = Contest.even(Weights.single(0, 1));

  private static Game game(int a, int b, Result result) {
    return new Game(0, EVEN, Sides.of(a, b), result);
  }

  @Test
  void gamesOfTwoPlayers_whoeverIsA_areCountedTogether() {
    assertThat(
            Collapsed.of(
                List.of(game(0, 1, new RalliesWon(5, 3)), game(1, 0, new RalliesWon(2, 5)))))
        .containsExactly(game(0, 1, new RalliesWon(10, 5)));
  }

  @Test
  void rallyLogsOfAnEvenDrill_whoeverIsA_areCountedTogether() {
    assertThat(
            Collapsed.of(
                List.of(
                    game(0, 1, new RalliesByServer(9, 5, 4, 1)),
                    game(1, 0, new RalliesByServer(6, 2, 8, 5)))))
        .containsExactly(game(0, 1, new RalliesByServer(17, 10, 10, 3)));
  }
}
