package rallywright.engine.score;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rallywright.engine.score.ScoreRefusal.Reason;

/**
 * Which final scores a format allows: for scores that somebody types afterwards, and for a grid
 * from which the result is picked in one tap.
 */
public final class FinalScoreCheck {

  private final GameFormat format;

  private FinalScoreCheck(GameFormat format) {
    this.format = format;
  }

  /**
   * The check of a format, its head start included.
   *
   * @param format how the game was counted
   * @return the check
   */
  public static FinalScoreCheck of(GameFormat format) {
    return new FinalScoreCheck(format);
  }

  /**
   * Why a score cannot be the result.
   *
   * @param score the score as typed
   * @param clock whether time was called at that score
   * @return the reason, or empty if the score can stand
   */
  public Optional<ScoreRefusal> refusalOf(Score score, GameState.Clock clock) {
    for (Side side : Side.values()) {
      if (score.of(side) < format.start().of(side)) {
        return refused(
            Reason.BELOW_THE_START,
            "must give side %s at least its head start (%d). Maybe the points given were left out."
                .formatted(side, format.start().of(side)),
            score);
      }
    }
    return clock == GameState.Clock.TIME_CALLED ? unfinished(score) : finished(score);
  }

  /**
   * All results to which a game can be won, side A's first, the closest last.
   *
   * @param pointsBeyondTarget how far beyond the target to list a game without a cap that is won by
   *     two, 0 or more
   * @return the results in which A wins and those in which B wins
   */
  public BySide<List<Score>> possible(int pointsBeyondTarget) {
    return BySide.of(possible(Side.A, pointsBeyondTarget), possible(Side.B, pointsBeyondTarget));
  }

  private List<Score> possible(Side winner, int beyond) {
    int target = format.goal().targets().of(winner);
    int otherTarget = format.goal().targets().of(winner.opponent());
    int last =
        format.goal().winBy() == WinBy.ONE ? target : format.goal().cap().orElse(target + beyond);
    List<Score> scores = new ArrayList<>();
    for (int points = target; points <= last; points++) {
      int otherEnd = Math.max(points, otherTarget);
      for (int other = format.start().of(winner.opponent()); other < otherEnd; other++) {
        Score score = winner == Side.A ? Score.of(points, other) : Score.of(other, points);
        if (refusalOf(score, GameState.Clock.RUNNING).isEmpty()) {
          scores.add(score);
        }
      }
    }
    return List.copyOf(scores);
  }

  private Optional<ScoreRefusal> finished(Score score) {
    Goal goal = format.goal();
    if (bothArrived(score)) {
      return refused(
          Reason.BOTH_AT_TARGET,
          "must leave the loser short (%s). Maybe one number is one too high."
              .formatted(goal.label()),
          score);
    }
    Optional<Side> winner = goal.winnerAt(score);
    if (winner.isEmpty()) {
      return stillOpen(score);
    }
    Side won = winner.get();
    Score ended = score;
    while (!goal.isOpenAt(oneLess(ended, won))) {
      ended = oneLess(ended, won);
    }
    return ended.equals(score)
        ? Optional.empty()
        : refused(
            Reason.PAST_THE_END,
            "must not pass the end of the game (%s). Maybe %s.".formatted(goal.label(), ended),
            score);
  }

  private static Score oneLess(Score score, Side side) {
    return side == Side.A ? Score.of(score.a() - 1, score.b()) : Score.of(score.a(), score.b() - 1);
  }

  private Optional<ScoreRefusal> stillOpen(Score score) {
    Goal goal = format.goal();
    boolean nobody = score.a() < goal.targets().a() && score.b() < goal.targets().b();
    if (nobody) {
      return refused(
          Reason.NOBODY_AT_TARGET,
          "must bring one side to its target (%s). Maybe time was called: then say so."
              .formatted(goal.label()),
          score);
    }
    return refused(
        Reason.LEAD_TOO_SMALL,
        "must have a lead of %d (%s). Maybe time was called: then say so."
            .formatted(goal.winBy().points(), goal.label()),
        score);
  }

  private Optional<ScoreRefusal> unfinished(Score score) {
    if (format.goal().isOpenAt(score)) {
      return Optional.empty();
    }
    return refused(
        Reason.WON_BEFORE_TIME,
        "must be unfinished if time was called (%s). Maybe take \"time called\" off."
            .formatted(format.goal().label()),
        score);
  }

  private boolean bothArrived(Score score) {
    Goal goal = format.goal();
    if (goal.winBy() == WinBy.ONE) {
      return score.a() >= goal.targets().a() && score.b() >= goal.targets().b();
    }
    return goal.cap().isPresent() && Math.min(score.a(), score.b()) >= goal.cap().getAsInt();
  }

  private static Optional<ScoreRefusal> refused(Reason reason, String rest, Score score) {
    return Optional.of(new ScoreRefusal(reason, "The score (%s) ".formatted(score) + rest));
  }
}
