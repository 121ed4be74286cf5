package rallywright.engine.drill;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import rallywright.engine.court.Direction;

/**
 * A drill as a coach knows it: what it is for, how it lies on the court, its rule and its length.
 *
 * @param key the short name in files and in the database
 * @param name the name for people, at most 40 characters
 * @param purpose what it is for, at most 600 characters
 * @param rule the rule in one line, at most 160 characters, as the phone and the sheet show it
 * @param kind the sort of drill
 * @param progression where it stands in a session
 * @param form a scored game on a lane or a stretch of time
 * @param intensity how hard it is on the body
 * @param advice what a coach says and brings
 */
public record Drill(
    DrillKey key,
    String name,
    String purpose,
    String rule,
    DrillKind kind,
    Progression progression,
    DrillForm form,
    Intensity intensity,
    Advice advice) {

  /** Checks the words and that kind, place and form fit together. */
  public Drill {
    name = Wording.checked("name", name, Wording.NAME);
    purpose = Wording.checked("purpose", purpose, Wording.PARAGRAPH);
    rule = Wording.checked("rule", rule, Wording.LINE);
    if (kind.isScored() != (form instanceof DrillForm.Scored)) {
      throw new IllegalArgumentException(
          kind.isScored()
              ? "A %s needs a game. Maybe add its scoring.".formatted(kind.words())
              : "A drill of the kind \"%s\" is timed, not scored. Maybe give its minutes."
                  .formatted(kind.words()));
    }
    if (kind.isWarmUp() != (progression == Progression.WARM_UP)) {
      throw new IllegalArgumentException(
          "A %s cannot stand at \"%s\" in a session. Maybe %s."
              .formatted(
                  kind.words(), progression.words(), kind.isWarmUp() ? "warm-up" : "at the line"));
    }
    if (form instanceof DrillForm.Scored scored) {
      boolean serves = scored.serving() != Serving.FEED;
      if (serves != (kind == DrillKind.FULL_GAME)) {
        throw new IllegalArgumentException(
            "A full game starts with a serve, every other drill with a feed, but this %s does not."
                    .formatted(kind.words())
                + " Maybe change the kind or the feed.");
      }
    }
    if (kind == DrillKind.COOPERATIVE && form.onCourt().isEmpty()) {
      throw new IllegalArgumentException(
          "A drill for two together needs a lane. Maybe add directions and sides.");
    }
  }

  /**
   * The game, if it is one.
   *
   * @return empty for what is only timed
   */
  public Optional<DrillForm.Scored> scored() {
    return form instanceof DrillForm.Scored game ? Optional.of(game) : Optional.empty();
  }

  /**
   * How it lies on the court.
   *
   * @return empty where everybody moves freely
   */
  public Optional<Layout> layout() {
    return form.onCourt();
  }

  /**
   * The directions in which it is played.
   *
   * @return empty where everybody moves freely
   */
  public List<Direction> directions() {
    return layout().map(Layout::directions).orElse(List.of());
  }

  /**
   * Its fixed length.
   *
   * @return minutes; empty for a game, which lasts as long as it lasts
   */
  public OptionalDouble minutes() {
    return form instanceof DrillForm.Timed timed
        ? OptionalDouble.of(timed.minutes())
        : OptionalDouble.empty();
  }

  /**
   * The skills that count for either side.
   *
   * @return the skills in the order of {@link Skill}; empty without a lane
   */
  public Set<Skill> skills() {
    EnumSet<Skill> skills = EnumSet.noneOf(Skill.class);
    layout()
        .ifPresent(
            layout -> {
              skills.addAll(layout.sides().a().weights().skills());
              skills.addAll(layout.sides().b().weights().skills());
            });
    return skills;
  }

  /**
   * What it asks of the body, on either side.
   *
   * @return the demands; hard work for every hard drill
   */
  public Set<Demand> demands() {
    EnumSet<Demand> demands = EnumSet.noneOf(Demand.class);
    layout()
        .ifPresent(
            layout -> {
              demands.addAll(layout.sides().a().demands());
              demands.addAll(layout.sides().b().demands());
            });
    if (intensity == Intensity.HARD) {
      demands.add(Demand.HARD_WORK);
    }
    return demands;
  }
}
