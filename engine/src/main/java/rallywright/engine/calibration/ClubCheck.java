package rallywright.engine.calibration;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.random.RandomGenerator;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import rallywright.engine.quantity.StandardNormal;
import rallywright.engine.skill.Estimate;
import rallywright.engine.skill.Posterior;
import rallywright.engine.skill.SharedEffect;
import rallywright.engine.skill.SkillModel;
import rallywright.engine.skill.SkillSum;

/**
 * One club: drawn, played, read, and held against the truth.
 *
 * <p>Reference: Talts, Betancourt, Simpson, Vehtari and Gelman, Validating Bayesian inference
 * algorithms with simulation-based calibration, arXiv:1804.06788 (2018): the rank of the truth
 * among draws from a right posterior is uniform.
 *
 * @param answers every answer of each kind
 * @param ranks of one answer of each kind, chosen by lot: how many of {@value #DRAWS} draws from
 *     the model's normal distribution lie below the truth
 */
public record ClubCheck(Map<Kind, List<Answer>> answers, Map<Kind, Integer> ranks) {
  /** Draws for a rank: one less than a multiple of the bins, so that all bins are equally wide. */
  public static final int DRAWS = 999;

  /** Copies the maps. */
  public ClubCheck {
    answers = Map.copyOf(answers);
    ranks = Map.copyOf(ranks);
  }

  /**
   * Draws a club and checks it.
   *
   * @param random the seeded source of chance
   * @return the answers beside the truth
   */
  public static ClubCheck of(RandomGenerator random) {
    DrawnClub club = DrawnClub.of(Season.drawn(random), random);
    Season season = club.season();
    Posterior posterior =
        SkillModel.of(season.club(), Season.PRIOR)
            .fit(
                club.evidence(),
                IntStream.range(0, season.weeks()).boxed().collect(Collectors.toSet()));
    Map<Kind, List<Answer>> answers = new EnumMap<>(Kind.class);
    for (Kind kind : Kind.values()) {
      answers.put(kind, new ArrayList<>());
    }
    addSkills(club, posterior, answers);
    addShared(club, posterior, answers);
    Map<Kind, Integer> ranks = new EnumMap<>(Kind.class);
    answers.forEach(
        (kind, all) -> ranks.put(kind, rank(all.get(random.nextInt(all.size())), random)));
    return new ClubCheck(answers, ranks);
  }

  /**
   * The answers of one kind.
   *
   * @param kind the kind
   * @return at least one
   */
  public List<Answer> of(Kind kind) {
    return Objects.requireNonNull(answers.get(kind));
  }

  /**
   * How many answers of a kind have the truth in their middle interval.
   *
   * @param kind the kind
   * @param share what the interval is said to hold, above 0 and below 1
   * @return from 0 to the number of answers
   */
  public int within(Kind kind, double share) {
    double reach = StandardNormal.quantile((1 + share) / 2);
    return (int) of(kind).stream().filter(each -> Math.abs(each.error()) < reach).count();
  }

  /**
   * The rank of the one answer of a kind that was chosen by lot.
   *
   * @param kind the kind
   * @return from 0 to {@value #DRAWS}
   */
  public int rank(Kind kind) {
    return Objects.requireNonNull(ranks.get(kind));
  }

  private static void addSkills(
      DrawnClub club, Posterior posterior, Map<Kind, List<Answer>> answers) {
    Season season = club.season();
    int last = season.weeks() - 1;
    for (int player = 0; player < season.players(); player++) {
      int first = season.firstWeek(player);
      for (int skill = 0; skill < season.skills(); skill++) {
        for (int week = first; week <= last; week++) {
          SkillSum.Key key = new SkillSum.Key(player, skill, week);
          Answer answer =
              new Answer(posterior.skill(key), club.truth().skill(key), club.truth().priorSd(key));
          add(answers, Kind.SKILL, answer);
        }
        SkillSum.Key late = new SkillSum.Key(player, skill, last);
        double rise = club.truth().rise(late, first);
        double before = club.truth().priorSdOfRise(late);
        add(answers, Kind.RISE, new Answer(posterior.rise(late, first), rise, before));
      }
    }
  }

  private static void addShared(
      DrawnClub club, Posterior posterior, Map<Kind, List<Answer>> answers) {
    Season season = club.season();
    List<SharedEffect> effects = season.club().effects();
    for (int effect = 0; effect < effects.size(); effect++) {
      Kind kind = season.isYardstick(effect) ? Kind.YARDSTICK : Kind.DRILL_EFFECT;
      double truth = club.truth().effect(effect);
      Estimate estimate = posterior.effect(effect);
      add(answers, kind, new Answer(estimate, truth, effects.get(effect).sd()));
    }
    List<SharedEffect> gains = season.club().gains();
    for (int gain = 0; gain < gains.size(); gain++) {
      Kind kind = season.isWideGain(gain) ? Kind.WIDE_GAIN : Kind.GAIN;
      double truth = club.truth().gain(gain);
      Estimate estimate = posterior.gain(gain);
      add(answers, kind, new Answer(estimate, truth, gains.get(gain).sd()));
    }
  }

  private static void add(Map<Kind, List<Answer>> answers, Kind kind, Answer answer) {
    Objects.requireNonNull(answers.get(kind)).add(answer);
  }

  static int rank(Answer answer, RandomGenerator random) {
    int below = 0;
    for (int draw = 0; draw < DRAWS; draw++) {
      Estimate estimate = answer.estimate();
      below += estimate.mean() + estimate.sd() * random.nextGaussian() < answer.truth() ? 1 : 0;
    }
    return below;
  }
}
