package rallywright.web.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import rallywright.catalogue.Catalogue;
import rallywright.engine.club.PlayerId;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.DrillKey;
import rallywright.engine.drill.Skill;
import rallywright.engine.plan.Line;
import rallywright.engine.plan.Requests;
import rallywright.engine.plan.Slot;
import rallywright.engine.plan.YardstickWish;
import rallywright.web.page.AllowedNumber;
import rallywright.web.page.Form;
import rallywright.web.page.FormReader;

/**
 * What a coach asks for beyond time, courts and people.
 *
 * @param pinned drills that must be in the plan
 * @param forbidden drills that must not
 * @param focus skills that stand in front
 * @param tests whether a test is wished for
 * @param spare what those do for whom there is no place
 * @param ends how blocks of games end
 * @param restEvery minutes from one rest to the next, empty for the usual
 * @param fillsIn who plays only where the number is odd
 * @param missing equipment that is not at hand, as the drills name it
 * @param single who comes late, leaves early, or counts more or less
 */
record MoreWishes(
    List<DrillKey> pinned,
    List<DrillKey> forbidden,
    List<Skill> focus,
    Tests tests,
    Requests.Spare spare,
    Requests.Ends ends,
    OptionalInt restEvery,
    Optional<PlayerId> fillsIn,
    List<String> missing,
    PlayerWishes single) {

  /** How long a rest is that the coach asks for, in minutes. */
  private static final double REST_MINUTES = 5;

  private static final AllowedNumber REST =
      new AllowedNumber("The minutes between rests", 10, 120, "Maybe 20.");

  /** Whether a test is wished for. */
  enum Tests {
    NONE,
    WHERE_UNSURE,
    ONE
  }

  static final MoreWishes NONE =
      new MoreWishes(
          List.of(),
          List.of(),
          List.of(),
          Tests.NONE,
          Requests.Spare.SIT_OUT,
          Requests.Ends.USUAL,
          OptionalInt.empty(),
          Optional.empty(),
          List.of(),
          PlayerWishes.NONE);

  /** What the form says, single players aside. */
  static MoreWishes read(FormReader in) {
    return new MoreWishes(
        keys(in.all("pinned")),
        keys(in.all("forbidden")),
        in.choices("focus", "The skills in front", Skill.class),
        in.choice("tests", "The test", Tests.NONE),
        in.choice("spare", "What those without a place do", Requests.Spare.SIT_OUT),
        in.choice("ends", "The end of blocks", Requests.Ends.USUAL),
        in.whole("restEvery", REST),
        Optional.of(in.raw("fillsIn")).filter(each -> !each.isBlank()).map(PlayerId::new),
        WishChoices.equipment().keySet().stream().filter(in.all("missing")::contains).toList(),
        PlayerWishes.NONE);
  }

  /** The same with other wishes for single players. */
  MoreWishes with(PlayerWishes other) {
    return new MoreWishes(
        pinned, forbidden, focus, tests, spare, ends, restEvery, fillsIn, missing, other);
  }

  private static List<DrillKey> keys(List<String> texts) {
    List<DrillKey> keys = new ArrayList<>();
    for (Drill drill : Catalogue.shipped().drills()) {
      if (texts.contains(drill.key().value())) {
        keys.add(drill.key());
      }
    }
    return keys;
  }

  /** As the planner reads it. */
  Requests requests() {
    Requests requests = Requests.NONE.withSpare(spare).withEnds(ends);
    for (DrillKey key : pinned) {
      requests = requests.with(new Slot.Pinned(key, lineOf(key), 1));
    }
    for (DrillKey key : forbidden) {
      requests = requests.without(key);
    }
    if (!missing.isEmpty()) {
      Set<String> atHand = new LinkedHashSet<>(WishChoices.equipment().keySet());
      missing.forEach(atHand::remove);
      requests = requests.withEquipment(atHand);
    }
    if (restEvery.isPresent()) {
      requests = requests.withRests(new Requests.Rests(restEvery.getAsInt(), REST_MINUTES));
    }
    return requests.withYardsticks(
        switch (tests) {
          case NONE -> YardstickWish.NONE;
          case WHERE_UNSURE -> new YardstickWish.WhereUnsure();
          case ONE -> new YardstickWish.Every(1, 0);
        });
  }

  private static Line lineOf(DrillKey key) {
    boolean cross =
        Catalogue.shipped()
            .drill(key)
            .map(drill -> !Line.CROSS.lanesOf(drill).isEmpty())
            .orElse(true);
    return cross ? Line.CROSS : Line.STRAIGHT;
  }

  /** As the form shows it. */
  Form shownIn(Form form) {
    return single
        .shownIn(form)
        .with("pinned", values(pinned))
        .with("forbidden", values(forbidden))
        .with("focus", focus.stream().map(Skill::name).toArray(String[]::new))
        .with("tests", tests.name())
        .with("spare", spare.name())
        .with("ends", ends.name())
        .with("restEvery", restEvery.isPresent() ? String.valueOf(restEvery.getAsInt()) : "")
        .with("fillsIn", fillsIn.map(PlayerId::value).orElse(""))
        .with("missing", missing.toArray(String[]::new));
  }

  private static String[] values(List<DrillKey> keys) {
    return keys.stream().map(DrillKey::value).toArray(String[]::new);
  }

  /** As it is kept with the session. */
  String text() {
    return String.join(
        "\n",
        "pinned=" + String.join(",", values(pinned)),
        "forbidden=" + String.join(",", values(forbidden)),
        "focus=" + focus.stream().map(Skill::name).collect(Collectors.joining(",")),
        "tests=" + tests,
        "spare=" + spare,
        "ends=" + ends,
        "rest=" + (restEvery.isPresent() ? restEvery.getAsInt() : ""),
        "fillsIn=" + fillsIn.map(PlayerId::value).orElse(""),
        "missing=" + String.join("|", missing),
        "single=" + single.text());
  }

  static MoreWishes of(String text) {
    Map<String, String> values = new HashMap<>();
    for (String line : text.lines().toList()) {
      int sign = line.indexOf('=');
      values.put(line.substring(0, sign), line.substring(sign + 1));
    }
    String rest = values.getOrDefault("rest", "");
    return new MoreWishes(
        keys(parts(values, "pinned")),
        keys(parts(values, "forbidden")),
        parts(values, "focus").stream().map(Skill::valueOf).toList(),
        Tests.valueOf(values.getOrDefault("tests", "NONE")),
        Requests.Spare.valueOf(values.getOrDefault("spare", "SIT_OUT")),
        Requests.Ends.valueOf(values.getOrDefault("ends", "USUAL")),
        rest.isEmpty() ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(rest)),
        Optional.of(values.getOrDefault("fillsIn", ""))
            .filter(each -> !each.isEmpty())
            .map(PlayerId::new),
        Arrays.stream(values.getOrDefault("missing", "").split("\\|"))
            .filter(each -> !each.isEmpty())
            .toList(),
        PlayerWishes.of(single(values)));
  }

  /** Wishes for single players; those kept before there were times stand under two other names. */
  private static List<String> single(Map<String, String> values) {
    List<String> single = new ArrayList<>(parts(values, "single"));
    parts(values, "twice").forEach(id -> single.add(id + "@@@" + PlayerWish.Counts.TWICE));
    parts(values, "uncounted").forEach(id -> single.add(id + "@@@" + PlayerWish.Counts.NOT_AT_ALL));
    return single;
  }

  private static List<String> parts(Map<String, String> values, String name) {
    return Arrays.stream(values.getOrDefault(name, "").split(","))
        .filter(each -> !each.isEmpty())
        .toList();
  }
}
