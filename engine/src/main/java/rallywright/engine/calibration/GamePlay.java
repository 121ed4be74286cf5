package rallywright.engine.calibration;

import java.util.random.RandomGenerator;
import rallywright.engine.score.Goal;
import rallywright.engine.score.Score;
import rallywright.engine.score.Side;
import rallywright.engine.score.WinBy;
import rallywright.engine.skill.Contest;
import rallywright.engine.skill.Game;
import rallywright.engine.skill.RalliesByServer;
import rallywright.engine.skill.RalliesWon;
import rallywright.engine.skill.Result;
import rallywright.engine.skill.ScorePath;

/**
 * Plays one game rally by rally and notes it in one of the ways that a coach may: by lot every
 * rally scores or only the server's, to 5 or 7 by one or two, with or without a head start, played
 * out or cut off after some rallies, with or without its rallies written down.
 *
 * <p>Not played: a game that was cut off, of which only the server's rallies score and no rally was
 * written down. What the model takes for such a game (every number of rallies equally likely) is
 * not a way to draw one; here its rallies are written down.
 */
final class GamePlay {
  private static final int ENDLESS = Integer.MAX_VALUE;

  private final Meeting meeting;
  private final ScorePath.Counting counting;
  private final Goal goal;
  private final Score start;
  private final Side firstServer;
  private final RandomGenerator random;
  private final int[] points;
  private final int[] served = new int[2];
  private final int[] servedAndWon = new int[2];

  private GamePlay(Meeting meeting, RandomGenerator random) {
    this.meeting = meeting;
    this.random = random;
    counting =
        random.nextInt(5) < 2 ? ScorePath.Counting.SERVER_ONLY : ScorePath.Counting.EVERY_RALLY;
    int target = random.nextBoolean() ? 5 : 7;
    goal = Goal.firstTo(target).withWinBy(random.nextInt(4) == 0 ? WinBy.TWO : WinBy.ONE);
    int given = random.nextInt(5) == 0 ? 1 + random.nextInt(target - 2) : 0;
    start = random.nextBoolean() ? Score.of(given, 0) : Score.of(0, given);
    firstServer = random.nextBoolean() ? Side.A : Side.B;
    points = new int[] {start.a(), start.b()};
  }

  static Game of(Meeting meeting, Truth truth, RandomGenerator random) {
    GamePlay play = new GamePlay(meeting, random);
    play.run(truth, random.nextInt(6) == 0 ? 3 + random.nextInt(8) : ENDLESS);
    return meeting.with(play.noted());
  }

  private void run(Truth truth, int mostRallies) {
    double[] chances = {
      truth.chanceOfServer(meeting, Side.A), truth.chanceOfServer(meeting, Side.B)
    };
    int server = firstServer == Side.A ? 0 : 1;
    for (int rally = 0; rally < mostRallies && isOpen(); rally++) {
      boolean byServer = random.nextDouble() < chances[server];
      int winner = byServer ? server : 1 - server;
      served[server]++;
      servedAndWon[server] += byServer ? 1 : 0;
      if (byServer || counting == ScorePath.Counting.EVERY_RALLY) {
        points[winner]++;
      }
      server = winner;
    }
  }

  private boolean isOpen() {
    return goal.isOpenAt(Score.of(points[0], points[1]));
  }

  private Result noted() {
    Score end = Score.of(points[0], points[1]);
    if (meeting.contest().roles() == Contest.Roles.BY_SIDE
        && counting == ScorePath.Counting.EVERY_RALLY) {
      return RalliesWon.between(start, end);
    }
    if (isOpen() || random.nextBoolean()) {
      return new RalliesByServer(served[0], servedAndWon[0], served[1], servedAndWon[1]);
    }
    ScorePath.FirstServer known =
        firstServer == Side.A ? ScorePath.FirstServer.A : ScorePath.FirstServer.B;
    return new ScorePath(
        counting,
        start,
        end,
        goal,
        ScorePath.Ending.FINISHED,
        random.nextInt(4) == 0 ? ScorePath.FirstServer.UNKNOWN : known);
  }
}
