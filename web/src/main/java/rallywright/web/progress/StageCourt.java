package rallywright.web.progress;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import rallywright.engine.court.Court;
import rallywright.engine.point.BreakdownLine;
import rallywright.engine.point.BreakdownLine.InStage;
import rallywright.engine.point.BreakdownLine.Verdict;
import rallywright.engine.point.RallyChain.Winner;
import rallywright.engine.score.Ending.Stage;

/**
 * Where lost rallies ended, on the player's half of the court to scale, in feet: the net at the
 * top, the baseline below, and the stages on the way from the one to the other. Each bar is as long
 * as the share of lost rallies, the whole width of the court being all of them.
 *
 * @param title serving or receiving
 * @param noted how many lost rallies were noted, in words
 * @param enough whether there are enough to draw shares
 * @param rows one for each stage, from the baseline to the net
 */
public record StageCourt(String title, String noted, boolean enough, List<Row> rows) {

  private static final double LEFT = -Court.HALF_WIDTH.feet();
  private static final double WIDTH = 2 * Court.HALF_WIDTH.feet();

  private static final double BAR = 1;

  /** Copies the list. */
  public StageCourt {
    rows = List.copyOf(rows);
  }

  /**
   * One stage.
   *
   * @param words the stage
   * @param count how many of the lost rallies, in words
   * @param found whether it is called a breakdown
   * @param bar the bar and what lies round it
   * @param sentence the line for those who do not see it
   */
  public record Row(String words, String count, boolean found, Bar bar, String sentence) {}

  /**
   * A bar, in feet.
   *
   * @param wordsY where the words stand
   * @param y the top of the bar
   * @param width how long it is
   * @param low where the 80 % interval begins
   * @param high where it ends
   * @param middleY half way down the bar
   * @param expected where the expected share stands
   * @param expectedTop the top of its mark
   * @param expectedBottom the foot of its mark
   */
  public record Bar(
      String wordsY,
      String y,
      String width,
      String low,
      String high,
      String middleY,
      String expected,
      String expectedTop,
      String expectedBottom) {

    static Bar of(BreakdownLine line, double down) {
      return new Bar(
          number(down - BAR / 2 - 0.75),
          number(down - BAR / 2),
          number(WIDTH * line.share()),
          number(LEFT + WIDTH * line.low()),
          number(LEFT + WIDTH * line.high()),
          number(down),
          number(LEFT + WIDTH * line.expected().mean()),
          number(down - BAR),
          number(down + BAR));
    }
  }

  static StageCourt of(List<BreakdownLine> lines, Winner role) {
    List<Row> rows = new ArrayList<>();
    int noted = 0;
    boolean enough = false;
    for (BreakdownLine line : lines) {
      if (line.topic() instanceof InStage topic && topic.role() == role) {
        noted = line.of();
        enough = line.verdict() != Verdict.TOO_FEW;
        rows.add(
            new Row(
                stage(topic),
                line.lost() + " of " + line.of(),
                line.verdict() == Verdict.BREAKDOWN,
                Bar.of(line, fromNet(topic.stage())),
                line.sentence()));
      }
    }
    return new StageCourt(
        role == Winner.SERVER ? "Serving" : "Receiving",
        noted + (noted == 1 ? " lost rally noted" : " lost rallies noted"),
        enough,
        rows);
  }

  private static String stage(InStage topic) {
    boolean own = topic.role() == Winner.SERVER;
    return switch (topic.stage()) {
      case SERVE -> own ? "serve missed" : "beaten by the serve";
      case RETURN -> own ? "beaten by the return" : "return missed";
      case THIRD_SHOT -> own ? "third shot" : "after their third shot";
      case TRANSITION -> "on the way to the line";
      case NET_EXCHANGE -> "at the line";
    };
  }

  /** Where the bar of a stage lies, in feet from the net: drawn places on the way forward. */
  private static double fromNet(Stage stage) {
    return switch (stage) {
      case SERVE -> 24.6;
      case RETURN -> 20.2;
      case THIRD_SHOT -> 15.8;
      case TRANSITION -> 11.4;
      case NET_EXCHANGE -> 5.2;
    };
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.2f", value);
  }
}
