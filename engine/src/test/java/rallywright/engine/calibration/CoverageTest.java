package rallywright.engine.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import rallywright.engine.skill.Estimate;

/** The check itself must see estimates that are wrong, and must not see a fault in right ones. */
class CoverageTest {
  private static final int CLUBS = 400;
  private static final int ANSWERS = 20;
  private static final int BINS = 20;

  /** χ² with 19 degrees of freedom exceeds this once in a thousand (any printed table). */
  private static final double ONCE_IN_A_THOUSAND = 43.820;

  /** Clubs whose truth lies a number of stated SDs away: normal with this mean and SD. */
  private static List<ClubCheck> clubs(double mean, double sd) {
    SplittableRandom random = new SplittableRandom(11);
    List<ClubCheck> clubs = new ArrayList<>();
    for (int club = 0; club < CLUBS; club++) {
      List<Answer> answers = new ArrayList<>();
      for (int i = 0; i < ANSWERS; i++) {
        answers.add(answer(mean + sd * random.nextGaussian()));
      }
      int rank = ClubCheck.rank(answers.get(0), random);
      clubs.add(new ClubCheck(Map.of(Kind.SKILL, answers), Map.of(Kind.SKILL, rank)));
    }
    return clubs;
  }

  private static Answer answer(double truth) {
    return new Answer(new Estimate(0, 1), truth, 2);
  }

  private static ClubCheck club(double... truths) {
    List<Answer> answers = new ArrayList<>();
    for (double truth : truths) {
      answers.add(answer(truth));
    }
    return new ClubCheck(Map.of(Kind.SKILL, answers), Map.of(Kind.SKILL, 0));
  }

  @Test
  void rightSpreads_hold() {
    List<ClubCheck> clubs = clubs(0, 1);
    for (double share : new double[] {0.5, 0.8, 0.9, 0.95}) {
      assertThat(Coverage.of(clubs, Kind.SKILL, share).holdsWithin(0.02)).isTrue();
    }
    assertThat(RankHistogram.of(clubs, Kind.SKILL, BINS).chiSquare())
        .isLessThan(ONCE_IN_A_THOUSAND);
  }

  @Test
  void spreadsOneSixthTooSmall_areSeen() {
    List<ClubCheck> clubs = clubs(0, 1.2);
    assertThat(Coverage.of(clubs, Kind.SKILL, 0.8).holdsWithin(0.02)).isFalse();
    assertThat(Coverage.of(clubs, Kind.SKILL, 0.9).covered()).isLessThan(0.87);
  }

  @Test
  void spreadsTooLarge_areSeen() {
    List<ClubCheck> clubs = clubs(0, 0.8);
    assertThat(Coverage.of(clubs, Kind.SKILL, 0.5).holdsWithin(0.02)).isFalse();
  }

  @Test
  void meansHalfAnSdTooLow_tiltTheRanks() {
    RankHistogram ranks = RankHistogram.of(clubs(0.5, 1), Kind.SKILL, BINS);
    assertThat(ranks.chiSquare()).isGreaterThan(ONCE_IN_A_THOUSAND);
    assertThat(ranks.counts().get(BINS - 1)).isGreaterThan(ranks.counts().get(0));
  }

  @Test
  void standardError_ofThreeClubs_isThatOfARatioOverClusters() {
    // Within 1.2816 SDs: 2 of 2, 1 of 3, 0 of 1. By hand: p = 3/6; the clubs are off by 1, −1/2,
    // −1/2; √(3/2 · 1.5)/6 = 0.25.
    List<ClubCheck> clubs = List.of(club(0.1, 1.2), club(-1, 2, 3), club(1.3));
    Coverage coverage = Coverage.of(clubs, Kind.SKILL, 0.8);
    assertThat(coverage.covered()).isEqualTo(0.5);
    assertThat(coverage.standardError()).isCloseTo(0.25, within(1e-12));
    assertThat(coverage.answers()).isEqualTo(6);
  }

  @Test
  void oneClub_isRefused() {
    assertThatThrownBy(() -> Coverage.of(List.of(club(0)), Kind.SKILL, 0.8))
        .hasMessageContaining("(1) must be 2 or more. Maybe 500.");
  }

  @Test
  void binsThatDoNotDivide_areRefused() {
    assertThatThrownBy(() -> RankHistogram.of(clubs(0, 1), Kind.SKILL, 30))
        .hasMessageContaining("The number of bins (30) must divide 1000. Maybe 20.");
  }
}
