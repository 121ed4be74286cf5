package rallywright.engine.calibration;

import java.util.List;

/**
 * How often the truth lay in the intervals of one width, over many clubs.
 *
 * @param share what the interval is said to hold
 * @param covered what it held: the share of all answers, pooled over the clubs
 * @param standardError of {@code covered}; answers of one club count as one cluster
 * @param answers how many there were
 */
public record Coverage(double share, double covered, double standardError, int answers) {
  /**
   * Pools the answers of one kind.
   *
   * <p>Standard error: that of a ratio over clusters, √(m/(m−1) Σ(cᵢ − p nᵢ)²)/Σnᵢ for m clubs with
   * nᵢ answers of which cᵢ are covered (Cochran, Sampling Techniques, the ratio estimator; cited
   * from memory).
   *
   * @param clubs two or more
   * @param kind the kind
   * @param share what the interval is said to hold, above 0 and below 1
   * @return the pooled share with its error
   * @throws IllegalArgumentException if there are fewer than two clubs
   */
  public static Coverage of(List<ClubCheck> clubs, Kind kind, double share) {
    if (clubs.size() < 2) {
      throw new IllegalArgumentException(
          "The number of clubs (" + clubs.size() + ") must be 2 or more. Maybe 500.");
    }
    int answers = 0;
    int within = 0;
    for (ClubCheck club : clubs) {
      answers += club.of(kind).size();
      within += club.within(kind, share);
    }
    double covered = within / (double) answers;
    double squares = 0;
    for (ClubCheck club : clubs) {
      double off = club.within(kind, share) - covered * club.of(kind).size();
      squares += off * off;
    }
    double among = clubs.size() / (clubs.size() - 1.0);
    return new Coverage(share, covered, Math.sqrt(among * squares) / answers, answers);
  }

  /**
   * Whether the intervals hold what they say, within a tolerance and two standard errors.
   *
   * @param tolerance how far the covered share may be off, such as 0.02
   * @return true if they do
   */
  public boolean holdsWithin(double tolerance) {
    return Math.abs(covered - share) <= tolerance + 2 * standardError;
  }
}
