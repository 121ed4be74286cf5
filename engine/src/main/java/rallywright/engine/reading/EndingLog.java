package rallywright.engine.reading;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rallywright.engine.club.PlayerId;
import rallywright.engine.drill.DrillForm;
import rallywright.engine.drill.DrillSide;
import rallywright.engine.drill.Serving;
import rallywright.engine.drill.Skill;
import rallywright.engine.drill.SkillWeights;
import rallywright.engine.plan.Seat;
import rallywright.engine.point.FirstStages;
import rallywright.engine.point.NotedRally;
import rallywright.engine.point.NotedRally.Expectation;
import rallywright.engine.point.NotedStroke;
import rallywright.engine.point.NotedStroke.Context;
import rallywright.engine.point.NotedStroke.FirstShares;
import rallywright.engine.point.PointStages;
import rallywright.engine.point.RallyChain.Winner;
import rallywright.engine.point.SkillWorths.Play;
import rallywright.engine.point.StageContest;
import rallywright.engine.score.BySide;
import rallywright.engine.score.Ending;
import rallywright.engine.score.Ending.Manner;
import rallywright.engine.score.Ending.Stage;
import rallywright.engine.score.Ending.Stroke;
import rallywright.engine.score.GameState;
import rallywright.engine.score.Rally;
import rallywright.engine.score.Side;
import rallywright.engine.skill.Estimate;

/**
 * The endings that somebody noted, with what the skills of that week lead one to expect.
 *
 * <p>A stage counts in games that begin with a serve; a stroke counts everywhere, if error or
 * beaten was noted with it.
 */
final class EndingLog {

  /** A player's skill in the week of a game. */
  interface Skills {
    Estimate of(PlayerId player, Skill skill, PlayedGame played);
  }

  /** Half of η moves the odds of one side's endings; see {@link StageContest}. */
  private static final double TILT = 0.5;

  /**
   * One noted rally.
   *
   * @param played the game
   * @param play half court or doubles
   * @param server who served
   * @param winner who won
   * @param rally its stage, where it was noted
   * @param stroke its stroke, where it was noted
   */
  record Entry(
      PlayedGame played,
      Play play,
      Side server,
      Side winner,
      Optional<NotedRally> rally,
      Optional<NotedStroke> stroke) {

    Side sideOf(PlayerId player) {
      return played.sideOf(player);
    }
  }

  private final Skills skills;
  private final List<Entry> entries = new ArrayList<>();
  private final Map<Context, FirstShares> firstShares = new HashMap<>();

  private EndingLog(Skills skills) {
    this.skills = skills;
  }

  static EndingLog of(List<PlayedGame> games, Skills skills) {
    EndingLog log = new EndingLog(skills);
    games.forEach(log::add);
    return log;
  }

  List<Entry> entries() {
    return entries;
  }

  Map<Context, FirstShares> firstShares() {
    return firstShares;
  }

  static PointStages stages(Play play) {
    return play == Play.DOUBLES ? FirstStages.DOUBLES : FirstStages.HALF_COURT;
  }

  private void add(PlayedGame played) {
    List<Rally> rallies = played.game().rallies();
    if (rallies.stream().noneMatch(rally -> rally.ending().isPresent())) {
      return;
    }
    Play play = played.game().game().a().players().size() == 2 ? Play.DOUBLES : Play.HALF_COURT;
    BySide<Optional<Expectation>> expected =
        BySide.of(expectation(played, play, Side.A), expectation(played, play, Side.B));
    GameState state = GameState.start(played.game().format());
    for (Rally rally : rallies) {
      if (state.isOver()) {
        return;
      }
      Side server = state.serve().side();
      rally
          .ending()
          .ifPresent(
              ending ->
                  entries.add(
                      new Entry(
                          played,
                          play,
                          server,
                          rally.winner(),
                          noted(ending, expected.of(server), role(rally.winner(), server)),
                          stroke(ending, played, server, rally.winner()))));
      state = state.after(rally);
    }
  }

  private static Optional<NotedRally> noted(
      Ending ending, Optional<Expectation> expected, Winner winner) {
    return ending
        .stage()
        .flatMap(stage -> expected.map(each -> new NotedRally(each, stage, winner)));
  }

  static Winner role(Side side, Side server) {
    return side == server ? Winner.SERVER : Winner.RECEIVER;
  }

  /** What to expect when a side serves; nothing where the drill starts with a feed. */
  private Optional<Expectation> expectation(PlayedGame played, Play play, Side server) {
    if (scored(played).serving() == Serving.FEED) {
      return Optional.empty();
    }
    Map<Stage, Double> edges = new EnumMap<>(Stage.class);
    Map<Stage, Double> variances = new EnumMap<>(Stage.class);
    for (Stage stage : Stage.values()) {
      StageContest contest = stages(play).of(stage);
      Estimate serving = strength(played, server, contest.server());
      Estimate receiving = strength(played, server.opponent(), contest.receiver());
      edges.put(stage, serving.mean() - receiving.mean());
      variances.put(stage, serving.sd() * serving.sd() + receiving.sd() * receiving.sd());
    }
    return Optional.of(new Expectation(edges, variances));
  }

  /** The weighted skills of a side; partners count alike, skills as if known independently. */
  private Estimate strength(PlayedGame played, Side side, SkillWeights weights) {
    List<PlayerId> players = seat(played, side).players();
    double mean = 0;
    double variance = 0;
    for (PlayerId player : players) {
      for (Map.Entry<Skill, Double> share : weights.shares().entrySet()) {
        Estimate skill = skills.of(player, share.getKey(), played);
        double weight = share.getValue() / players.size();
        mean += weight * skill.mean();
        variance += weight * weight * skill.sd() * skill.sd();
      }
    }
    return new Estimate(mean, Math.sqrt(variance));
  }

  private static Seat seat(PlayedGame played, Side side) {
    return side == Side.A ? played.game().game().a() : played.game().game().b();
  }

  private static DrillForm.Scored scored(PlayedGame played) {
    return played.drill().scored().orElseThrow();
  }

  private Optional<NotedStroke> stroke(Ending ending, PlayedGame played, Side server, Side winner) {
    if (ending.stroke().isEmpty() || ending.manner().isEmpty()) {
      return Optional.empty();
    }
    Manner manner = ending.manner().get();
    Side loser = winner.opponent();
    DrillSide losing = drillSide(played, loser, server);
    Side striker = manner == Manner.ERROR ? loser : winner;
    DrillSide striking = drillSide(played, striker, server);
    Context context = new Context(played.drill().key().value(), losing.role().name(), manner);
    firstShares.computeIfAbsent(context, each -> firstShares(striking));
    return Optional.of(
        new NotedStroke(context, ending.stroke().get(), tilt(played, striker, striking, manner)));
  }

  private static DrillSide drillSide(PlayedGame played, Side side, Side server) {
    DrillForm.Scored scored = scored(played);
    DrillSide first = scored.layout().sides().a();
    boolean isFirst =
        scored.serving() != Serving.FEED
            ? side == server
            : seat(played, side).role() == first.role();
    return isFirst ? first : scored.layout().sides().b();
  }

  private static FirstShares firstShares(DrillSide striking) {
    Map<Stroke, Double> shares = new EnumMap<>(Stroke.class);
    for (Stroke stroke : striking.strokes()) {
      shares.put(stroke, striking.weights().of(skill(stroke)));
    }
    return new FirstShares(shares);
  }

  private Map<Stroke, Double> tilt(
      PlayedGame played, Side striker, DrillSide striking, Manner manner) {
    double usual = strength(played, striker, striking.weights()).mean();
    Map<Stroke, Double> tilt = new EnumMap<>(Stroke.class);
    for (Stroke stroke : striking.strokes()) {
      double lead = strength(played, striker, SkillWeights.only(skill(stroke))).mean() - usual;
      tilt.put(stroke, manner == Manner.ERROR ? -TILT * lead : TILT * lead);
    }
    return tilt;
  }

  /** The skill that bears the stroke's name. */
  private static Skill skill(Stroke stroke) {
    return Skill.valueOf(stroke.name());
  }
}
