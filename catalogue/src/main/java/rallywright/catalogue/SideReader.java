package rallywright.catalogue;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rallywright.engine.court.Court;
import rallywright.engine.court.HalfArea;
import rallywright.engine.court.Spot;
import rallywright.engine.drill.Advance;
import rallywright.engine.drill.Demand;
import rallywright.engine.drill.DrillSide;
import rallywright.engine.drill.InBounds;
import rallywright.engine.drill.Role;
import rallywright.engine.drill.Skill;
import rallywright.engine.drill.SkillWeights;
import rallywright.engine.drill.Stand;
import rallywright.engine.quantity.Length;
import rallywright.engine.score.Ending.Stroke;

/** Reads one side of a drill: role, place, bounds, strokes and weights. */
final class SideReader {

  private static final List<String> REQUIRED =
      List.of("role", "task", "stands", "in-bounds", "strokes", "advance", "weights");
  private static final List<String> OPTIONAL =
      List.of("stands-cross", "in-bounds-cross", "demands");

  private static final String NAMED_AREAS = "kitchen, behind-the-kitchen, whole-half";

  private SideReader() {}

  static DrillSide read(Entry entry) {
    Block block = Block.of(entry, REQUIRED, OPTIONAL);
    Role role = block.get("role").choice(Role.class);
    Spot straight = spot(block.get("stands"));
    Spot cross = block.find("stands-cross").map(SideReader::spot).orElse(straight);
    HalfArea area = area(block.get("in-bounds"));
    HalfArea areaCross = block.find("in-bounds-cross").map(SideReader::area).orElse(area);
    return entry.make(
        () ->
            new DrillSide(
                role,
                block.get("task").text(),
                List.of(new Stand(straight, cross)),
                new InBounds(area, areaCross),
                choices(block.get("strokes"), Stroke.class),
                block.get("advance").choice(Advance.class),
                weights(block.get("weights")),
                block
                    .find("demands")
                    .map(demands -> choices(demands, Demand.class))
                    .orElse(EnumSet.noneOf(Demand.class))));
  }

  static Spot spot(Entry entry) {
    Block block = Block.of(entry, List.of("from-centre", "from-net"), List.of());
    return entry.make(
        () -> new Spot(block.get("from-centre").length(), block.get("from-net").length()));
  }

  /** An area by its name, between two distances from the net, or corner by corner. */
  static HalfArea area(Entry entry) {
    if (entry.isList()) {
      List<Spot> corners = entry.entries().stream().map(SideReader::spot).toList();
      return entry.make(() -> new HalfArea(corners));
    }
    if (entry.form().equals("a single value")) {
      return named(entry);
    }
    Block block = Block.of(entry, List.of("from-net", "to-net"), List.of("from-centre", "to-side"));
    Optional<Entry> inner = block.find("from-centre");
    Optional<Entry> outer = block.find("to-side");
    return entry.make(
        () ->
            rectangle(
                new Spot(
                    inner.map(Entry::length).orElse(Length.ZERO), block.get("from-net").length()),
                new Spot(
                    outer.map(Entry::length).orElse(Court.HALF_WIDTH),
                    block.get("to-net").length())));
  }

  private static HalfArea rectangle(Spot inner, Spot outer) {
    return new HalfArea(
        List.of(
            inner,
            new Spot(outer.fromCentre(), inner.fromNet()),
            outer,
            new Spot(inner.fromCentre(), outer.fromNet())));
  }

  private static HalfArea named(Entry entry) {
    return switch (entry.text()) {
      case "kitchen" -> HalfArea.KITCHEN;
      case "behind-the-kitchen" -> HalfArea.BEHIND_THE_KITCHEN;
      case "whole-half" -> HalfArea.WHOLE_HALF;
      default ->
          throw entry.problem(
              "\"%s\" is \"%s\", but must be one of: %s, or two distances, or a list of corners. %s"
                  .formatted(
                      entry.name(),
                      entry.text(),
                      NAMED_AREAS,
                      Choice.maybe(entry.text(), List.of(NAMED_AREAS.split(", ")))));
    };
  }

  static SkillWeights weights(Entry entry) {
    Block block = Block.of(entry, List.of(), Choice.words(Skill.class));
    Map<Skill, Double> shares = new EnumMap<>(Skill.class);
    for (Map.Entry<String, Entry> share : block.entries().entrySet()) {
      Skill skill = Choice.of(Skill.class, share.getKey()).orElseThrow();
      shares.put(skill, share.getValue().number());
    }
    return entry.make(() -> new SkillWeights(shares));
  }

  private static <E extends Enum<E>> EnumSet<E> choices(Entry entry, Class<E> type) {
    List<E> chosen = new ArrayList<>();
    for (Entry each : entry.entries()) {
      E choice = each.choice(type);
      if (chosen.contains(choice)) {
        throw each.problem(
            "\"%s\" is named twice in \"%s\" but is allowed once. Maybe delete one of them."
                .formatted(Choice.word(choice), entry.name()));
      }
      chosen.add(choice);
    }
    EnumSet<E> set = EnumSet.noneOf(type);
    set.addAll(chosen);
    return set;
  }
}
