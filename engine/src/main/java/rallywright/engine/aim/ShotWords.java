package rallywright.engine.aim;

import java.util.List;
import java.util.Locale;
import rallywright.engine.aim.ShotAnswer.BestShot;
import rallywright.engine.aim.ShotAnswer.NetBand;
import rallywright.engine.court.Court;
import rallywright.engine.flight.AimSearch;
import rallywright.engine.flight.Scatter;
import rallywright.engine.flight.TimeLeft;

/** What a shot allows, in a coach's words; the same on the page, on paper and in the program. */
public final class ShotWords {

  /** A hand across, over the tape: 4 in. Common practice, no source. */
  private static final double HAND_M = 4 * 0.0254;

  /** A paddle's length, about 16 in: common practice, no source. */
  private static final double PADDLE_M = 16 * 0.0254;

  private static final double NEARLY_ALWAYS = 0.95;
  private static final double HARDLY_EVER = 0.05;
  private static final double MIDDLE_M = 0.5;

  private static final List<String> WIND_FROM =
      List.of(
          "into the hitter’s face",
          "from ahead on the right",
          "from the right",
          "from behind on the right",
          "from behind",
          "from behind on the left",
          "from the left",
          "from ahead on the left");

  private final ShotAnswer answer;
  private final Measures measures;

  private ShotWords(ShotAnswer answer, Measures measures) {
    this.answer = answer;
    this.measures = measures;
  }

  /**
   * The words for an answer.
   *
   * @param answer what a shot allows
   * @param measures the reader's units
   * @return its words
   */
  public static ShotWords of(ShotAnswer answer, Measures measures) {
    return new ShotWords(answer, measures);
  }

  /**
   * Where to aim and how often it comes off.
   *
   * @return one sentence, or one that says that nothing succeeds
   */
  public String advice() {
    return answer
        .best()
        .map(
            best ->
                "Aim %s, %s, %s; you will be in %s."
                    .formatted(
                        side(best),
                        depth(best.landing().along(), measures),
                        overTheTape(best.aim().clearance()),
                        timesInTen(best.aim().chance())))
        .orElse(
            "Nothing you can hit from there does all that is asked. Move the target, the hitter or"
                + " the contact height.");
  }

  private String side(BestShot best) {
    return side(best.landing().across(), measures);
  }

  /**
   * Where a place lies across the court, from the nearest line.
   *
   * @param across metres to the reader's right of the centre line
   * @param measures the reader's units
   * @return for example "2 ft inside the right side line"
   */
  public static String side(double across, Measures measures) {
    double out = Court.HALF_WIDTH.metres() - Math.abs(across);
    String hand = across < 0 ? "left" : "right";
    if (out < 0) {
      return "%s outside the %s side line".formatted(measures.about(-out), hand);
    }
    if (out <= MIDDLE_M * Court.HALF_WIDTH.metres()) {
      return "%s inside the %s side line".formatted(measures.about(out), hand);
    }
    return Math.abs(across) < HAND_M
        ? "down the middle"
        : "%s %s of the middle".formatted(measures.about(Math.abs(across)), hand);
  }

  /**
   * How deep a place lies beyond the net, from the nearest line.
   *
   * @param along metres beyond the net
   * @param measures the reader's units
   * @return for example "2 ft before the kitchen line"
   */
  public static String depth(double along, Measures measures) {
    double kitchen = Court.KITCHEN_DEPTH.metres();
    double end = Court.HALF_LENGTH.metres();
    if (along <= kitchen) {
      double short_ = kitchen - along;
      return short_ < HAND_M
          ? "on the kitchen line"
          : "%s short of the kitchen line".formatted(measures.about(short_));
    }
    return along < (kitchen + end) / 2
        ? "%s past the kitchen line".formatted(measures.about(along - kitchen))
        : "%s inside the baseline".formatted(measures.about(Math.max(0, end - along)));
  }

  /**
   * A height over the tape.
   *
   * @param air between the net's top and the ball, in metres
   * @return for example "a hand (4 in) above the tape"
   */
  public String overTheTape(double air) {
    String size = measures.small(air);
    if (air < HAND_M / 2) {
      return "just over the tape (%s)".formatted(size);
    }
    long hands = Math.round(air / HAND_M);
    if (hands <= 3) {
      return "%s (%s) above the tape"
          .formatted(hands <= 1 ? "a hand" : hands == 2 ? "two hands" : "three hands", size);
    }
    double paddles = air / PADDLE_M;
    return paddles < 1.4
        ? "a paddle’s length (%s) above the tape".formatted(size)
        : "%s above the tape".formatted(measures.length(air));
  }

  /**
   * A chance as a coach says it.
   *
   * @param chance from 0 to 1
   * @return for example "8 times in 10"
   */
  public static String timesInTen(double chance) {
    if (chance >= NEARLY_ALWAYS) {
      return "nearly always (%d times in 100)".formatted(Math.min(99, Math.round(chance * 100)));
    }
    if (chance < HARDLY_EVER) {
      return "hardly ever (%s in 100)".formatted(chance < 0.005 ? "not once" : percent(chance));
    }
    long tenths = Math.max(1, Math.min(9, Math.round(chance * 10)));
    return tenths == 1 ? "once in 10 (%s)".formatted(inHundred(chance)) : tenths + " times in 10";
  }

  private static String inHundred(double chance) {
    return percent(chance) + " in 100";
  }

  private static String percent(double chance) {
    return String.valueOf(Math.round(chance * 100));
  }

  /**
   * How high balls that do it pass over the net.
   *
   * @return one sentence, or an empty text where nothing succeeds
   */
  public String band() {
    return answer.band().map(this::band).orElse("");
  }

  private String band(NetBand band) {
    return band.low() < HAND_M / 4
        ? "Hit toward the middle of the target, clear the net by anything up to %s."
            .formatted(measures.small(band.high()))
        : "Hit toward the middle of the target, clear the net by %s to %s."
            .formatted(measures.small(band.low()), measures.small(band.high()));
  }

  /**
   * Where a wind comes from, as the hitter feels it.
   *
   * @param degrees 0 into the face, 90 from the right
   * @return for example "from behind on the left"
   */
  public static String windFrom(double degrees) {
    return WIND_FROM.get((int) Math.round(degrees / 45) % WIND_FROM.size());
  }

  /**
   * What counts as success.
   *
   * @return one sentence
   */
  public String counts() {
    return "A ball counts when it clears the net, lands in the hatched target and %s."
        .formatted(answer.setting().shot().style().words());
  }

  /**
   * Whose scatter this is.
   *
   * @return sentences that say from what it is known, and how well
   */
  public String whose() {
    return answer.setting().player().measured().map(ShotWords::measured).orElseGet(this::assumed);
  }

  private static String measured(MeasuredScatter measured) {
    return String.format(
        Locale.ROOT,
        "From %d landings%s: two balls in three leave the paddle within %.1f in 100 of the pace and"
            + " %.1f° of the angles meant. That many balls tell it roughly: eight times in ten the"
            + " true scatter is %.1f to %.1f times that in pace and height, %.1f to %.1f times in"
            + " direction. How much is pace and how much height is assumed: landings cannot tell.",
        measured.balls(),
        net(measured.inTheNet()),
        100 * measured.scatter().speed(),
        Math.toDegrees(Math.max(measured.scatter().elevation(), measured.scatter().bearing())),
        measured.least(),
        measured.most(),
        measured.leastAside(),
        measured.mostAside());
  }

  private static String net(int balls) {
    return switch (balls) {
      case 0 -> ", none in the net";
      case 1 -> " and a ball in the net";
      default -> " and %d balls in the net".formatted(balls);
    };
  }

  private String assumed() {
    Scatter scatter = answer.setting().scatter();
    return String.format(
        Locale.ROOT,
        "For a player of level %.1f we assume, unmeasured, that two balls in three leave the paddle"
            + " within %.0f in 100 of the pace and %.1f° of the angles meant.",
        answer.setting().level(),
        100 * scatter.speed(),
        Math.toDegrees(Math.max(scatter.elevation(), scatter.bearing())));
  }

  /**
   * What only a full answer tells: the spread of balls, the pace, a steadier hand, the opponent.
   *
   * @return sentences; none for an answer of a dragged picture
   */
  public List<String> more() {
    return answer
        .closer()
        .map(
            closer ->
                List.of(
                    balls(closer.aim()),
                    pace(closer),
                    steadier(closer.steadier()),
                    opponent(closer.opponent())))
        .orElse(List.of());
  }

  /**
   * What the spread of balls does to the chance and to where to aim.
   *
   * @return sentences; an empty text for an answer of a dragged picture
   */
  public String balls() {
    return answer.closer().map(closer -> balls(closer.aim())).orElse("");
  }

  private String balls(AimRange aim) {
    return ("Balls differ in drag and lift: brackets hold four balls in five, for a player used to"
            + " the ball. The best aim comes off %s times in 100, passes %s above the tape and"
            + " lands %s beyond the net.")
        .formatted(
            RangeWords.with(aim.chance(), ShotWords::percentWithin),
            RangeWords.with(aim.clearance(), air -> measures.small(Math.max(0, air))),
            RangeWords.with(aim.depth(), measures::about));
  }

  private String pace(Closer closer) {
    return ("It leaves the paddle at %s. At its best place the window forgives %s in 100 of the"
            + " pace or %s of the angle, up or down.")
        .formatted(
            RangeWords.with(closer.aim().pace(), measures::speed),
            RangeWords.with(closer.forgives().pace(), ShotWords::percentWithin),
            RangeWords.with(closer.forgives().elevation(), ShotWords::degrees));
  }

  private static String degrees(double radians) {
    return String.format(Locale.ROOT, "%.1f°", Math.toDegrees(radians));
  }

  /**
   * A share in 100; the end of a range may lie a little outside 0 to 1.
   *
   * @param share about from 0 to 1
   * @return for example "42"
   */
  public static String percentWithin(double share) {
    return percent(Math.max(0, Math.min(1, share)));
  }

  private static String steadier(AimSearch.Steadier steadier) {
    double most =
        Math.max(steadier.inSpeed(), Math.max(steadier.inElevation(), steadier.inBearing()));
    String what =
        most == steadier.inSpeed()
            ? "pace"
            : most == steadier.inElevation() ? "height" : "direction";
    return "A quarter less scatter in all would make it %s; in %s alone %s, which helps most."
        .formatted(inHundred(steadier.inAll()), what, inHundred(most));
  }

  private String opponent(Closer.TimeRange time) {
    TimeLeft left = time.left();
    double passes =
        Math.abs(-left.ball().ball().position().y() - answer.setting().opponent().across());
    String when =
        (left.met() == TimeLeft.Met.IN_THE_AIR
                ? "The opponent can meet it in the air after %s"
                : "It lands before the opponent can volley it, after %s")
            .formatted(
                RangeWords.with(
                    time.seconds(), seconds -> String.format(Locale.ROOT, "%.1f s", seconds)));
    return left.spareSeconds() < 0
        ? when + ": too soon to react (simple reaction 0.23 s and the swing)."
        : "%s, %s; after reacting they have time for a step of %s."
            .formatted(
                when,
                passes < HAND_M
                    ? "straight at them"
                    : measures.about(passes) + " to the side of where they stand",
                RangeWords.with(time.step(), measures::about));
  }
}
