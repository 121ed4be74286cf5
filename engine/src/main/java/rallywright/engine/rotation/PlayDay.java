package rallywright.engine.rotation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rallywright.engine.club.PlayerId;
import rallywright.engine.pace.RallyPace;
import rallywright.engine.score.GameFormat;

/**
 * A day of games as it runs: what was asked for, the rounds, which of them is being played, and the
 * scores so far. A value: each change answers with a new day or with a refusal.
 *
 * <p>Rounds up to the one being played are never changed. Who leaves plays until the end of it; who
 * comes late plays from the next.
 *
 * @param wish what was asked for, with who came late and who left
 * @param rounds the rounds, from round 1; of a ladder those that can be known so far
 * @param results scores, at most one for each match of a round that was begun
 * @param now the round being played, 0 before the first
 */
public record PlayDay(DayWish wish, List<RotationRound> rounds, List<DayResult> results, int now) {

  /** Keeps the lists as they are. */
  public PlayDay {
    rounds = List.copyOf(rounds);
    results = List.copyOf(results);
    if (now < 0 || now > rounds.size()) {
      throw new IllegalArgumentException(
          "The round being played (%d) must be 0 to %d. Maybe the day has fewer rounds."
              .formatted(now, rounds.size()));
    }
  }

  /**
   * A day before its first round.
   *
   * @param wish what is asked for
   * @return the day, or what is impossible
   */
  public static DayAnswer start(DayWish wish) {
    List<String> problems = DayCheck.problems(wish);
    return problems.isEmpty()
        ? found(wish, List.of(), List.of(), 0)
        : new DayAnswer.Refused(problems);
  }

  private static DayAnswer found(
      DayWish wish, List<RotationRound> kept, List<DayResult> results, int now) {
    DayRounds.Found found = new DayRounds(wish, kept, results).find();
    return found instanceof DayRounds.Found.Rounds rounds
        ? new DayAnswer.Ready(new PlayDay(wish, rounds.all(), results, now))
        : new DayAnswer.Refused(((DayRounds.Found.Problems) found).sentences());
  }

  /** The rounds that were begun. */
  private List<RotationRound> begun() {
    return rounds.subList(0, now);
  }

  /**
   * The round being played.
   *
   * @return the round, or nothing before the first
   */
  public Optional<RotationRound> current() {
    return round(now);
  }

  /**
   * The round after the one being played.
   *
   * @return the round, or nothing after the last, or while a ladder waits for scores
   */
  public Optional<RotationRound> following() {
    return round(now + 1);
  }

  private Optional<RotationRound> round(int number) {
    return number < 1 || number > rounds.size()
        ? Optional.empty()
        : Optional.of(rounds.get(number - 1));
  }

  /**
   * The day when the next round begins.
   *
   * @return the day, or why no round can begin
   */
  public DayAnswer next() {
    if (following().isPresent()) {
      return new DayAnswer.Ready(new PlayDay(wish, rounds, results, now + 1));
    }
    return DayAnswer.no(
        isOver()
            ? "Round %d was the last. Maybe make a new rotation.".formatted(now)
            : "Round %d still lacks scores, and the ladder moves by them. Maybe type them in first."
                .formatted(now));
  }

  /**
   * Whether the last round is being played.
   *
   * @return true if no round follows, whatever its scores
   */
  public boolean isOver() {
    return now > 0 && now == rounds.size() && (wish.style().isKnownAhead() || now == wish.rounds());
  }

  /**
   * The day with the score of a match; one that was there is replaced.
   *
   * @param result the score
   * @return the day, or why the match has no such score
   */
  public DayAnswer with(DayResult result) {
    if (result.round() < 1 || result.round() > now) {
      return DayAnswer.no(
          "Round %d has not begun; scores are taken of rounds 1 to %d. Maybe begin it first."
              .formatted(result.round(), now));
    }
    int matches = rounds.get(result.round() - 1).matches().size();
    if (result.match() < 0 || result.match() >= matches) {
      return DayAnswer.no(
          "Round %d has %d matches, not a match %d. Maybe load the page again."
              .formatted(result.round(), matches, result.match() + 1));
    }
    if (wish.style() == DayStyle.LADDER && result.round() < now && changesWinner(result)) {
      return DayAnswer.no(
          ("Round %d was played on by these scores, so its winners stay as they are. Maybe correct"
                  + " the points only.")
              .formatted(result.round()));
    }
    List<DayResult> all = new ArrayList<>(results);
    all.removeIf(each -> each.isOf(result.round(), result.match()));
    all.add(result);
    return wish.style() == DayStyle.LADDER
        ? found(wish, begun(), all, now)
        : new DayAnswer.Ready(new PlayDay(wish, rounds, all, now));
  }

  private boolean changesWinner(DayResult result) {
    return results.stream()
        .filter(each -> each.isOf(result.round(), result.match()))
        .anyMatch(each -> each.winner() != result.winner());
  }

  /**
   * The score of a match.
   *
   * @param round its round, from 1
   * @param match its place in the round, from 0
   * @return the score, if it is known
   */
  public Optional<DayResult> result(int round, int match) {
    return results.stream().filter(each -> each.isOf(round, match)).findFirst();
  }

  /**
   * The day when somebody leaves or cannot go on: the round being played stays, the next ones are
   * found anew.
   *
   * @param who somebody who is there
   * @return the day, or why it cannot be so
   */
  public DayAnswer leaving(PlayerId who) {
    if (!wish.present(now + 1).contains(who)) {
      return DayAnswer.no("Who is to leave is not there. Maybe load the page again.");
    }
    DayWish changed = wish.leaving(who, now);
    int left = changed.present(now + 1).size();
    if (left < wish.game().size()) {
      return DayAnswer.no(
          "Then %d would be left, and %s need %d. Maybe end the day instead."
              .formatted(left, wish.game().words(), wish.game().size()));
    }
    return found(changed.onCourtsThatAreFilled(), begun(), results, now);
  }

  /**
   * The day when somebody comes late: they play from the next round on.
   *
   * @param who somebody who was not there, or has left before
   * @param strengthLogits strength in this game
   * @return the day, or why it cannot be so
   */
  public DayAnswer arriving(PlayerId who, double strengthLogits) {
    if (wish.present(now + 1).contains(who)) {
      return DayAnswer.no("Who is to come is there already. Maybe another name was meant.");
    }
    if (wish.players().stream().anyMatch(each -> each.id().equals(who))) {
      return DayAnswer.no(
          "Who has left cannot come back on the same day. Maybe make a new rotation.");
    }
    if (!wish.style().takesLateComers()) {
      return DayAnswer.no(
          "Pairs were fixed at the start, so nobody can join. Maybe make a new rotation.");
    }
    if (wish.players().size() >= RotationWish.MOST_PLAYERS) {
      return DayAnswer.no(
          "There are %d players already, the most allowed. Maybe make two groups."
              .formatted(wish.players().size()));
    }
    return found(
        wish.with(RotationPlayer.of(who, strengthLogits).from(now + 1)), begun(), results, now);
  }

  /**
   * How the players stand, by the scores so far and the rule book's tie-breaks.
   *
   * @return a line for each; of fixed pairs a line for each pair
   */
  public List<Standings.Line<List<PlayerId>>> standings() {
    boolean pairs = wish.style() == DayStyle.FIXED_PAIRS;
    List<List<PlayerId>> entrants = new ArrayList<>();
    List<RotationPlayer> players = wish.players();
    for (int place = 0; place < players.size(); place += pairs ? 2 : 1) {
      entrants.add(
          pairs
              ? List.of(players.get(place).id(), players.get(place + 1).id())
              : List.of(players.get(place).id()));
    }
    return Standings.of(entrants, results.stream().map(each -> outcome(each, pairs)).toList());
  }

  private Standings.Outcome<List<PlayerId>> outcome(DayResult result, boolean pairs) {
    RotationMatch match = rounds.get(result.round() - 1).matches().get(result.match());
    return new Standings.Outcome<>(
        entrants(match.a(), pairs), entrants(match.b(), pairs), result.pointsA(), result.pointsB());
  }

  private static List<List<PlayerId>> entrants(List<PlayerId> side, boolean pairs) {
    return pairs ? List.of(side) : side.stream().map(List::of).toList();
  }

  /**
   * What the rounds come to: repeats, sit-outs, differences.
   *
   * @return the counts over all rounds known
   */
  public RotationMeasures measures() {
    return RotationMeasures.of(wish.rotation(List.of()), rounds);
  }

  /**
   * The rounds as they are printed: with room for those of a ladder that are not known yet.
   *
   * @return the rounds known, then as many with the same courts and nobody on them
   */
  public List<RotationRound> roundsToPrint() {
    List<RotationRound> all = new ArrayList<>(rounds);
    while (!wish.style().isKnownAhead() && !rounds.isEmpty() && all.size() < wish.rounds()) {
      List<RotationMatch> empty =
          rounds.get(rounds.size() - 1).matches().stream().map(RotationMatch::withNobody).toList();
      all.add(new RotationRound(all.size() + 1, empty, List.of()));
    }
    return all;
  }

  /**
   * How long the rounds after the one being played take without a horn, if the usual game is
   * played: doubles to 11, or a drill game to 5 on lanes.
   *
   * @param pace seconds of a rally in this game
   * @return the time; of no rounds where none follows
   */
  public RotationTime timeToCome(RallyPace pace) {
    return timeToCome(pace, wish.rotation(List.of()).format());
  }

  /**
   * How long the rounds after the one being played take without a horn. Rounds of a ladder that are
   * not known yet are taken to be like the last that is.
   *
   * @param pace seconds of a rally in this game
   * @param format how the game is counted
   * @return the time; of no rounds where none follows
   */
  public RotationTime timeToCome(RallyPace pace, GameFormat format) {
    List<RotationRound> ahead = new ArrayList<>(rounds.subList(now, rounds.size()));
    while (!wish.style().isKnownAhead()
        && !rounds.isEmpty()
        && now + ahead.size() < wish.rounds()) {
      ahead.add(rounds.get(rounds.size() - 1));
    }
    return RotationTime.of(wish.players(), ahead, format, pace);
  }
}
