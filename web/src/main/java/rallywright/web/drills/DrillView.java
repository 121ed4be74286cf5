package rallywright.web.drills;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import rallywright.engine.drill.Advice;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.DrillSide;
import rallywright.engine.drill.Layout;
import rallywright.engine.drill.Role;
import rallywright.engine.drill.Yardstick;
import rallywright.web.page.Units;
import rallywright.web.shots.ShotLinks;

/**
 * The page of a drill or yardstick.
 *
 * @param name its name
 * @param rule its rule, or what counts, in one line
 * @param purpose what it is for, or how it is set up
 * @param facts short facts by name
 * @param courts a drawing for each direction
 * @param roles what each side does
 * @param scoring how it is counted, by name; empty where nothing is scored
 * @param advice cues, mistakes and cautions
 * @param shot the drill's shot as part of an address, or an empty text
 */
public record DrillView(
    String name,
    String rule,
    String purpose,
    Map<String, String> facts,
    List<CourtFigure> courts,
    List<RoleView> roles,
    Map<String, String> scoring,
    Advice advice,
    String shot) {

  /**
   * One side of a drill.
   *
   * @param name the role
   * @param form the class that draws its mark: solid or outlined, or empty where both are meant
   * @param task what it tries to do
   * @param facts what it may do, by name
   */
  public record RoleView(String name, String form, String task, Map<String, String> facts) {}

  /** The name as it stands in an address. */
  public String encodedName() {
    return URLEncoder.encode(name, StandardCharsets.UTF_8);
  }

  static DrillView of(Drill drill, Units units) {
    return new DrillView(
        drill.name(),
        drill.rule(),
        drill.purpose(),
        DrillWords.facts(drill),
        CourtFigure.of(drill),
        drill.layout().map(layout -> roles(layout, units)).orElse(List.of()),
        drill.scored().map(DrillWords::scoring).orElse(Map.of()),
        drill.advice(),
        ShotLinks.of(drill, units).orElse(""));
  }

  static DrillView of(Yardstick yardstick, Units units) {
    Map<String, String> facts = DrillWords.facts(yardstick);
    facts.put("Player", DrillWords.spot(yardstick.court().player(), units));
    yardstick
        .court()
        .feeder()
        .ifPresent(feeder -> facts.put("Feeder", DrillWords.spot(feeder, units)));
    facts.put("Target", DrillWords.area(yardstick.court().target(), units));
    return new DrillView(
        yardstick.name(),
        yardstick.hit(),
        yardstick.setUp(),
        facts,
        CourtFigure.of(yardstick),
        List.of(),
        Map.of(),
        yardstick.advice(),
        ShotLinks.of(yardstick, units).orElse(""));
  }

  private static List<RoleView> roles(Layout layout, Units units) {
    List<RoleView> roles = new ArrayList<>();
    if (layout.isEven()) {
      roles.add(role(layout, layout.sides().a(), "", units));
    } else {
      roles.add(role(layout, layout.sides().a(), "side-a", units));
      roles.add(role(layout, layout.sides().b(), "side-b", units));
    }
    return roles;
  }

  private static RoleView role(Layout layout, DrillSide side, String form, Units units) {
    String name =
        side.role() == Role.EVEN ? "Both players" : CourtFigure.capital(side.role().words());
    return new RoleView(name, form, side.task(), DrillWords.side(layout, side, units));
  }
}
