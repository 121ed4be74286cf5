package rallywright.engine.skill;

import rallywright.engine.score.Score;
import rallywright.engine.skill.ScorePath.Counting;

/** The same chain played rally by rally, without any formula: where the game may stand by now. */
final class MassByRallies {
  private final ScorePath path;
  private final double[] serve;
  private double[][][] mass;
  private final double[][] arrivals;

  MassByRallies(ScorePath path, double serveA, double serveB) {
    this.path = path;
    serve = new double[] {serveA, serveB};
    mass = new double[path.end().a() + 2][path.end().b() + 2][2];
    arrivals = new double[path.end().a() + 2][path.end().b() + 2];
    double[] start = mass[path.start().a()][path.start().b()];
    start[0] = path.firstServer().chanceOfA();
    start[1] = 1 - start[0];
    arrivals[path.start().a()][path.start().b()] = 1;
  }

  double at(Score score) {
    return mass[score.a()][score.b()][0] + mass[score.a()][score.b()][1];
  }

  double everAt(Score score) {
    return arrivals[score.a()][score.b()];
  }

  /** One more rally wherever the game is not over. */
  void play() {
    double[][][] next = new double[mass.length][mass[0].length][2];
    for (int a = 0; a <= path.end().a(); a++) {
      for (int b = 0; b <= path.end().b(); b++) {
        for (int server = 0; server < 2; server++) {
          if (path.goal().winnerAt(Score.of(a, b)).isPresent()) {
            next[a][b][server] += mass[a][b][server];
          } else {
            rally(next, new int[] {a, b}, server);
          }
        }
      }
    }
    mass = next;
  }

  private void rally(double[][][] next, int[] score, int server) {
    double here = mass[score[0]][score[1]][server];
    point(next, score, server, here * serve[server]);
    double lost = here * (1 - serve[server]);
    if (path.counting() == Counting.EVERY_RALLY) {
      point(next, score, 1 - server, lost);
    } else {
      next[score[0]][score[1]][1 - server] += lost;
    }
  }

  private void point(double[][][] next, int[] score, int winner, double moved) {
    int a = score[0] + (winner == 0 ? 1 : 0);
    int b = score[1] + (winner == 1 ? 1 : 0);
    next[a][b][winner] += moved;
    arrivals[a][b] += moved;
  }
}
