package rallywright.engine.skill;

import java.util.List;
import java.util.Set;

/**
 * The model of a club: what is believed before the first score, and how scores speak of it.
 *
 * <p>What: θ of a player, skill and week, in logits; a random walk over weeks; a rally is won with
 * chance 1/(1+e^−η), η = effects + weights·θ of one side − weights·θ of the other, a pair counting
 * as the mean of two. In: a {@link Club}, {@link Evidence}, a {@link SkillPrior}. Out: a {@link
 * Posterior}, with means and spreads in logits. Limits: rallies of one game are taken as
 * independent given the skills; only differences between players show in games, so that progress
 * which all make alike shows in yardsticks alone; spreads are those of a Gaussian at the mode.
 *
 * <p>For the maintainer: the core ({@link LaplaceFit}) knows nothing of players. It takes a
 * Gaussian prior with a sparse precision and sparse rows, so that published examples run through
 * the same code. The trade made: exact elimination in the order of weeks ({@link BlockCholesky}). A
 * club of some tens of players costs parts of a second; hundreds of players who all meet each other
 * would need another way to solve, which can replace the factor inside without touching this class.
 */
public final class SkillModel {
  private final Club club;
  private final SkillPrior prior;

  private SkillModel(Club club, SkillPrior prior) {
    this.club = club;
    this.prior = prior;
  }

  /**
   * The model of a club.
   *
   * @param club players, skills and effects
   * @param prior what is believed before the first score
   * @return the model
   */
  public static SkillModel of(Club club, SkillPrior prior) {
    return new SkillModel(club, prior);
  }

  /**
   * What the evidence says.
   *
   * @param evidence games, yardsticks and practice, in any order
   * @param weeks weeks for which estimates of all players are looked up often; every week from a
   *     player's first on can be asked for in any case
   * @return estimates for every player and week
   * @throws IllegalArgumentException if evidence names a player, skill or effect that the club does
   *     not have, or a week before the first of a player
   */
  public Posterior fit(List<? extends Evidence> evidence, Set<Integer> weeks) {
    EvidenceCheck.check(club, evidence);
    List<Evidence> counted = Collapsed.of(evidence);
    return fitIn(Partition.of(club.entrants().size(), counted), counted, weeks);
  }

  /** The same with the groups given. */
  Posterior fitIn(Partition partition, List<Evidence> counted, Set<Integer> weeks) {
    List<GroupRecord> records = ClubSystem.records(club, partition, counted, weeks);
    ClubSystem system = ClubSystem.of(club, prior, partition, records, new ClubSystem.Known());
    Assembly assembly = Assembly.of(system.parts(), system.border(), system.cross());
    LaplaceFit fit =
        LaplaceFit.from(
            assembly,
            assembly.start(),
            new BlockCholesky[records.size()],
            Outside.none(system.cross()));
    Moments moments = Moments.of(fit);
    if (!system.cross().isEmpty()) {
      fit = fit.withOutside(moments.outside());
      moments = Moments.of(fit);
    }
    if (records.size() > 1) {
      fit.summaries();
    }
    return new Posterior(prior, system, fit, moments);
  }

  /**
   * What the evidence says now, worked out from what it said before: only groups of which the
   * evidence, the players or the weeks changed are solved anew, the others follow what all share.
   * After a session that is a small part of the whole. If the prior, the skills or the shared
   * effects changed, or players went, everything is solved anew.
   *
   * @param before an earlier answer of a model of this club
   * @param evidence all evidence, with what is new or corrected
   * @param weeks as in {@link #fit}
   * @return estimates for every player and week
   */
  public Posterior refit(Posterior before, List<? extends Evidence> evidence, Set<Integer> weeks) {
    if (!before.canGrowInto(club, prior)) {
      return fit(evidence, weeks);
    }
    EvidenceCheck.check(club, evidence);
    return new Refit(club, prior, before).of(Collapsed.of(evidence), weeks);
  }

  /**
   * What the evidence says after a session: that of before and some more, of the same players. The
   * quickest way to go on; the answer is that of {@link #refit} with all evidence.
   *
   * @param before an earlier answer of this model
   * @param more the evidence of the session
   * @return estimates for every player and week
   * @throws IllegalArgumentException if the answer is of a club with other players or effects
   */
  public Posterior plus(Posterior before, List<? extends Evidence> more) {
    if (!before.canGrowInto(club, prior)
        || !before.system().club().entrants().equals(club.entrants())) {
      throw new IllegalArgumentException(
          "The earlier answer is of a club with other players, effects or spreads."
              + " Maybe fit all evidence anew.");
    }
    EvidenceCheck.check(club, more);
    return new Refit(club, prior, before).plus(Collapsed.of(more));
  }
}
