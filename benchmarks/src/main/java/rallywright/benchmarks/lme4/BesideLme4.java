package rallywright.benchmarks.lme4;

import java.util.SplittableRandom;

final class BesideLme4 {
  private BesideLme4() {}

  public static void main(String[] arguments) {
    BradleyTerry club = BradleyTerry.drawn(200, 20000, new SplittableRandom(1));
    for (int i = 0; i < 25; i++) {
      long start = System.nanoTime();
      Answer answer = club.fit();
      System.out.println(
          (System.nanoTime() - start) / 1e6 + " ms " + answer.sd() + " " + answer.logLikelihood());
    }
  }
}
