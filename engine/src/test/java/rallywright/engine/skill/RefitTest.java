package rallywright.engine.skill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * Clubs of several groups: cutting them into groups changes nothing where the groups do not meet,
 * and little where a few games have guests; an update after a session gives what a full fit gives.
 * The tolerances of the update are those that the project set itself: 0.01 in means, 2 % in SDs.
 */
class RefitTest {
  private static final SkillPrior PRIOR = SkillPrior.DEFAULT;
  private static final int SKILLS = 4;
  private static final int GROUP = 7;

  /** Groups of seven players who drill for some weeks; some games have a guest. */
  private static final class Groups {
    private final Random random;
    private final Club club;
    private final List<Evidence> evidence = new ArrayList<>();
    private final double[][] skills;
    private final double guests;

    private Groups(int groups, double guests, long seed) {
      random = new Random(seed);
      this.guests = guests;
      List<Entrant> entrants = new ArrayList<>();
      skills = new double[groups * GROUP][SKILLS];
      for (double[] own : skills) {
        entrants.add(Entrant.atLevel(3.5));
        double common = 0.5 * random.nextGaussian();
        for (int skill = 0; skill < SKILLS; skill++) {
          own[skill] = common + 0.4 * random.nextGaussian();
        }
      }
      club =
          new Club(
              new SkillGroups(List.of(0, 0, 1, 1)),
              entrants,
              List.of(new SharedEffect("back v up", -0.5, 0.4)),
              List.of(SharedEffect.gain("drops"), SharedEffect.gain("dinks")));
    }

    private void season(int weeks) {
      for (int week = 0; week < weeks; week++) {
        for (int group = 0; group < skills.length / GROUP; group++) {
          evidence.addAll(session(group, week));
        }
      }
    }

    private List<Evidence> session(int group, int week) {
      List<Evidence> played = new ArrayList<>();
      for (int game = 0; game < 12; game++) {
        int a = group * GROUP + random.nextInt(GROUP);
        int b = group * GROUP + (a + 1 + random.nextInt(GROUP - 1)) % GROUP;
        if (random.nextDouble() < guests) {
          b = (a + GROUP + random.nextInt(skills.length - 2 * GROUP)) % skills.length;
        }
        if (a != b) {
          played.add(game(week, a, b));
          played.add(new Practice(week, a, game % 2, Weights.single(game % 2, SKILLS), 8));
        }
      }
      return played;
    }

    private Game game(int week, int a, int b) {
      int skill = random.nextInt(SKILLS);
      Weights weights = Weights.single(skill, SKILLS);
      boolean even = random.nextBoolean();
      double edge = skills[a][skill] - skills[b][skill] - (even ? 0 : 0.5);
      int won = 0;
      for (int rally = 0; rally < 9; rally++) {
        won += random.nextDouble() < 1 / (1 + Math.exp(-edge)) ? 1 : 0;
      }
      Contest contest =
          even
              ? Contest.even(weights)
              : new Contest(weights, weights, Contest.Roles.BY_SIDE, List.of(0));
      return new Game(week, contest, Sides.of(a, b), new RalliesWon(won, 9 - won));
    }

    private SkillModel model() {
      return SkillModel.of(club, PRIOR);
    }
  }

  private static void assertSame(Posterior found, Posterior expected, Groups groups, int week) {
    double sdRatio = 0;
    for (int player = 0; player < groups.skills.length; player++) {
      for (int skill = 0; skill < SKILLS; skill++) {
        for (int at : new int[] {week, Math.max(0, week - 3)}) {
          SkillSum.Key key = new SkillSum.Key(player, skill, at);
          assertThat(found.skill(key).mean())
              .as("mean of %s", key)
              .isCloseTo(expected.skill(key).mean(), within(0.01));
          sdRatio =
              Math.max(sdRatio, Math.abs(found.skill(key).sd() / expected.skill(key).sd() - 1));
        }
      }
    }
    assertThat(sdRatio).isLessThan(0.02);
    assertThat(found.effect(0).mean()).isCloseTo(expected.effect(0).mean(), within(0.01));
    assertThat(found.gain(0).sd() / expected.gain(0).sd()).isCloseTo(1, within(0.02));
  }

  @Test
  void groupsThatNeverMeet_areSolvedApart_withTheSameAnswer() {
    Groups groups = new Groups(3, 0, 11);
    groups.season(4);
    Partition partition = Partition.of(groups.skills.length, groups.evidence);
    assertThat(partition.groups()).isEqualTo(3);
    Posterior apart = groups.model().fit(groups.evidence, Set.of());
    Posterior whole = groups.model().fitIn(onePart(groups), groups.evidence, Set.of());
    for (int player = 0; player < groups.skills.length; player++) {
      SkillSum.Key key = new SkillSum.Key(player, 1, 3);
      assertThat(apart.skill(key).mean()).isCloseTo(whole.skill(key).mean(), within(1e-9));
      assertThat(apart.skill(key).sd()).isCloseTo(whole.skill(key).sd(), within(1e-9));
    }
    assertThat(apart.logEvidence()).isCloseTo(whole.logEvidence(), within(1e-7));
  }

  @Test
  void guests_acrossGroups_leaveTheModeExact_andTheSpreadsNearlySo() {
    Groups groups = new Groups(8, 0.05, 12);
    groups.season(6);
    Partition cut = Partition.of(groups.skills.length, groups.evidence);
    assertThat(cut.groups()).isEqualTo(8);
    Posterior apart = groups.model().fit(groups.evidence, Set.of());
    Posterior whole = groups.model().fitIn(onePart(groups), groups.evidence, Set.of());
    double worst = 0;
    double square = 0;
    for (int player = 0; player < groups.skills.length; player++) {
      SkillSum.Key key = new SkillSum.Key(player, player % SKILLS, 5);
      assertThat(apart.skillMode(key).mean()).isCloseTo(whole.skillMode(key).mean(), within(1e-6));
      double error = apart.skill(key).sd() / whole.skill(key).sd() - 1;
      worst = Math.max(worst, Math.abs(error));
      square += error * error;
    }
    assertThat(Math.sqrt(square / groups.skills.length)).isLessThan(0.01);
    assertThat(worst).isLessThan(0.02);
  }

  /*
   * The worst case: everybody plays everybody, and the club is cut at random all the same. The
   * bounds are what was measured, rounded up.
   */
  @Test
  void fullMixing_cutAtRandom_leavesTheModeExact_andTheSpreadsToAFewPercent() {
    Groups groups = new Groups(8, 0.87, 16);
    groups.season(6);
    int[] group = IntStream.range(0, groups.skills.length).map(i -> i / GROUP).toArray();
    Posterior apart = groups.model().fitIn(Partition.ofGroups(group), groups.evidence, Set.of());
    Posterior whole = groups.model().fitIn(onePart(groups), groups.evidence, Set.of());
    double square = 0;
    double worst = 0;
    for (int player = 0; player < groups.skills.length; player++) {
      SkillSum.Key key = new SkillSum.Key(player, player % SKILLS, 5);
      assertThat(apart.skillMode(key).mean()).isCloseTo(whole.skillMode(key).mean(), within(1e-5));
      double error = apart.skill(key).sd() / whole.skill(key).sd() - 1;
      worst = Math.max(worst, Math.abs(error));
      square += error * error;
    }
    assertThat(Math.sqrt(square / groups.skills.length)).isLessThan(0.05);
    assertThat(worst).isLessThan(0.1);
  }

  @Test
  void update_afterASession_isThatOfAFullFit() {
    Groups groups = new Groups(8, 0, 13);
    groups.season(6);
    Posterior before = groups.model().fit(groups.evidence, Set.of());
    before.skill(new SkillSum.Key(0, 0, 5));
    groups.evidence.addAll(groups.session(2, 6));
    Posterior updated = groups.model().refit(before, groups.evidence, Set.of());
    assertSame(updated, groups.model().fit(groups.evidence, Set.of()), groups, 6);
    assertThat(awake(updated)).isEqualTo(1);
  }

  @Test
  void updates_ofASingleGroup_takeUpTheOldWeeks_andStayThoseOfAFullFit() {
    Groups groups = new Groups(3, 0, 17);
    for (int week = 0; week < 9; week++) {
      groups.evidence.addAll(groups.session(1, week));
    }
    Posterior posterior = groups.model().fit(groups.evidence, Set.of());
    for (int week = 9; week < 13; week++) {
      List<Evidence> more = groups.session(1, week);
      groups.evidence.addAll(more);
      posterior = groups.model().plus(posterior, more);
    }
    assertSame(posterior, groups.model().fit(groups.evidence, Set.of()), groups, 12);
  }

  @Test
  void updates_afterManySessionsWithGuests_stayThoseOfAFullFit() {
    Groups groups = new Groups(8, 0.05, 14);
    groups.season(5);
    Posterior posterior = groups.model().fit(groups.evidence, Set.of());
    for (int session = 0; session < 16; session++) {
      List<Evidence> more = groups.session(session % 8, 5 + session / 8);
      groups.evidence.addAll(more);
      posterior = groups.model().plus(posterior, more);
    }
    assertSame(posterior, groups.model().fit(groups.evidence, Set.of()), groups, 6);
  }

  @Test
  void update_withANewPlayerAndACorrectedScore_isThatOfAFullFit() {
    Groups groups = new Groups(8, 0, 15);
    groups.season(4);
    List<Entrant> fewer = groups.club.entrants().subList(0, 8 * GROUP - 1);
    Club small = new Club(groups.club.skills(), fewer, groups.club.effects(), groups.club.gains());
    List<Evidence> without =
        new ArrayList<>(groups.evidence.stream().filter(each -> !names(each, 55)).toList());
    Posterior before = SkillModel.of(small, PRIOR).fit(without, Set.of());
    groups.evidence.remove(3);
    Posterior updated = groups.model().refit(before, groups.evidence, Set.of());
    assertSame(updated, groups.model().fit(groups.evidence, Set.of()), groups, 4);
  }

  private static boolean names(Evidence evidence, int player) {
    return evidence instanceof Practice practice
        ? practice.player() == player
        : evidence instanceof Game game
            && (game.sides().a().contains(player) || game.sides().b().contains(player));
  }

  private static long awake(Posterior posterior) {
    Assembly assembly = posterior.fit().assembly();
    return IntStream.range(0, assembly.parts()).filter(part -> !assembly.rests(part)).count();
  }

  private static Partition onePart(Groups groups) {
    return Partition.whole(groups.skills.length);
  }
}
