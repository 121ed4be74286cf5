package rallywright.engine.score;

import java.util.Optional;

/**
 * A game at one moment, between two rallies or at its end.
 *
 * <p>{@link #after} gives the next state. Everything a referee has to say follows from the parts:
 * the call, the courts, the receiver, the change of ends.
 *
 * @param format how the game is counted
 * @param score the points now
 * @param serve who serves the next rally
 * @param onRight who of each side stands on the right; always {@link Partner#RIGHT_AT_EVEN} in
 *     games of two
 * @param changeOfEnds whether the sides change ends before the next rally
 * @param clock whether time was called
 */
public record GameState(
    GameFormat format,
    Score score,
    Serve serve,
    BySide<Partner> onRight,
    ChangeOfEnds changeOfEnds,
    Clock clock) {

  /** Whether the sides change ends before the next rally. */
  public enum ChangeOfEnds {
    /** Everybody stays. */
    STAY,
    /** The sides change ends now. */
    CHANGE_NOW
  }

  /** Whether the game was cut off. */
  public enum Clock {
    /** Time was not called. */
    RUNNING,
    /** Time was called: the score stands as it is, a lawful end. */
    TIME_CALLED
  }

  /**
   * The state before the first rally. Places follow the score, also after a head start: the player
   * who stands right at an even score starts on the left if the side starts from an odd one (common
   * practice, no source).
   *
   * @param format how the game is counted
   * @return the state
   */
  public static GameState start(GameFormat format) {
    return at(format, format.start(), format.firstServe());
  }

  /**
   * A game taken up in the middle, places by the score.
   *
   * @param format how the game is counted
   * @param score the points now, at which the game is not yet won
   * @param serve who serves the next rally
   * @return the state
   * @throws IllegalArgumentException if the game cannot stand at that score
   */
  public static GameState at(GameFormat format, Score score, Serve serve) {
    if (!format.goal().isOpenAt(score)) {
      throw new IllegalArgumentException(
          "The score (%s) must be one at which the game (%s) goes on. Maybe it is the final score."
              .formatted(score, format.goal().label()));
    }
    BySide<Partner> places =
        isPairs(format)
            ? BySide.of(Partner.onRightAt(score.a()), Partner.onRightAt(score.b()))
            : BySide.both(Partner.RIGHT_AT_EVEN);
    return new GameState(format, score, serve, places, ChangeOfEnds.STAY, Clock.RUNNING);
  }

  /**
   * The state after a rally.
   *
   * @param rally who won it
   * @return the next state
   * @throws IllegalStateException if the game is over
   */
  public GameState after(Rally rally) {
    if (isOver()) {
      throw new IllegalStateException(
          "The game (%s) is over; a rally can only follow in a new game. Maybe undo the last one."
              .formatted(score));
    }
    Side winner = rally.winner();
    Side server = serve.side();
    boolean point = format.scores(winner, server, score);
    Score next = point ? score.pointTo(winner) : score;
    BySide<Partner> places = onRight;
    if (point && winner == server && isPairs(format)) {
      places = onRight.with(server, onRight.of(server).other());
    }
    ChangeOfEnds change = changesEnds(next) ? ChangeOfEnds.CHANGE_NOW : ChangeOfEnds.STAY;
    return new GameState(format, next, serveAfter(winner, next, places), places, change, clock);
  }

  /**
   * The state after the horn: the score stands.
   *
   * @return this state with time called
   * @throws IllegalStateException if the game is over already
   */
  public GameState timeCalled() {
    if (isOver()) {
      throw new IllegalStateException(
          "The game (%s) is over; time can only be called on a running game.".formatted(score));
    }
    return new GameState(format, score, serve, onRight, ChangeOfEnds.STAY, Clock.TIME_CALLED);
  }

  /**
   * The end of the game by a result that was entered as a whole. Serve and places stay as last
   * known: the rallies in between were not seen.
   *
   * @param result the result
   * @param when whether time was called at that score
   * @return the finished game
   * @throws IllegalArgumentException if the format does not allow the result
   */
  public GameState withResult(Score result, Clock when) {
    Optional<ScoreRefusal> refusal = FinalScoreCheck.of(format).refusalOf(result, when);
    if (refusal.isPresent()) {
      throw new IllegalArgumentException(refusal.get().sentence());
    }
    return new GameState(format, result, serve, onRight, ChangeOfEnds.STAY, when);
  }

  /**
   * Whether no rally can follow.
   *
   * @return true if the game is won or time was called
   */
  public boolean isOver() {
    return clock == Clock.TIME_CALLED || winner().isPresent();
  }

  /**
   * Who has won.
   *
   * @return the winner; empty in a running game and after time was called
   */
  public Optional<Side> winner() {
    return format.goal().winnerAt(score);
  }

  /**
   * Where the server stands.
   *
   * @return the server's court
   */
  public ServiceCourt serverCourt() {
    return courtOf(serve.side(), serve.server());
  }

  /**
   * Who receives: the player diagonal to the server, or the only opponent.
   *
   * @return the receiver, a player of the side that does not serve
   */
  public Partner receiver() {
    if (!isPairs(format)) {
      return Partner.RIGHT_AT_EVEN;
    }
    Partner right = onRight.of(serve.side().opponent());
    return serverCourt() == ServiceCourt.EVEN ? right : right.other();
  }

  /**
   * Where a player stands for the next serve.
   *
   * @param side the player's side
   * @param partner which player of the side; {@link Partner#RIGHT_AT_EVEN} in games of two
   * @return the court
   */
  public ServiceCourt courtOf(Side side, Partner partner) {
    if (format.places() instanceof Places.FixedLane lane) {
      return lane.courts().of(side);
    }
    if (format.places() instanceof Places.ByScore) {
      return ServiceCourt.of(score.of(serve.side()));
    }
    return onRight.of(side) == partner ? ServiceCourt.EVEN : ServiceCourt.ODD;
  }

  /**
   * The call before the serve: server's score, receiver's score, and with two servers the server's
   * number (rule 10.F, 2016). After the end it is the final score, A's points first.
   *
   * @return for example "0-0-2"
   */
  public String call() {
    if (isOver()) {
      return score.toString();
    }
    Side server = serve.side();
    String numbers = score.of(server) + "-" + score.of(server.opponent());
    return format.scoring().hasTwoServers() ? numbers + "-" + serve.number().called() : numbers;
  }

  private Serve serveAfter(Side winner, Score next, BySide<Partner> places) {
    Side server = serve.side();
    if (winner == server) {
      return serve;
    }
    if (format.scoring().hasTwoServers() && serve.number() == ServerNumber.FIRST) {
      return new Serve(server, ServerNumber.SECOND, serve.server().other());
    }
    return new Serve(winner, ServerNumber.FIRST, firstServerOf(winner, next, places));
  }

  private Partner firstServerOf(Side side, Score next, BySide<Partner> places) {
    if (!isPairs(format)) {
      return Partner.RIGHT_AT_EVEN;
    }
    Partner right = places.of(side);
    boolean fromRight = format.scoring().hasTwoServers() || next.of(side) % 2 == 0;
    return fromRight ? right : right.other();
  }

  private boolean changesEnds(Score next) {
    if (format.ends() == EndChange.NONE || format.goal().winnerAt(next).isPresent()) {
      return false;
    }
    return hasReachedHalf(next) && !hasReachedHalf(score);
  }

  private boolean hasReachedHalf(Score points) {
    BySide<Integer> half = format.goal().targets().map(target -> (target + 1) / 2);
    return points.a() >= half.a() || points.b() >= half.b();
  }

  private static boolean isPairs(GameFormat format) {
    return format.places() instanceof Places.Pairs;
  }
}
