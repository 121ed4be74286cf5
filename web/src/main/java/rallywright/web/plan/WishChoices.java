package rallywright.web.plan;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import rallywright.catalogue.Catalogue;
import rallywright.engine.drill.Drill;
import rallywright.engine.drill.Skill;
import rallywright.engine.plan.DrillLine;
import rallywright.engine.plan.Requests;
import rallywright.web.page.Form;

/** What can be chosen among the wishes beyond the usual, in words. */
public final class WishChoices {

  private WishChoices() {}

  /** Whether a form holds any such wish. */
  public static boolean anyIn(Form form) {
    boolean usual =
        List.of("", MoreWishes.Tests.NONE.name()).contains(form.value("tests"))
            && List.of("", Requests.Spare.SIT_OUT.name()).contains(form.value("spare"))
            && List.of("", Requests.Ends.USUAL.name()).contains(form.value("ends"));
    boolean nothing =
        List.of("pinned", "forbidden", "focus", "restEvery", "fillsIn", "missing").stream()
            .allMatch(name -> form.value(name).isEmpty());
    return !usual || !nothing;
  }

  /** The drills that can be planned, by name. */
  public static Map<String, String> drills() {
    Map<String, String> names = new LinkedHashMap<>();
    for (Drill drill : Catalogue.shipped().drills()) {
      if (DrillLine.isPlayedOnCourt(drill)) {
        names.put(drill.key().value(), drill.name());
      }
    }
    return names;
  }

  /** What the drills that can be planned ask for, by its name. */
  public static Map<String, String> equipment() {
    Map<String, String> names = new TreeMap<>();
    for (Drill drill : Catalogue.shipped().drills()) {
      if (DrillLine.isPlayedOnCourt(drill)) {
        drill.advice().equipment().forEach(each -> names.put(each, each));
      }
    }
    return names;
  }

  /** The skills. */
  public static Map<String, String> skills() {
    Map<String, String> names = new LinkedHashMap<>();
    for (Skill skill : Skill.values()) {
      names.put(skill.name(), skill.words());
    }
    return names;
  }

  /** Whether a test is wished for. */
  public static Map<String, String> tests() {
    Map<String, String> words = new LinkedHashMap<>();
    words.put(MoreWishes.Tests.NONE.name(), "no test");
    words.put(MoreWishes.Tests.WHERE_UNSURE.name(), "one, if little is known of a skill");
    words.put(MoreWishes.Tests.ONE.name(), "one, whatever is known");
    return words;
  }

  /** What those do for whom there is no place. */
  public static Map<String, String> spare() {
    Map<String, String> words = new LinkedHashMap<>();
    words.put(Requests.Spare.SIT_OUT.name(), "sits out a round, in turn");
    words.put(Requests.Spare.THREE_ON_A_LANE.name(), "shares a lane: three come in game by game");
    return words;
  }

  /** How blocks end. */
  public static Map<String, String> ends() {
    Map<String, String> words = new LinkedHashMap<>();
    words.put(Requests.Ends.USUAL.name(), "as usual: a horn from three lanes up");
    words.put(Requests.Ends.BY_CLOCK.name(), "always by a horn");
    words.put(Requests.Ends.LAST_LANE.name(), "always when the last lane is done");
    return words;
  }

  /** Players, and nobody. */
  public static Map<String, String> withNobody(Map<String, String> players) {
    Map<String, String> names = new LinkedHashMap<>();
    names.put("", "nobody");
    names.putAll(players);
    return names;
  }
}
