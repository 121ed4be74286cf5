package rallywright.engine.odds;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import rallywright.engine.score.GameFormat;
import rallywright.engine.score.Goal;
import rallywright.engine.score.Score;
import rallywright.engine.score.Scoring;
import rallywright.engine.score.Serve;
import rallywright.engine.score.Side;
import rallywright.engine.score.WinBy;

/**
 * The states of a format and where each rally leads, without any chance.
 *
 * <p>A state is a score and a server; a rally leads from it to one of two others. States of one
 * score stand together as a <em>block</em>; points only lead to later blocks, a lost serve stays in
 * its block. A tie-break by two has no last score: its scores are folded, (n, n) onto (n-1, n-1),
 * and stand together as the last block. Where servers have names the fold steps back two points,
 * since the serving order hangs on the parity of the score. With one target n and two unnamed
 * servers this makes the 4n² + 10 states of DeFord and Ethier (2023), both ends counted.
 */
final class GameChain {

  /** The game is won by A. */
  static final int A_WINS = -1;

  /** The game is won by B. */
  static final int B_WINS = -2;

  /** More formats than a club plays; chains of others are made each time. */
  private static final int MOST_KEPT = 64;

  /** States of a doubles game to 30 and some: no club plays longer ones often. */
  private static final int LARGEST_KEPT = 4000;

  private static final Map<Key, GameChain> KEPT = new ConcurrentHashMap<>();

  private final GameFormat format;
  private final ServeOrder order;
  private final List<Serve> serves;
  private final List<Score> scores = new ArrayList<>();
  private final Map<Score, Integer> places = new HashMap<>();
  private final int regularScores;
  private final Link[] links;

  /**
   * Where one result of a rally leads.
   *
   * @param target the next state, or who wins
   * @param point whether a point is scored
   * @param folds whether the score is folded back
   */
  record Link(int target, boolean point, boolean folds) {}

  /** All that a chain depends on. */
  private record Key(Scoring scoring, Goal goal, ServeOrder order) {}

  private GameChain(GameFormat format, ServeOrder order) {
    this.format = format;
    this.order = order;
    this.serves = order.serves();
    addRegularScores();
    regularScores = scores.size();
    addTieBreakScores();
    for (int place = 0; place < scores.size(); place++) {
      places.put(scores.get(place), place);
    }
    links = new Link[2 * states()];
    for (int state = 0; state < states(); state++) {
      links[2 * state] = linkIfServerWins(state);
      links[2 * state + 1] = linkIfServerLoses(state);
    }
  }

  /** The chain of a format; start score, first server and places on the court do not change it. */
  static GameChain of(GameFormat format, ServeOrder order) {
    Key key = new Key(format.scoring(), format.goal(), order);
    GameChain kept = KEPT.get(key);
    if (kept == null) {
      kept = new GameChain(format, order);
      if (kept.states() <= LARGEST_KEPT && KEPT.size() < MOST_KEPT) {
        KEPT.put(key, kept);
      }
    }
    return kept;
  }

  /** The number of states in which the game goes on. */
  int states() {
    return scores.size() * serves.size();
  }

  int blocks() {
    return hasTieBreak() ? regularScores + 1 : regularScores;
  }

  /** The first state of a block; of the number of blocks: the number of states. */
  int blockStart(int block) {
    return block <= regularScores ? block * serves.size() : states();
  }

  Link ifServerWins(int state) {
    return links[2 * state];
  }

  Link ifServerLoses(int state) {
    return links[2 * state + 1];
  }

  Serve serve(int state) {
    return serves.get(state % serves.size());
  }

  Score score(int state) {
    return scores.get(state / serves.size());
  }

  /** By how many points a live score is folded back. */
  int foldOf(Score score) {
    if (!hasTieBreak()) {
      return 0;
    }
    int above = Math.min(score.a(), score.b()) - (target() - 1);
    return above <= 0 ? 0 : above / order.pointsBack() * order.pointsBack();
  }

  /** The state of a live score, folded. */
  int stateOf(Score score, Serve serve) {
    int fold = foldOf(score);
    Integer place = places.get(Score.of(score.a() - fold, score.b() - fold));
    if (place == null) {
      throw new IllegalArgumentException(
          "The score (%s) must be one at which the game (%s) goes on. Maybe it is the final score."
              .formatted(score, format.goal().label()));
    }
    return place * serves.size() + order.indexOf(serve);
  }

  /** How many points one fold takes back from both sides. */
  int pointsBack() {
    return order.pointsBack();
  }

  boolean hasTieBreak() {
    return format.goal().winBy() == WinBy.TWO && format.goal().cap().isEmpty();
  }

  private int target() {
    return format.goal().targets().a();
  }

  private void addRegularScores() {
    Goal goal = format.goal();
    int mostA = goal.cap().orElse(goal.targets().a());
    int mostB = goal.cap().orElse(goal.targets().b());
    for (int a = 0; a < mostA; a++) {
      for (int b = 0; b < mostB; b++) {
        Score score = Score.of(a, b);
        boolean level = hasTieBreak() && a == target() - 1 && b == target() - 1;
        if (goal.isOpenAt(score) && !level) {
          scores.add(score);
        }
      }
    }
    scores.sort(Comparator.comparingInt(Score::total).thenComparingInt(Score::a));
  }

  private void addTieBreakScores() {
    if (!hasTieBreak()) {
      return;
    }
    for (int back = 0; back < order.pointsBack(); back++) {
      int level = target() - 1 + back;
      scores.add(Score.of(level, level));
      scores.add(Score.of(level + 1, level));
      scores.add(Score.of(level, level + 1));
    }
  }

  private Link linkIfServerWins(int state) {
    Serve serve = serve(state);
    return pointTo(serve.side(), score(state), serve);
  }

  private Link linkIfServerLoses(int state) {
    Serve serve = serve(state);
    Score score = score(state);
    Side receivers = serve.side().opponent();
    if (format.scores(receivers, serve.side(), score)) {
      int points = score.of(receivers) + 1;
      return pointTo(receivers, score, order.afterLostRally(serve, points));
    }
    Serve next = order.afterLostRally(serve, score.of(receivers));
    return new Link(stateOf(score, next), false, false);
  }

  private Link pointTo(Side scorer, Score score, Serve nextServe) {
    if (format.endsWithPointTo(scorer, score)) {
      return new Link(scorer == Side.A ? A_WINS : B_WINS, true, false);
    }
    Score next = score.pointTo(scorer);
    return new Link(stateOf(next, nextServe), true, foldOf(next) > 0);
  }
}
