package rallywright.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import rallywright.engine.aim.AimRange;
import rallywright.engine.aim.MarkPlace;
import rallywright.engine.aim.Measures;
import rallywright.engine.aim.RangeWords;
import rallywright.engine.aim.ShotAnswer;
import rallywright.engine.aim.ShotAnswer.BestShot;
import rallywright.engine.aim.ShotSetting;
import rallywright.engine.aim.ShotSetting.Place;
import rallywright.engine.aim.ShotWords;
import rallywright.engine.aim.TargetCard;
import rallywright.engine.court.Court;
import rallywright.paper.card.CardView;
import rallywright.paper.card.CardView.MarkLine;
import rallywright.paper.drawing.ShotDrawing;

/** Puts the card into words. */
final class CardWords {

  private static final int BALLS = 20;

  private final TargetCard card;
  private final String drill;
  private final Measures measures;
  private final ShotSetting setting;
  private final ShotWords words;

  CardWords(TargetCard card, String drill, Measures measures) {
    this.card = card;
    this.drill = drill;
    this.measures = measures;
    setting = card.answer().setting();
    words = ShotWords.of(card.answer(), measures);
  }

  CardView view() {
    return new CardView(
        setting.shot().words(),
        drill,
        setting
            .player()
            .measured()
            .map(own -> "For one player, by %d landings of their own".formatted(own.balls()))
            .orElse(String.format(Locale.ROOT, "For a player of level %.1f", setting.level())),
        words.advice(),
        ShotDrawing.of(
            card,
            "Court from above: the hitter at the bottom, cones A to D around the hatched target, a"
                + " box of tape and a cross where to aim."),
        marks(),
        expect(),
        small());
  }

  private List<MarkLine> marks() {
    List<MarkLine> marks = new ArrayList<>();
    marks.add(new MarkLine("Hitter", hitter()));
    List<Place> cones = card.cones();
    for (int place = 0; place < cones.size(); place++) {
      marks.add(
          new MarkLine(
              "Cone " + (char) ('A' + place), MarkPlace.words(cones.get(place), measures)));
    }
    marks.add(new MarkLine("Cross", cross()));
    List<Place> box = TargetCard.corners(card.tape());
    marks.add(new MarkLine("Tape, near left", MarkPlace.words(box.get(0), measures)));
    marks.add(new MarkLine("Tape, far right", MarkPlace.words(box.get(2), measures)));
    card.answer().best().map(this::string).ifPresent(marks::add);
    return marks;
  }

  private String hitter() {
    Place place = setting.hitter().place();
    double behind = -place.along() - Court.HALF_LENGTH.metres();
    String depth =
        behind >= 0
            ? measures.length(behind) + " behind the baseline"
            : measures.length(-place.along()) + " from the net";
    double across = place.across();
    return "%s, %s %s of the centre line; hits the ball at %s"
        .formatted(
            depth,
            measures.length(Math.abs(across)),
            across < 0 ? "left" : "right",
            measures.length(setting.hitter().height()));
  }

  private String cross() {
    return MarkPlace.words(card.cross(), measures)
        + balls(aim -> RangeWords.range(aim.depth(), measures::length), " from the net");
  }

  private MarkLine string(BestShot best) {
    return new MarkLine(
        "String",
        "over the net, %s above the tape: %s above the floor%s"
            .formatted(
                measures.small(best.aim().clearance()),
                measures.length(best.netHeight() + best.aim().clearance()),
                balls(
                    aim -> RangeWords.range(aim.clearance(), measures::small), " above the tape")));
  }

  /** What other balls make of it; nothing where they do not matter. */
  private String balls(Function<AimRange, String> range, String what) {
    return card.answer()
        .closer()
        .map(closer -> range.apply(closer.aim()))
        .filter(words -> !words.isEmpty())
        .map(words -> "; from ball to ball " + words + what)
        .orElse("");
  }

  private List<String> expect() {
    double chance = card.answer().best().map(best -> best.aim().chance()).orElse(0.0);
    return List.of(
        "Of %d balls about %d count%s; about %d of these inside the tape."
            .formatted(
                BALLS,
                Math.round(BALLS * chance),
                card.answer()
                    .closer()
                    .map(closer -> RangeWords.range(closer.aim().chance(), CardWords::ofBalls))
                    .filter(range -> !range.isEmpty())
                    .map(range -> " (" + range + " from ball to ball)")
                    .orElse(""),
                Math.round(BALLS * card.inTape())),
        words.counts());
  }

  private static String ofBalls(double chance) {
    return String.valueOf(Math.round(BALLS * Math.max(0, Math.min(1, chance))));
  }

  private List<String> small() {
    List<String> small = new ArrayList<>();
    small.add(words.whose());
    card.answer().closer().ifPresent(closer -> small.add(words.balls()));
    small.add(day(card.answer()));
    small.add(
        "Use flat markers; nobody walks through the target while balls are in the air; clear the"
            + " floor of balls. Usual cautions: local rules come first.");
    return small;
  }

  private String day(ShotAnswer answer) {
    ShotSetting.Day day = answer.setting().day();
    return day.wind() < 0.2
        ? "Worked out for still air and the %s.".formatted(day.ball().words())
        : "Worked out for a wind of %s %s and the %s."
            .formatted(
                measures.speed(day.wind()), ShotWords.windFrom(day.windFrom()), day.ball().words());
  }
}
