package rallywright.engine.reading;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import rallywright.engine.club.Player;
import rallywright.engine.club.PlayerId;
import rallywright.engine.club.Standing;
import rallywright.engine.drill.Skill;
import rallywright.engine.point.Breakdown;
import rallywright.engine.point.NotedRally;
import rallywright.engine.point.NotedStroke;
import rallywright.engine.point.PairGame;
import rallywright.engine.point.RallyChain;
import rallywright.engine.point.RallyChain.Winner;
import rallywright.engine.point.SkillProfile;
import rallywright.engine.point.SkillWorths;
import rallywright.engine.point.SkillWorths.Play;
import rallywright.engine.point.StageContest;
import rallywright.engine.point.StageLearning;
import rallywright.engine.point.StageShift;
import rallywright.engine.point.Team.CourtSides;
import rallywright.engine.point.Team.Pair;
import rallywright.engine.practice.PointWorth;
import rallywright.engine.practice.PracticeMinutes;
import rallywright.engine.practice.SkillWorth;
import rallywright.engine.reading.EndingLog.Entry;
import rallywright.engine.score.Ending.Stage;
import rallywright.engine.score.Partner;
import rallywright.engine.score.Side;
import rallywright.engine.skill.Estimate;
import rallywright.engine.skill.SkillSum;

/**
 * What the club's skills and noted endings say about whole points: what skills are worth, where
 * rallies break down, how pairs would do.
 *
 * <p>Got from {@link ClubReading#points()}. The models and their limits stand in the point package.
 */
public final class PointReading {

  /** What an effective minute of practice brings, in logits: an assumption of this project. */
  public static final double GAIN_PER_MINUTE = 0.0005;

  /** An hour of practice is taken in stretches of so many minutes: an assumption. */
  public static final double MINUTES_AT_A_TIME = 15;

  private static final double SDS_OF_80_PERCENT = 1.2815515655446004;

  private final Ground ground;
  private final EndingLog log;
  private final Map<Play, StageLearning> stages = new EnumMap<>(Play.class);
  private final SkillProfile average;

  /** What the reading of the club gives. */
  interface Ground {
    List<Player> players();

    List<PlayedGame> games();

    Estimate skill(PlayerId player, Skill skill, PlayedGame played);

    Estimate today(PlayerId player, Skill skill);

    SkillSum.Key key(PlayerId player, Skill skill);

    Estimate of(SkillSum sum);

    double reference(Skill skill);
  }

  private PointReading(Ground ground) {
    this.ground = ground;
    log = EndingLog.of(ground.games(), ground::skill);
    for (Play play : Play.values()) {
      List<NotedRally> noted =
          log.entries().stream()
              .filter(entry -> entry.play() == play)
              .flatMap(entry -> entry.rally().stream())
              .toList();
      stages.put(play, StageLearning.from(EndingLog.stages(play), noted));
    }
    Map<Skill, Double> logits = new EnumMap<>(Skill.class);
    for (Skill skill : Skill.values()) {
      logits.put(skill, ground.reference(skill));
    }
    average = new SkillProfile(logits);
  }

  static PointReading of(Ground ground) {
    return new PointReading(ground);
  }

  /**
   * The stages of a point as the club's noted endings show them.
   *
   * @param play half court or doubles
   * @return what was learned
   */
  public StageLearning stages(Play play) {
    return Objects.requireNonNull(stages.get(play));
  }

  /**
   * What skills are worth in doubles, for needs and plans.
   *
   * @return the worth by the stages as learned
   */
  public SkillWorth worth() {
    return new PointWorth(stages(Play.DOUBLES).stages(), Play.DOUBLES);
  }

  /**
   * What each skill is worth to a player, the most valuable first.
   *
   * @param player a player of the history
   * @param play half court or doubles
   * @return one line for each skill
   */
  public List<WorthLine> worths(PlayerId player, Play play) {
    SkillWorths worths = SkillWorths.of(stages(play).stages(), profile(player), play);
    double hour = 60 / MINUTES_AT_A_TIME * PracticeMinutes.effective(MINUTES_AT_A_TIME);
    List<WorthLine> lines = new ArrayList<>();
    for (Skill skill : worths.ranked()) {
      lines.add(
          new WorthLine(
              skill,
              ground.today(player, skill),
              worths.gamesIn100(skill),
              worths.gamesIn100PerHour(skill, GAIN_PER_MINUTE, hour)));
    }
    return lines;
  }

  private SkillProfile profile(PlayerId player) {
    Map<Skill, Double> logits = new EnumMap<>(Skill.class);
    for (Skill skill : Skill.values()) {
      logits.put(skill, ground.today(player, skill).mean());
    }
    return new SkillProfile(logits);
  }

  /**
   * The chance to win a rally against an average player of the club: the skills, shifted by what
   * the player's own noted endings add to them.
   *
   * @param player a player of the history
   * @param play half court, or doubles beside a partner of the player's own kind
   * @return serving and receiving
   */
  public RallyOutlook rallies(PlayerId player, Play play) {
    Estimate serving = rally(player, play, Winner.SERVER);
    Estimate receiving = rally(player, play, Winner.RECEIVER);
    return new RallyOutlook(serving, new Estimate(1 - receiving.mean(), receiving.sd()));
  }

  /** The chance of the server's side, where the player is on one of the two. */
  private Estimate rally(PlayerId player, Play play, Winner own) {
    List<NotedRally> noted = noted(player, play, own);
    Map<Stage, Estimate> shifts = StageShift.of(stages(play).stages(), noted, own);
    SkillProfile skills = profile(player);
    double sign = own == Winner.SERVER ? 1 : -1;
    Map<Stage, Double> edges = new EnumMap<>(Stage.class);
    for (Stage stage : Stage.values()) {
      StageContest contest = stages(play).stages().of(stage);
      double edge =
          own == Winner.SERVER ? contest.edge(skills, average) : contest.edge(average, skills);
      edges.put(stage, edge + sign * shift(shifts, stage).mean());
    }
    RallyChain chain = RallyChain.of(stages(play).stages(), edges);
    double variance = 0;
    SkillSum.Builder moved = SkillSum.builder();
    for (Stage stage : Stage.values()) {
      double slope = chain.slope(stage);
      variance += slope * slope * shift(shifts, stage).sd() * shift(shifts, stage).sd();
      StageContest contest = stages(play).stages().of(stage);
      (own == Winner.SERVER ? contest.server() : contest.receiver())
          .shares()
          .forEach((skill, weight) -> moved.plusSkill(slope * weight, ground.key(player, skill)));
    }
    double bySkills = ground.of(moved.build()).sd();
    return new Estimate(chain.serverWins(), Math.sqrt(variance + bySkills * bySkills));
  }

  private static Estimate shift(Map<Stage, Estimate> shifts, Stage stage) {
    return Objects.requireNonNull(shifts.get(stage));
  }

  private List<NotedRally> noted(PlayerId player, Play play, Winner own) {
    return entriesOf(player)
        .filter(entry -> entry.play() == play)
        .filter(entry -> EndingLog.role(entry.sideOf(player), entry.server()) == own)
        .flatMap(entry -> entry.rally().stream())
        .toList();
  }

  private Stream<Entry> entriesOf(PlayerId player) {
    return log.entries().stream().filter(entry -> entry.played().has(player));
  }

  /**
   * Where the rallies of a player break down.
   *
   * @param player a player of the history
   * @param play in which games the stages are looked at; strokes are looked at in all drills
   * @return the lines; in doubles they are those of the player's pairs
   */
  public Breakdown breakdown(PlayerId player, Play play) {
    Breakdown.Own own =
        new Breakdown.Own(
            noted(player, play, Winner.SERVER),
            noted(player, play, Winner.RECEIVER),
            lostStrokes(entriesOf(player).filter(entry -> !won(entry, player))));
    List<NotedStroke> others =
        lostStrokes(
            log.entries().stream()
                .filter(entry -> !entry.played().has(player) || won(entry, player)));
    return Breakdown.of(own, new Breakdown.Others(stages(play), log.firstShares(), others));
  }

  private static boolean won(Entry entry, PlayerId player) {
    return entry.sideOf(player) == entry.winner();
  }

  private static List<NotedStroke> lostStrokes(Stream<Entry> entries) {
    return entries.flatMap(entry -> entry.stroke().stream()).toList();
  }

  /**
   * The chance of a doubles game to 11 between four players, who serves first not being known.
   *
   * @param a side A, the one who starts on the right first
   * @param b side B, likewise
   * @return the chance of A with its interval
   * @throws IllegalArgumentException unless each side has two players and all four differ
   */
  public DoublesOutlook doubles(List<PlayerId> a, List<PlayerId> b) {
    if (a.size() != 2
        || b.size() != 2
        || Stream.concat(a.stream(), b.stream()).distinct().count() != 4) {
      throw new IllegalArgumentException(
          "A doubles game needs four different players, two a side, but %s v %s was given."
              .formatted(a, b));
    }
    PairGame game =
        PairGame.of(
            stages(Play.DOUBLES).stages(), pair(a.get(0), a.get(1)), pair(b.get(0), b.get(1)));
    SkillSum.Builder moved = SkillSum.builder();
    addSlopes(moved, game, Side.A, a);
    addSlopes(moved, game, Side.B, b);
    return outlook(game.winA(), ground.of(moved.build()).sd());
  }

  private Pair pair(PlayerId one, PlayerId other) {
    return new Pair(profile(one), profile(other), CourtSides.BY_SCORE);
  }

  private void addSlopes(SkillSum.Builder sum, PairGame game, Side side, List<PlayerId> players) {
    for (Partner who : Partner.values()) {
      PlayerId player = players.get(who == Partner.RIGHT_AT_EVEN ? 0 : 1);
      game.slopes(side, who)
          .forEach((skill, slope) -> sum.plusSkill(slope, ground.key(player, skill)));
    }
  }

  /** The spread on the scale of logits; the mean by MacKay's formula (1992, from memory). */
  private static DoublesOutlook outlook(double chance, double sd) {
    double logit = Math.log(chance / (1 - chance));
    double spread = sd / (chance * (1 - chance));
    double middle = logit / Math.sqrt(1 + Math.PI * spread * spread / 8);
    return new DoublesOutlook(
        logistic(middle),
        logistic(logit - SDS_OF_80_PERCENT * spread),
        logistic(logit + SDS_OF_80_PERCENT * spread));
  }

  private static double logistic(double logit) {
    return 1 / (1 + Math.exp(-logit));
  }

  /**
   * How a player would do with each other active player, against two average players of the club.
   *
   * @param player a player of the history
   * @return one line for each possible partner, the best chance first
   */
  public List<PartnerLine> partners(PlayerId player) {
    return ground.players().stream()
        .filter(other -> other.standing() == Standing.ACTIVE && !other.id().equals(player))
        .map(other -> partner(player, other))
        .sorted(Comparator.comparingDouble((PartnerLine line) -> -line.outlook().chance()))
        .toList();
  }

  private PartnerLine partner(PlayerId player, Player other) {
    Pair against = new Pair(average, average, CourtSides.BY_SCORE);
    PairGame.Fit fit =
        PairGame.fit(stages(Play.DOUBLES).stages(), profile(player), profile(other.id()), against);
    PairGame game = PairGame.of(stages(Play.DOUBLES).stages(), pair(player, other.id()), against);
    SkillSum.Builder moved = SkillSum.builder();
    addSlopes(moved, game, Side.A, List.of(player, other.id()));
    return new PartnerLine(
        other.id(),
        other.name(),
        outlook(fit.chance(), ground.of(moved.build()).sd()),
        fit.gain(),
        fit.bestSides(),
        100 * (fit.chanceOnBestSides() - fit.chance()));
  }
}
