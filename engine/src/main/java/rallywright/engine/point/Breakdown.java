package rallywright.engine.point;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import rallywright.engine.point.BreakdownLine.InStage;
import rallywright.engine.point.BreakdownLine.Verdict;
import rallywright.engine.point.BreakdownLine.WithStroke;
import rallywright.engine.point.NotedStroke.Context;
import rallywright.engine.point.NotedStroke.FirstShares;
import rallywright.engine.point.RallyChain.Winner;
import rallywright.engine.score.Ending.Manner;
import rallywright.engine.score.Ending.Stage;
import rallywright.engine.score.Ending.Stroke;
import rallywright.engine.skill.Estimate;

/**
 * Where a player's rallies break down, beside what skills and club lead one to expect.
 *
 * <p><b>Card.</b> In: the club's noted endings and the player's. Out: a line for each stage
 * (serving and receiving) and for each stroke (missed, beaten by): the share of lost rallies with
 * its 80 % interval, the share to be expected, and whether the difference may be named. Method: the
 * chance of so many or more under a beta-binomial whose spread holds what is not known about the
 * skills and the club; then {@link FalseDiscovery} over all lines of the player at {@link #LEVEL}.
 * Limits: an ending says where a rally was lost, not why; endings must be noted without choosing;
 * in doubles they are the pair's.
 */
public final class Breakdown {

  /** Of the breakdowns named, at most this share is chance alone. */
  public static final double LEVEL = 0.1;

  /** With fewer noted lost rallies than this nothing is looked at: an assumption. */
  public static final int FEWEST_LOST = 10;

  private final List<BreakdownLine> lines;

  private Breakdown(List<BreakdownLine> lines) {
    this.lines = lines;
  }

  /**
   * What a player lost.
   *
   * @param served noted rallies that the player's side served, won or lost
   * @param received noted rallies that it received, won or lost
   * @param strokes noted strokes of lost rallies
   */
  public record Own(List<NotedRally> served, List<NotedRally> received, List<NotedStroke> strokes) {
    /** Copies the lists. */
    public Own {
      served = List.copyOf(served);
      received = List.copyOf(received);
      strokes = List.copyOf(strokes);
    }
  }

  /**
   * What the others lost.
   *
   * @param stages the stages as the club's noted endings show them
   * @param first what is believed of each setting before any stroke
   * @param strokes noted strokes of rallies that others lost
   */
  public record Others(
      StageLearning stages, Map<Context, FirstShares> first, List<NotedStroke> strokes) {
    /** Copies what can be copied. */
    public Others {
      first = Map.copyOf(first);
      strokes = List.copyOf(strokes);
    }
  }

  /**
   * Compares a player with what was to be expected.
   *
   * @param own what the player lost
   * @param others what the others lost
   * @return the lines
   */
  public static Breakdown of(Own own, Others others) {
    List<BreakdownLine> lines = new ArrayList<>();
    addStages(lines, own.served(), others.stages(), Winner.SERVER);
    addStages(lines, own.received(), others.stages(), Winner.RECEIVER);
    StrokeHabits habits = new StrokeHabits(others.first(), others.strokes());
    for (Manner manner : Manner.values()) {
      addStrokes(lines, own.strokes(), habits, manner);
    }
    return new Breakdown(named(lines));
  }

  private static void addStages(
      List<BreakdownLine> lines, List<NotedRally> rallies, StageLearning stages, Winner role) {
    List<NotedRally> lost = rallies.stream().filter(rally -> rally.winner() != role).toList();
    ExpectedEndings expected = new ExpectedEndings(stages, role);
    for (Stage stage : Stage.values()) {
      int here = (int) lost.stream().filter(rally -> rally.stage() == stage).count();
      lines.add(
          BreakdownLine.of(
              new InStage(role, stage), here, lost.size(), expected.share(stage, lost)));
    }
  }

  private static void addStrokes(
      List<BreakdownLine> lines, List<NotedStroke> strokes, StrokeHabits habits, Manner manner) {
    List<NotedStroke> lost =
        strokes.stream().filter(noted -> noted.context().manner() == manner).toList();
    for (Stroke stroke : Stroke.values()) {
      int here = (int) lost.stream().filter(noted -> noted.stroke() == stroke).count();
      Estimate expected = habits.share(stroke, lost);
      if (here > 0 || expected.mean() > 0) {
        lines.add(BreakdownLine.of(new WithStroke(stroke, manner), here, lost.size(), expected));
      }
    }
  }

  private static List<BreakdownLine> named(List<BreakdownLine> lines) {
    List<BreakdownLine> checked = new ArrayList<>(lines);
    List<Integer> places = new ArrayList<>();
    List<Double> chances = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      if (lines.get(i).verdict() != Verdict.TOO_FEW) {
        places.add(i);
        chances.add(lines.get(i).chance());
      }
    }
    for (int kept : FalseDiscovery.kept(chances, LEVEL)) {
      int place = places.get(kept);
      checked.set(place, lines.get(place).named());
    }
    return checked;
  }

  /**
   * All lines: stages serving, stages receiving, strokes missed, strokes beaten by.
   *
   * @return the lines
   */
  public List<BreakdownLine> lines() {
    return List.copyOf(lines);
  }

  /**
   * The lines that may be named, the surest first.
   *
   * @return the breakdowns; often none
   */
  public List<BreakdownLine> breakdowns() {
    return lines.stream()
        .filter(line -> line.verdict() == Verdict.BREAKDOWN)
        .sorted(Comparator.comparingDouble(BreakdownLine::chance))
        .toList();
  }
}
