package rallywright.engine.reading;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import rallywright.engine.club.Player;
import rallywright.engine.club.PlayerId;
import rallywright.engine.club.Standing;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.Skill;
import rallywright.engine.odds.GameOdds;
import rallywright.engine.odds.RallyChances;
import rallywright.engine.odds.ScoreDistribution.ScoreChance;
import rallywright.engine.plan.Seat;
import rallywright.engine.practice.PlayerStanding;
import rallywright.engine.practice.SkillStanding;
import rallywright.engine.quantity.Probability;
import rallywright.engine.score.GameFormat;
import rallywright.engine.score.Score;
import rallywright.engine.skill.ClubTuning;
import rallywright.engine.skill.Estimate;
import rallywright.engine.skill.GameForecast;
import rallywright.engine.skill.HyperParameters;
import rallywright.engine.skill.JointEstimate;
import rallywright.engine.skill.Posterior;
import rallywright.engine.skill.Practice;
import rallywright.engine.skill.RallyCounts;
import rallywright.engine.skill.ScoreForecast;
import rallywright.engine.skill.SkillGroups;
import rallywright.engine.skill.SkillModel;
import rallywright.engine.skill.SkillSum;

/**
 * What a club's scores say about its players on a day.
 *
 * <p><b>Card.</b> In: players with levels, drills, sessions with what happened in them. Out: for
 * every player and skill an estimate with its uncertainty over the weeks, what to expect of a game,
 * and what the plan needs to know. Method: {@link SkillModel}. Limits: a game of a drill that is no
 * longer known, or with a score that its rules do not allow, is left out; the expectation of a past
 * game is what all scores until today say about that week, the game itself included.
 */
public final class ClubReading {

  /**
   * The spreads of the club are sought anew once there are this many times as many rallies as when
   * they were found. Assumption of this project.
   */
  public static final double RETUNE_AT = 1.2;

  private final ClubHistory history;
  private final Gathering gathering;
  private final ClubTuning.Tuned tuning;
  private final Posterior posterior;
  private final RallyCounts counts;
  private final PracticeLog practice;
  private final PracticeReading aboutPractice;
  private final Map<Skill, Double> references = new EnumMap<>(Skill.class);
  private final Map<SkillSum.Key, Estimate> estimates = new ConcurrentHashMap<>();
  private final WeeksSeen weeksSeen;
  private volatile @Nullable RecordedPaces paces;

  private ClubReading(Gathering gathering, ClubTuning.Tuned tuning, Posterior posterior) {
    history = gathering.history();
    this.gathering = gathering;
    this.tuning = tuning;
    this.posterior = posterior;
    counts = RallyCounts.of(gathering.club(), gathering.evidence());
    practice = PracticeLog.of(gathering.games(), gathering.weeks(), gathering.thisWeek());
    aboutPractice = new PracticeReading(history, gathering, posterior);
    weeksSeen = WeeksSeen.in(gathering.evidence());
    for (Skill skill : Skill.values()) {
      references.put(skill, reference(skill));
    }
  }

  /**
   * Reads a club's history: with the usual spreads, or once there are enough games with those under
   * which the club's own scores are most likely.
   *
   * @param history all that is known
   * @return what it says
   */
  public static ClubReading of(ClubHistory history) {
    Gathering gathering = new Gathering(history);
    return of(
        gathering, ClubTuning.of(gathering.club(), gathering.evidence(), HyperParameters.DEFAULT));
  }

  /**
   * Reads a club's history with the usual spreads, however many games there are: quicker, and right
   * for a club that was drawn from them.
   *
   * @param history all that is known
   * @return what it says
   */
  public static ClubReading withUsualSpreads(ClubHistory history) {
    Gathering gathering = new Gathering(history);
    return of(gathering, ClubTuning.usual(gathering.evidence(), HyperParameters.DEFAULT));
  }

  private static ClubReading of(Gathering gathering, ClubTuning.Tuned tuning) {
    return new ClubReading(
        gathering, tuning, model(gathering, tuning).fit(gathering.evidence(), Set.of()));
  }

  /**
   * Reads a later history of the same club: only groups of players who have something new are
   * worked out anew. Where little is the same, everything is.
   *
   * @param later all that is known now, corrections included
   * @return what it says; means within 0.01 logits and SDs within 2 % of {@link #of} with the same
   *     spreads
   */
  public ClubReading after(ClubHistory later) {
    Gathering gathered = new Gathering(later);
    boolean grown =
        ClubTuning.ralliesIn(gathered.evidence()) > Math.max(1, tuning.rallies()) * RETUNE_AT;
    if (grown || !gathered.continues(gathering)) {
      return of(later);
    }
    Posterior next = model(gathered, tuning).refit(posterior, gathered.evidence(), Set.of());
    return new ClubReading(gathered, tuning, next);
  }

  private static SkillModel model(Gathering gathering, ClubTuning.Tuned tuning) {
    return SkillModel.of(tuning.values().applyTo(gathering.club()), tuning.values().prior());
  }

  /**
   * The spreads that this reading rests on, and whether the club's own scores gave them.
   *
   * @return the hyper-parameters
   */
  public ClubTuning.Tuned tuning() {
    return tuning;
  }

  private double reference(Skill skill) {
    return history.players().stream()
        .filter(
            player -> player.standing() == Standing.ACTIVE || player.standing() == Standing.WALK_IN)
        .mapToDouble(player -> estimate(number(player.id()), skill, gathering.thisWeek()).mean())
        .average()
        .orElse(0);
  }

  private Estimate estimate(int player, Skill skill, int week) {
    return estimates.computeIfAbsent(key(player, skill, week), posterior::skill);
  }

  private static SkillSum.Key key(int player, Skill skill, int week) {
    return new SkillSum.Key(player, SkillGroups.numberOf(skill), week);
  }

  private int number(PlayerId player) {
    Integer number = gathering.numbers().get(player);
    if (number == null) {
      throw new IllegalArgumentException("Nothing is known of the player " + player + ".");
    }
    return number;
  }

  /**
   * What is known of one skill of a player.
   *
   * @param player a player of the history
   * @param skill the skill
   * @return the reading
   */
  public SkillReading skill(PlayerId player, Skill skill) {
    int number = number(player);
    Set<Integer> weeks = weeksSeen.of(number);
    OptionalDouble rise =
        weeks.stream()
            .filter(week -> week < gathering.thisWeek())
            .findFirst()
            .map(
                week ->
                    OptionalDouble.of(
                        posterior.chanceOfRise(key(number, skill, gathering.thisWeek()), week)))
            .orElse(OptionalDouble.empty());
    weeks.add(gathering.thisWeek());
    List<SkillReading.WeekPoint> course = new ArrayList<>();
    for (int week : weeks) {
      course.add(
          new SkillReading.WeekPoint(
              gathering.weeks().mondayOf(week), estimate(number, skill, week)));
    }
    int place = SkillGroups.numberOf(skill);
    return new SkillReading(
        skill,
        estimate(number, skill, gathering.thisWeek()),
        references.getOrDefault(skill, 0.0),
        counts.of(number, place),
        counts.isEnough(number, place),
        course,
        rise);
  }

  /**
   * By how much a skill of a player rose from one day to another, and how sure that is: both days
   * together.
   *
   * @param player a player of the history
   * @param skill the skill
   * @param since the earlier day; before the player's first week that week counts
   * @param until the later day
   * @return the skill in the weeks of both days, the earlier one first, in logits
   */
  public JointEstimate joint(PlayerId player, Skill skill, LocalDate since, LocalDate until) {
    int number = number(player);
    int first = gathering.firstWeek(player);
    int earlier = Math.max(first, gathering.weeks().of(since));
    int later = Math.max(earlier, gathering.weeks().of(until));
    return posterior.joint(
        SkillSum.skill(key(number, skill, earlier)), SkillSum.skill(key(number, skill, later)));
  }

  /**
   * By how much a skill of a player rose since a day.
   *
   * @param player a player of the history
   * @param skill the skill
   * @param since the earlier day; before the player's first week that week counts
   * @return today less then, in logits; its {@link Estimate#chanceAbove} 0 is the chance of a rise
   */
  public Estimate rise(PlayerId player, Skill skill, LocalDate since) {
    return joint(player, skill, since, history.today()).difference();
  }

  /**
   * What a minute of each scored drill brings, as far as the scores tell.
   *
   * @return one for each scored drill of the history that was played
   */
  public List<GainReading> gains() {
    return history.drills().stream()
        .filter(drill -> gathering.effects().gain(drill.key()).isPresent())
        .map(this::gain)
        .filter(gain -> gain.players() > 0)
        .toList();
  }

  private GainReading gain(Drill drill) {
    int number = gathering.effects().gain(drill.key()).orElseThrow();
    List<Practice> practised =
        gathering.evidence().stream()
            .filter(Practice.class::isInstance)
            .map(Practice.class::cast)
            .filter(each -> each.gain() == number && each.minutes() > 0)
            .toList();
    return new GainReading(
        drill,
        posterior.gain(number),
        posterior.gainBefore(number),
        practised.stream().mapToDouble(Practice::effectiveMinutes).sum(),
        (int) practised.stream().map(Practice::player).distinct().count());
  }

  /**
   * The games of a player that tell something, oldest first.
   *
   * @param player the player
   * @return the games
   */
  public List<PlayedGame> games(PlayerId player) {
    return gathering.games().stream().filter(game -> game.has(player)).toList();
  }

  /**
   * What to expect of a game that was played.
   *
   * @param played the game
   * @return the outlook from what is known today about that week
   */
  public GameOutlook outlook(PlayedGame played) {
    return outlook(
        gathering.fixture(played), played.game().format(), gathering.weeks().of(played.date()));
  }

  /**
   * What to expect of a game today.
   *
   * @param drill a scored drill of the history
   * @param a side A
   * @param b side B
   * @param format how it is counted, head start included
   * @return the outlook
   * @throws IllegalArgumentException if the drill is not scored or a player is not known
   */
  public GameOutlook outlook(Drill drill, Seat a, Seat b, GameFormat format) {
    List<Integer> shared = gathering.effects().of(drill, Optional.empty());
    Fixture fixture = Fixture.of(drill, a, b, gathering.numbers(), shared);
    return outlook(fixture, format, gathering.thisWeek());
  }

  private GameOutlook outlook(Fixture fixture, GameFormat format, int week) {
    GameFormat turned =
        format
            .withStart(fixture.turned(format.start()))
            .withFirstServer(fixture.turned(format.firstServer()));
    ScoreForecast forecast =
        GameForecast.of(posterior, fixture.contest(), fixture.sides(), week)
            .scores((serveA, serveB) -> finalScores(turned, serveA, serveB));
    Score worst = fixture.turned(forecast.range80().get(0));
    Score best = fixture.turned(forecast.range80().get(1));
    boolean swap = fixture.turn() == Fixture.Turn.TURNED;
    return new GameOutlook(
        swap ? forecast.pointsB() : forecast.pointsA(),
        swap ? forecast.pointsA() : forecast.pointsB(),
        swap ? 1 - forecast.winA() : forecast.winA(),
        swap ? best : worst,
        swap ? worst : best);
  }

  private static Map<Score, Double> finalScores(GameFormat format, double serveA, double serveB) {
    RallyChances chances = RallyChances.ofServe(Probability.of(serveA), Probability.of(serveB));
    Map<Score, Double> scores = new HashMap<>();
    for (ScoreChance each : GameOdds.of(format, chances).scores().scores()) {
      scores.put(each.score(), each.chance());
    }
    return scores;
  }

  /**
   * What the plan needs to know of a player.
   *
   * @param player a player of the history
   * @return every skill's estimate, rallies and minutes by week
   */
  public PlayerStanding standing(PlayerId player) {
    int number = number(player);
    Player who = history.players().get(number);
    Map<Skill, SkillStanding> skills = new EnumMap<>(Skill.class);
    for (Skill skill : Skill.values()) {
      Estimate now = estimate(number, skill, gathering.thisWeek());
      skills.put(
          skill,
          new SkillStanding(
              skill,
              now.mean(),
              now.sd(),
              (int) Math.round(counts.of(number, SkillGroups.numberOf(skill))),
              practice.minutesByWeek(player, skill)));
    }
    return new PlayerStanding(who.firstName(), Optional.ofNullable(who.level()), skills)
        .withTelling(skill -> aboutPractice.measure(player, skill).map(Measure::name));
  }

  /**
   * What the scores say about practice.
   *
   * @return what tells most, which drills bring how much, when a rise would show
   */
  public PracticeReading aboutPractice() {
    return aboutPractice;
  }

  /**
   * What skills and noted endings say about whole points: the worth of skills, where rallies break
   * down, how pairs would do. Built anew at each call.
   *
   * @return the reading of points
   */
  public PointReading points() {
    return PointReading.of(new PointGround(history, gathering, posterior, references));
  }

  /**
   * How fast each drill goes, from taps of single rallies and from the times of results.
   *
   * @return the paces
   */
  public RecordedPaces paces() {
    RecordedPaces known = paces;
    if (known == null) {
      known = RecordedPaces.of(gathering.games(), history.sessions());
      paces = known;
    }
    return known;
  }
}
