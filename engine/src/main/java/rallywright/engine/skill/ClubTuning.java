package rallywright.engine.skill;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * The hyper-parameters of a club: those under which its scores are most likely (marginal likelihood
 * by Laplace), held near the usual values.
 *
 * <p>Each number is taken as log-normal around its usual value with an SD of {@value #LOG_SD} on
 * the log scale: an assumption of this project, so that a few games cannot carry it away. With
 * fewer than {@value #ENOUGH_RALLIES} rallies the usual values stay. Of a club with many groups
 * {@value #MOST_GROUPS} are looked at, spread evenly, and games with guests are left out of this
 * search.
 */
public final class ClubTuning {
  /** With fewer rallies a club keeps the usual values (assumption of this project). */
  public static final int ENOUGH_RALLIES = 1000;

  /** How far a club may lie from the usual values, on the log scale (assumption). */
  public static final double LOG_SD = 0.3;

  /** So many groups tell enough. */
  public static final int MOST_GROUPS = 16;

  private static final int MOST_STEPS = 30;

  /** The search ends when no direction promises more than this rise of the log evidence. */
  private static final double FLAT = 1e-4;

  /** The same for one number alone, which is to be found to about five digits. */
  private static final double SHARP = 1e-11;

  /** Place of the spread of single skills among the hyper-parameters. */
  private static final int SKILL = 2;

  private final Club club;
  private final HyperParameters usual;
  private final ClubSystem system;
  private final Share share;
  private @Nullable Posterior last;

  private ClubTuning(Club club, HyperParameters usual, ClubSystem system, Share share) {
    this.club = club;
    this.usual = usual;
    this.system = system;
    this.share = share;
  }

  /** How much of the evidence is looked at. */
  private enum Share {
    ALL,
    SOME
  }

  /** Where the numbers come from. */
  public enum Basis {
    /** The usual values: too few games yet. */
    USUAL_VALUES,
    /** The club's own scores, held near the usual values. */
    OWN_SCORES
  }

  /**
   * The hyper-parameters of a club.
   *
   * @param values the numbers
   * @param basis where they come from
   * @param rallies rallies that were looked at
   */
  public record Tuned(HyperParameters values, Basis basis, double rallies) {}

  /**
   * Finds the hyper-parameters of a club.
   *
   * @param club players, skills, effects and gains with their usual SDs
   * @param evidence all that happened
   * @param usual the usual values
   * @return the values under which the scores are most likely, or the usual ones if there are few
   */
  public static Tuned of(Club club, List<? extends Evidence> evidence, HyperParameters usual) {
    EvidenceCheck.check(club, evidence);
    double rallies = ralliesIn(evidence);
    if (rallies < ENOUGH_RALLIES) {
      return usual(evidence, usual);
    }
    ClubTuning tuning = within(club, evidence, usual);
    double[] top = new QuasiNewton(tuning::objective, MOST_STEPS, FLAT).topFrom(usual.logs());
    return new Tuned(
        HyperParameters.ofLogs(top, usual.prior().effectSd()), Basis.OWN_SCORES, rallies);
  }

  /**
   * The usual values, whatever the scores say.
   *
   * @param evidence all that happened
   * @param usual the usual values
   * @return these values
   */
  public static Tuned usual(List<? extends Evidence> evidence, HyperParameters usual) {
    return new Tuned(usual, Basis.USUAL_VALUES, ralliesIn(evidence));
  }

  /**
   * The spread of single skills alone under which the scores are most likely, all else as it is and
   * nothing held near a usual value. Where players are one skill without a level this is the SD of
   * the random effects of a mixed logistic model.
   *
   * @param club players, skills, effects and gains
   * @param evidence all that happened
   * @param start where to begin
   * @return the values with that spread of single skills
   */
  public static HyperParameters ofSkillSpread(
      Club club, List<? extends Evidence> evidence, HyperParameters start) {
    EvidenceCheck.check(club, evidence);
    return within(club, evidence, start).topBySkillSpread();
  }

  /**
   * What the evidence says under the values of {@link #ofSkillSpread}, at little more than the cost
   * of the search.
   *
   * @param club players, skills, effects and gains
   * @param evidence all that happened
   * @param start where to begin
   * @return the values with that spread of single skills, and the posterior under them
   */
  public static Fitted fitOfSkillSpread(
      Club club, List<? extends Evidence> evidence, HyperParameters start) {
    EvidenceCheck.check(club, evidence);
    ClubTuning tuning = within(club, evidence, start);
    HyperParameters top = tuning.topBySkillSpread();
    Posterior last = tuning.last;
    Club scaled = top.applyTo(club);
    boolean same =
        tuning.share == Share.ALL && last != null && last.canGrowInto(scaled, top.prior());
    return new Fitted(
        top,
        same && last != null ? last : SkillModel.of(scaled, top.prior()).fit(evidence, Set.of()));
  }

  /**
   * A club under spreads that were found.
   *
   * @param values the spreads
   * @param posterior what the evidence says under them
   */
  public record Fitted(HyperParameters values, Posterior posterior) {}

  private HyperParameters topBySkillSpread() {
    QuasiNewton.Function alone =
        (x, slope) -> {
          double[] all = new double[HyperParameters.COUNT];
          double value = evidence(logsWith(usual, x[0]), all);
          slope[0] = all[SKILL];
          return value;
        };
    double[] first = {usual.logs()[SKILL]};
    double top = new QuasiNewton(alone, MOST_STEPS, SHARP).topFrom(first)[0];
    return HyperParameters.ofLogs(logsWith(usual, top), usual.prior().effectSd());
  }

  private static double[] logsWith(HyperParameters start, double logOfSkillSpread) {
    double[] logs = start.logs();
    logs[SKILL] = logOfSkillSpread;
    return logs;
  }

  /** The search over the groups of a club that are looked at. */
  static ClubTuning within(Club club, List<? extends Evidence> evidence, HyperParameters usual) {
    List<Evidence> counted = Collapsed.of(evidence);
    Partition partition = Partition.of(club.entrants().size(), counted);
    List<GroupRecord> records = ClubSystem.records(club, partition, counted, Set.of());
    int groups = Math.min(MOST_GROUPS, records.size());
    List<GroupRecord> some =
        IntStream.range(0, groups)
            .mapToObj(i -> records.get((int) ((long) i * records.size() / groups)))
            .map(record -> withoutGuests(record, partition))
            .toList();
    boolean all = some.equals(records);
    return new ClubTuning(
        club,
        usual,
        ClubSystem.ofSome(club, usual.prior(), partition, some),
        all ? Share.ALL : Share.SOME);
  }

  private static GroupRecord withoutGuests(GroupRecord record, Partition partition) {
    List<Evidence> own = new ArrayList<>();
    for (Evidence piece : record.evidence()) {
      if (ClubSystem.onlyGroupOf(piece, partition) >= 0) {
        own.add(piece);
      }
    }
    return own.size() == record.evidence().size()
        ? record
        : new GroupRecord(record.club(), record.players(), own, record.weeks());
  }

  /**
   * How many rallies and balls the evidence tells of, at least.
   *
   * @param evidence all that happened
   * @return 0 or more
   */
  public static double ralliesIn(List<? extends Evidence> evidence) {
    return evidence.stream().mapToDouble(ClubTuning::rallies).sum();
  }

  private static double rallies(Evidence evidence) {
    if (evidence instanceof YardstickResult result) {
      return result.balls();
    }
    return evidence instanceof Game game ? RallyCounts.rallies(game.result()) : 0;
  }

  /** Log evidence and hyper-prior at the logarithms of the hyper-parameters, with the slope. */
  double objective(double[] logs, double[] slope) {
    double sum = evidence(logs, slope);
    double[] centre = usual.logs();
    for (int i = 0; i < logs.length; i++) {
      double away = (logs[i] - centre[i]) / LOG_SD;
      sum -= away * away / 2;
      slope[i] -= away / LOG_SD;
    }
    return sum;
  }

  /** Log evidence at the logarithms of the hyper-parameters, with the slope. */
  private double evidence(double[] logs, double[] slope) {
    HyperParameters values = HyperParameters.ofLogs(logs, usual.prior().effectSd());
    ClubSystem scaled = system.with(values.applyTo(club), values.prior());
    Assembly assembly = Assembly.of(scaled.parts(), scaled.border(), List.of());
    LaplaceFit fit = last == null ? LaplaceFit.of(assembly) : last.fit().under(assembly);
    Moments moments = Moments.of(fit);
    last = new Posterior(values.prior(), scaled, fit, moments);
    double[] byEvidence = EvidenceSlope.of(scaled, values.prior(), fit, moments);
    System.arraycopy(byEvidence, 0, slope, 0, slope.length);
    return fit.logEvidence();
  }

  /** The log evidence at the last point looked at, without the hyper-prior. */
  double lastEvidence() {
    return last == null ? Double.NaN : last.logEvidence();
  }
}
