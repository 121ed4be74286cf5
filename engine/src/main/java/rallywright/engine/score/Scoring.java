package rallywright.engine.score;

/**
 * Who may score: one named value for each way of counting.
 *
 * <p>Editions matter: the 2026 rule book was renumbered, so a rule number always stands with its
 * edition. A rule text that was read only second-hand, or is known from memory, says so in {@link
 * #source()}.
 */
public enum Scoring {
  /**
   * Every rally scores for its winner, who serves (or feeds) next. The default of drill games.
   *
   * <p>Example: 2-2, A serves, B wins the rally: 2-3, B serves.
   */
  EVERY_RALLY("every rally scores", "common practice, no source"),
  /**
   * Only the serving side scores, one server a side: games of two. A lost rally passes the serve
   * across the net at the same score.
   *
   * <p>Example: 2-2, A serves, B wins the rally: still 2-2, B serves.
   */
  SIDE_OUT_ONE_SERVER(
      "only the server scores",
      "side-out scoring, the official method: USA Pickleball release of 17 December 2024; in games"
          + " of two one server a side, from memory"),
  /**
   * Only the serving side scores, both partners serve before the serve passes across the net; at
   * the start of the game the first side has one server only and starts "0-0-2".
   *
   * <p>Steps: the server wins: a point, the partners change courts, the same player serves again.
   * The server loses: first server, then the partner serves as the second; second server, then
   * side-out, and the player on the right serves first.
   *
   * <p>Example: 0-0-2, the receivers win the rally: side-out, 0-0-1.
   */
  SIDE_OUT_TWO_SERVERS(
      "only the serving side scores, two servers",
      "first-server exception and start 0-0-2: rule 5.B.3 (1999), rule 10.F (2016); courts and"
          + " serving order: rules 5.B.4 to 5.B.7 (1999)"),
  /**
   * Rally-scoring option of 2025: every rally scores, but the point that ends the game counts only
   * on serve; won by the receivers it passes the serve and nothing else.
   *
   * <p>Reading of this project: every point that would end the game falls under it, also the one
   * that reaches a cap. Example, to 11: 8-10, A serves, B wins the rally: still 8-10, B serves.
   */
  RALLY_2025(
      "rally scoring, last point only on serve (2025)",
      "provisional rally-scoring option, rule 12.B.1 with 12.B.1.c (2025), the last-point rule read"
          + " second-hand"),
  /**
   * Rally-scoring option of 2026: every rally ends with a point, and the receivers can win the
   * game.
   *
   * <p>Example printed with the change: 13-14, the server nets the serve: the game ends 15-13 for
   * the receivers.
   */
  RALLY_2026(
      "rally scoring, anyone may score the last point (2026)",
      "section 14.A (2026), read second-hand");

  private final String label;
  private final String source;

  Scoring(String label, String source) {
    this.label = label;
    this.source = source;
  }

  /**
   * The name for people.
   *
   * @return a few words in lower case
   */
  public String label() {
    return label;
  }

  /**
   * Where the rule stands, with its edition, or "common practice, no source".
   *
   * @return the source
   */
  public String source() {
    return source;
  }

  /**
   * Whether the receivers can score at all.
   *
   * @return true for the ways in which every rally may score
   */
  public boolean everyRallyScores() {
    return this == EVERY_RALLY || this == RALLY_2025 || this == RALLY_2026;
  }

  /**
   * Whether both partners serve before the serve passes across the net.
   *
   * @return true for two servers only
   */
  public boolean hasTwoServers() {
    return this == SIDE_OUT_TWO_SERVERS;
  }

  /**
   * Whether the receivers may score the point that ends the game.
   *
   * @return true where they may
   */
  public boolean receiversMayEndGame() {
    return this == EVERY_RALLY || this == RALLY_2026;
  }
}
