package rallywright.engine.rotation;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rallywright.engine.club.PlayerId;
import rallywright.engine.drill.DrillKey;
import rallywright.engine.odds.GameOdds;
import rallywright.engine.pace.GameTime;
import rallywright.engine.pace.LaneTimes;
import rallywright.engine.pace.LogNormal;
import rallywright.engine.pace.RallyPace;
import rallywright.engine.pace.SessionTime;
import rallywright.engine.pace.Timing;
import rallywright.engine.score.GameFormat;
import rallywright.engine.score.Score;

/**
 * How long rounds take when no horn ends them: each until its last match is done, then everybody
 * changes places.
 *
 * @param rounds how many rounds, 0 or more
 * @param target the points that a game is played to
 * @param minutesMean minutes on average
 * @param minutesP90 minutes that suffice nine times in ten
 */
public record RotationTime(int rounds, int target, double minutesMean, double minutesP90) {

  /**
   * From the last ball of a round to the first of the next: leave, find the court, first ball.
   * Assumption of this project.
   */
  public static final double CHANGE_SECONDS = 60;

  /**
   * Seconds of a rally in doubles before any was timed. The means, 10.6 s in play and 11.4 s
   * between, are those of 17 matches of professional mixed doubles (Sports 2025;13(11):397, known
   * from its abstract); the spreads, 7 s and 4 s, are an assumption of this project, and so is that
   * the pace of a club's evening lies about 20 % from it.
   */
  public static final RallyPace DOUBLES_PACE =
      RallyPace.firstIdea(LogNormal.of(10.6, 7), LogNormal.of(11.4, 4));

  /**
   * Seconds of a rally of one against one on half a court before any was timed: as of the drill of
   * half-court singles. Assumption of this project.
   */
  public static final RallyPace LANES_PACE =
      RallyPace.firstIdea(LogNormal.of(9, 6), LogNormal.of(12, 4));

  private static final double CONFIDENCE = 0.9;

  /** All rounds play the same game, so one name for its pace is enough. */
  private static final DrillKey THE_GAME = new DrillKey("rotation");

  private static final int WORDS_STEP = 5;
  private static final int HOUR = 60;

  /**
   * The time of a whole rotation before any rally was timed.
   *
   * @param wish what was asked for
   * @param schedule its rounds
   * @return mean and the time that suffices nine times in ten
   */
  public static RotationTime of(RotationWish wish, RotationSchedule schedule) {
    return of(wish.players(), schedule.rounds(), wish.format(), usualPace(wish.game()));
  }

  /**
   * The time of some rounds.
   *
   * @param players everybody who plays in them, with their strengths
   * @param rounds the rounds
   * @param format what a match is played to; head starts are put in
   * @param pace seconds of a rally
   * @return mean and the time that suffices nine times in ten
   */
  static RotationTime of(
      List<RotationPlayer> players, List<RotationRound> rounds, GameFormat format, RallyPace pace) {
    Map<PlayerId, Double> strengths = new HashMap<>();
    players.forEach(each -> strengths.put(each.id(), each.strengthLogits()));
    Map<Game, Timing> games = new HashMap<>();
    Map<List<Timing>, Timing> lasts = new HashMap<>();
    Timing sum = Timing.NOTHING;
    double paced = 0;
    for (RotationRound round : rounds) {
      List<Timing> matches = new ArrayList<>();
      for (RotationMatch match : round.matches()) {
        Game game = Game.of(match, strengths);
        matches.add(games.computeIfAbsent(game, each -> each.time(format, pace)));
      }
      if (!matches.isEmpty()) {
        Timing last = lasts.computeIfAbsent(matches, each -> LaneTimes.of(each).last());
        sum = sum.then(last).then(Timing.fixed(CHANGE_SECONDS));
        paced += last.mean();
      }
    }
    SessionTime time =
        SessionTime.of(List.of(new SessionTime.Part(THE_GAME, sum, paced, pace.drillCv())));
    return new RotationTime(
        rounds.size(),
        format.goal().targets().a(),
        sum.mean() / HOUR,
        time.quantile(CONFIDENCE) / HOUR);
  }

  /**
   * One round of even matches before any rally was timed.
   *
   * @param game what is played
   * @param courts courts in use, 1 or more
   * @return mean and the time that suffices nine times in ten
   */
  public static RotationTime evenRound(RotationGame game, int courts) {
    GameFormat format = RotationWish.of(game, courts, 1, List.of()).format();
    return evenRound(game, courts, format, usualPace(game));
  }

  /**
   * One round of even matches.
   *
   * @param game how players are put together
   * @param courts courts in use, 1 or more
   * @param format how a match is counted
   * @param pace seconds of a rally
   * @return mean and the time that suffices nine times in ten
   */
  public static RotationTime evenRound(
      RotationGame game, int courts, GameFormat format, RallyPace pace) {
    List<RotationMatch> matches = new ArrayList<>();
    for (int place = 0; place < courts * game.perCourt(); place++) {
      matches.add(new RotationMatch(place + 1, 1, List.of(), List.of(), RotationMatch.EVEN));
    }
    RotationRound round = new RotationRound(1, matches, List.of());
    return of(List.of(), List.of(round), format, pace);
  }

  /**
   * The pace of a game before any rally was timed.
   *
   * @param game what is played
   * @return seconds of a rally
   */
  public static RallyPace usualPace(RotationGame game) {
    return game.form() == RotationGame.Form.PAIRS ? DOUBLES_PACE : LANES_PACE;
  }

  /** A match as its time sees it: the difference in steps, and where the sides begin. */
  private record Game(long steps, int startA, int startB) {

    /** Half a step changes the mean length of a game by at most 0.4 %. */
    private static final double STEP_LOGITS = 0.0125;

    static Game of(RotationMatch match, Map<PlayerId, Double> strengths) {
      double difference =
          UnevenMatches.difference(of(match.a(), strengths), of(match.b(), strengths));
      return new Game(
          Math.round(difference / STEP_LOGITS), match.headStart().a(), match.headStart().b());
    }

    private static List<Double> of(List<PlayerId> side, Map<PlayerId, Double> strengths) {
      return side.stream().map(id -> strengths.getOrDefault(id, 0.0)).toList();
    }

    Timing time(GameFormat format, RallyPace pace) {
      GameFormat from = format.withStart(Score.of(startA, startB));
      GameOdds odds = GameOdds.of(from, UnevenMatches.chances(format, steps * STEP_LOGITS));
      return GameTime.of(odds.rallies(), pace);
    }
  }

  /**
   * The time in words, the mean to the nearest five minutes, the other rounded up to five.
   *
   * @return a sentence
   */
  public String sentence() {
    long mean = Math.max(WORDS_STEP, WORDS_STEP * Math.round(minutesMean / WORDS_STEP));
    long most = WORDS_STEP * (long) Math.ceil(minutesP90 / WORDS_STEP);
    return "%s to %d without a horn %s about %s; nine times in ten at most %s."
        .formatted(
            rounds == 1 ? "1 round" : rounds + " rounds",
            target,
            rounds == 1 ? "takes" : "take",
            clock(mean),
            clock(most));
  }

  private static String clock(long minutes) {
    if (minutes < HOUR) {
      return minutes + " min";
    }
    return minutes % HOUR == 0
        ? minutes / HOUR + " h"
        : "%d h %02d min".formatted(minutes / HOUR, minutes % HOUR);
  }
}
