package rallywright.engine.score;

/** Something that was noted about a running game. A game is the fold of its events. */
public sealed interface GameEvent {

  /**
   * A rally was played.
   *
   * @param rally who won it
   */
  record RallyPlayed(Rally rally) implements GameEvent {}

  /** The horn: the game stands as it is. */
  record TimeCalled() implements GameEvent {}

  /**
   * Somebody entered the result as a whole, whatever had been tapped before.
   *
   * @param score the result
   * @param clock whether time was called at that score
   */
  record ResultEntered(Score score, GameState.Clock clock) implements GameEvent {}

  /** The last event that counted is taken back. Undone again, the one before it, and so on. */
  record Undone() implements GameEvent {}

  /**
   * A rally without a note of its ending.
   *
   * @param winner who won it
   * @return the event
   */
  static GameEvent rallyTo(Side winner) {
    return new RallyPlayed(Rally.wonBy(winner));
  }
}
