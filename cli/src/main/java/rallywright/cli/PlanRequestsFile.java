package rallywright.cli;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Supplier;
import rallywright.engine.drill.DrillKey;
import rallywright.engine.drill.SkillGroup;
import rallywright.engine.plan.Line;
import rallywright.engine.plan.Requests;
import rallywright.engine.plan.Requests.Ends;
import rallywright.engine.plan.Requests.Spare;
import rallywright.engine.plan.Slot;
import rallywright.engine.plan.YardstickWish;

/** What a wish asks for beyond time, courts and players, as JSON fields. */
final class PlanRequestsFile {

  static final List<String> FIELDS =
      List.of("pinned", "slots", "forbidden", "equipment", "yardsticks", "spare", "ends", "rests");

  private static final List<String> PIN_FIELDS = List.of("drill", "line", "rounds");
  private static final List<String> REST_FIELDS = List.of("every", "minutes");
  private static final List<String> EVERY_FIELDS = List.of("every", "sinceLast");

  private PlanRequestsFile() {}

  static Requests read(JsonField root) {
    List<Slot> slots = new ArrayList<>();
    list(root, "pinned").forEach(each -> slots.add(pinned(each)));
    list(root, "slots").forEach(each -> slots.add(new Slot.AnyOf(group(each))));
    Set<DrillKey> forbidden = new LinkedHashSet<>();
    list(root, "forbidden").forEach(each -> forbidden.add(key(each)));
    return new Requests(
        slots,
        forbidden,
        root.optional("equipment").map(PlanRequestsFile::texts),
        root.optional("yardsticks").map(PlanRequestsFile::tests).orElse(YardstickWish.NONE),
        root.optional("spare").map(PlanRequestsFile::spare).orElse(Spare.SIT_OUT),
        root.optional("ends").map(PlanRequestsFile::ends).orElse(Ends.USUAL),
        root.optional("rests").map(PlanRequestsFile::rests));
  }

  private static List<JsonField> list(JsonField root, String name) {
    return root.optional(name).map(JsonField::elements).orElse(List.of());
  }

  private static Slot pinned(JsonField field) {
    field.fields(PIN_FIELDS);
    Line line =
        field
            .optional("line")
            .map(each -> each.oneOf(List.of("straight", "cross-court")))
            .map(word -> word.equals("straight") ? Line.STRAIGHT : Line.CROSS)
            .orElse(Line.CROSS);
    int rounds =
        field.optional("rounds").map(each -> each.integer(1, Slot.MOST_ROUNDS, "2")).orElse(1);
    return new Slot.Pinned(key(field.field("drill")), line, rounds);
  }

  private static DrillKey key(JsonField field) {
    String text = field.text();
    return made(field, () -> new DrillKey(text));
  }

  private static SkillGroup group(JsonField field) {
    Map<String, SkillGroup> groups = new LinkedHashMap<>();
    for (SkillGroup group : SkillGroup.values()) {
      groups.put(group.words(), group);
    }
    return Objects.requireNonNull(groups.get(field.oneOf(List.copyOf(groups.keySet()))));
  }

  private static Set<String> texts(JsonField field) {
    Set<String> texts = new HashSet<>();
    field.elements().forEach(each -> texts.add(each.text()));
    return texts;
  }

  private static YardstickWish tests(JsonField field) {
    if (field.isList()) {
      return new YardstickWish.Named(field.elements().stream().map(PlanRequestsFile::key).toList());
    }
    if (field.isObject()) {
      field.fields(EVERY_FIELDS);
      int every = field.field("every").integer(1, 52, "4");
      int since =
          field.optional("sinceLast").map(each -> each.integer(0, 1000, "0")).orElse(every - 1);
      return new YardstickWish.Every(every, since);
    }
    String word = field.oneOf(List.of("none", "where-unsure"));
    return word.equals("none") ? YardstickWish.NONE : new YardstickWish.WhereUnsure();
  }

  private static Spare spare(JsonField field) {
    String word = field.oneOf(List.of("sit-out", "three-on-a-lane"));
    return word.equals("sit-out") ? Spare.SIT_OUT : Spare.THREE_ON_A_LANE;
  }

  private static Ends ends(JsonField field) {
    return switch (field.oneOf(List.of("usual", "by-clock", "last-lane"))) {
      case "by-clock" -> Ends.BY_CLOCK;
      case "last-lane" -> Ends.LAST_LANE;
      default -> Ends.USUAL;
    };
  }

  private static Requests.Rests rests(JsonField field) {
    field.fields(REST_FIELDS);
    double every = field.field("every").number(10, 120);
    double minutes = field.optional("minutes").map(each -> each.number(1, 20)).orElse(5.0);
    return new Requests.Rests(every, minutes);
  }

  private static <T> T made(JsonField field, Supplier<T> making) {
    try {
      return making.get();
    } catch (IllegalArgumentException refusal) {
      throw field.refused(refusal);
    }
  }
}
