package rallywright.benchmarks.calibration;

import java.util.List;
import java.util.Map;
import org.apache.commons.math3.distribution.BinomialDistribution;
import rallywright.engine.calibration.Kind;
import rallywright.engine.calibration.RankHistogram;

/**
 * The rank histograms; the band holds each single bin in 99 of 100 such pictures.
 *
 * @param ranks of each kind
 * @param clubs how many clubs
 */
record RankFigure(Map<Kind, RankHistogram> ranks, int clubs) {
  private static final int ACROSS = 3;
  private static final int WIDTH = 250;
  private static final int HEIGHT = 140;
  private static final int GAP = 30;
  private static final double OUTSIDE = 0.005;

  String svg() {
    int down = (ranks.size() + ACROSS - 1) / ACROSS;
    Drawing drawing =
        new Drawing(
            ACROSS * (WIDTH + GAP) + GAP,
            down * (HEIGHT + 2 * GAP) + GAP,
            "Ranks of the truth among draws, by kind");
    int across = 0;
    int y = GAP;
    for (Map.Entry<Kind, RankHistogram> entry : ranks.entrySet()) {
      int x = GAP + across * (WIDTH + GAP);
      drawing.text(x, y, Drawing.Anchor.START, Drawing.INK, entry.getKey().words());
      panel(drawing, x, y + 10.0, entry.getValue().counts());
      across++;
      if (across == ACROSS) {
        across = 0;
        y += HEIGHT + 2 * GAP;
      }
    }
    drawing.text(
        GAP,
        down * (HEIGHT + 2 * GAP) + GAP - 16.0,
        Drawing.Anchor.START,
        Drawing.PALE,
        "left: truth below most draws; right: above most. Band: a single bin, 99 of 100 times");
    return drawing.svg();
  }

  private void panel(Drawing drawing, double x, double y, List<Integer> counts) {
    BinomialDistribution flat = new BinomialDistribution(clubs, 1.0 / counts.size());
    int low = flat.inverseCumulativeProbability(OUTSIDE);
    int high = flat.inverseCumulativeProbability(1 - OUTSIDE);
    double most = Math.max(high, counts.stream().mapToInt(Integer::intValue).max().orElse(1));
    double unit = HEIGHT / (1.1 * most);
    double bottom = y + HEIGHT;
    drawing.box(new Drawing.Box(x, bottom - high * unit, WIDTH, (high - low) * unit), Drawing.BAND);
    double bar = WIDTH / (double) counts.size();
    for (int bin = 0; bin < counts.size(); bin++) {
      double tall = counts.get(bin) * unit;
      boolean outside = counts.get(bin) < low || counts.get(bin) > high;
      drawing.box(
          new Drawing.Box(x + bin * bar + 3, bottom - tall, bar - 6, tall),
          outside ? Drawing.FAULT : Drawing.MARK);
    }
    drawing.line(new Drawing.Box(x, bottom, WIDTH, 0), Drawing.PALE);
  }
}
