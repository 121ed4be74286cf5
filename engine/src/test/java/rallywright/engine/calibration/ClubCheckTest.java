package rallywright.engine.calibration;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Simulation-based calibration in the small: 60 clubs with a fixed seed. The whole check has its
 * own command, as many more clubs are needed to see a fault of two in a hundred.
 */
class ClubCheckTest {
  private static final int CLUBS = 60;
  private static final int SEED = 20_18;

  /** Four in a hundred, twice what the whole check allows. */
  private static final double TOLERANCE = 0.04;

  private static final int BINS = 10;

  /** χ² with 9 degrees of freedom exceeds this once in a thousand (any printed table). */
  private static final double ONCE_IN_A_THOUSAND = 27.877;

  private static final List<ClubCheck> CHECKS = checks();

  private static List<ClubCheck> checks() {
    SplittableRandom root = new SplittableRandom(SEED);
    return IntStream.range(0, CLUBS).mapToObj(club -> ClubCheck.of(root.split())).toList();
  }

  @ParameterizedTest
  @EnumSource(Kind.class)
  void intervals_ofClubsDrawnFromThePrior_coverWhatTheySay(Kind kind) {
    for (double share : new double[] {0.5, 0.8, 0.9, 0.95}) {
      Coverage coverage = Coverage.of(CHECKS, kind, share);
      assertThat(coverage.holdsWithin(TOLERANCE)).as(coverage.toString()).isTrue();
    }
  }

  @ParameterizedTest
  @EnumSource(Kind.class)
  void ranks_ofTheTruthAmongDraws_areFlat(Kind kind) {
    RankHistogram ranks = RankHistogram.of(CHECKS, kind, BINS);
    assertThat(ranks.chiSquare()).as(ranks.toString()).isLessThan(ONCE_IN_A_THOUSAND);
  }
}
