package rallywright.cli;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import rallywright.catalogue.Catalogue;
import rallywright.engine.club.Level;
import rallywright.engine.club.Limit;
import rallywright.engine.club.PlayerId;
import rallywright.engine.drill.Skill;
import rallywright.engine.plan.Attendee;
import rallywright.engine.plan.Coverage;
import rallywright.engine.plan.PlanProblem;
import rallywright.engine.plan.SessionPlan;
import rallywright.engine.plan.SessionWish;
import rallywright.engine.plan.Stay;
import rallywright.engine.plan.WarmUps;
import rallywright.engine.practice.Needs;
import rallywright.engine.practice.PlayerStanding;
import rallywright.engine.practice.SkillStanding;

/** A wish for a session as a JSON file: minutes, courts, players and what they are known for. */
final class PlanFile {

  private static final List<String> FIELDS =
      List.of(
          "minutes",
          "courts",
          "players",
          "coverage",
          "confidence",
          "maxHardMinutes",
          "warmUps",
          "pinned",
          "slots",
          "forbidden",
          "equipment",
          "yardsticks",
          "spare",
          "ends",
          "rests",
          "seed",
          "about");

  private static final List<String> PLAYER_FIELDS =
      List.of("name", "level", "skills", "limits", "weight", "fillsIn", "from", "until");

  private static final String FULL = "full";
  private static final String NEEDS = "needs";

  /** Farther than this from 0 no skill lies: 998 rallies in 1000 against a level of 3.5. */
  private static final double LARGEST_LOGIT = 6;

  /** How sure a mean is that the file gives, in logits. Assumption of this project. */
  private static final double GIVEN_SD = 0.3;

  private PlanFile() {}

  static PlanProblem read(JsonField root) {
    root.fields(FIELDS);
    int minutes =
        root.field("minutes")
            .integer(SessionPlan.SHORTEST_MINUTES, SessionPlan.LONGEST_MINUTES, "90");
    int courts = root.field("courts").integer(1, SessionWish.MOST_COURTS, "1");
    Coverage coverage = root.optional("coverage").map(PlanFile::coverage).orElse(Coverage.FULL);
    double confidence =
        root.optional("confidence")
            .map(each -> each.number(SessionWish.LOWEST_CONFIDENCE, SessionWish.HIGHEST_CONFIDENCE))
            .orElse(SessionWish.USUAL_CONFIDENCE);
    double hard =
        root.optional("maxHardMinutes")
            .map(
                each -> each.number(SessionWish.FEWEST_HARD_MINUTES, SessionWish.MOST_HARD_MINUTES))
            .orElse(SessionWish.USUAL_HARD_MINUTES);
    SessionWish wish =
        SessionWish.of(minutes, courts)
            .withCoverage(coverage)
            .withConfidence(confidence)
            .withMaxHardMinutes(hard);
    int seed = root.optional("seed").map(each -> each.integer(0, Integer.MAX_VALUE, "1")).orElse(1);
    WarmUps warmUps = root.optional("warmUps").map(PlanFile::warmUps).orElse(WarmUps.FIRST);
    SessionWish whole =
        wish.withSeed(seed).withWarmUps(warmUps).withRequests(PlanRequestsFile.read(root));
    Catalogue catalogue = Catalogue.shipped();
    return PlanProblem.of(players(root), catalogue.drills(), whole)
        .withYardsticks(catalogue.yardsticks());
  }

  private static WarmUps warmUps(JsonField field) {
    String word = field.oneOf(List.of("first", "left-out"));
    return word.equals("first") ? WarmUps.FIRST : WarmUps.LEFT_OUT_BY_CHOICE;
  }

  private static Coverage coverage(JsonField field) {
    String word = field.oneOf(List.of(FULL, NEEDS));
    return word.equals(FULL) ? Coverage.FULL : Coverage.NEEDS;
  }

  private static List<Attendee> players(JsonField root) {
    JsonField field = root.field("players");
    List<JsonField> entries = field.elements();
    if (entries.isEmpty() || entries.size() > SessionWish.MOST_PLAYERS) {
      throw field.wrong(
          "a list of 1 to %d players, not %d".formatted(SessionWish.MOST_PLAYERS, entries.size()),
          entries.isEmpty() ? "somebody was left out" : "plan two groups");
    }
    Set<String> names = new HashSet<>();
    List<Attendee> players = new ArrayList<>();
    for (JsonField entry : entries) {
      entry.fields(PLAYER_FIELDS);
      JsonField name = entry.field("name");
      if (name.text().isBlank() || !names.add(name.text().strip())) {
        throw name.wrong("a name that no other player here has", "add the family name");
      }
      PlayerStanding standing = standing(name.text().strip(), entry);
      Attendee player = new Attendee(new PlayerId(standing.name()), standing, limits(entry));
      double weight =
          entry.optional("weight").map(each -> each.number(0, Attendee.MOST_WEIGHT)).orElse(1.0);
      boolean fillsIn = entry.optional("fillsIn").map(JsonField::flag).orElse(false);
      players.add((fillsIn ? player.fillingIn() : player.withWeight(weight)).during(stay(entry)));
    }
    return players;
  }

  private static Stay stay(JsonField entry) {
    int from =
        entry.optional("from").map(each -> each.integer(0, Stay.TO_THE_END - 1, "20")).orElse(0);
    Optional<JsonField> until = entry.optional("until");
    int leaves = until.map(each -> each.integer(1, Stay.TO_THE_END, "60")).orElse(Stay.TO_THE_END);
    try {
      return new Stay(from, leaves);
    } catch (IllegalArgumentException refusal) {
      throw until.orElse(entry).refused(refusal);
    }
  }

  private static Set<Limit> limits(JsonField entry) {
    Map<String, Limit> spellings = new LinkedHashMap<>();
    for (Limit limit : Limit.values()) {
      spellings.put(limit.words(), limit);
    }
    Set<Limit> limits = new HashSet<>();
    entry
        .optional("limits")
        .map(JsonField::elements)
        .orElse(List.of())
        .forEach(
            each ->
                limits.add(
                    Objects.requireNonNull(
                        spellings.get(each.oneOf(List.copyOf(spellings.keySet()))))));
    return limits;
  }

  /**
   * A mean that the file gives counts as known: it rests on enough rallies. Skills that are not
   * named stand where the level leads one to expect.
   */
  private static PlayerStanding standing(String name, JsonField entry) {
    PlayerStanding standing =
        PlayerStanding.newcomer(name, entry.optional("level").map(PlanFile::level));
    Optional<JsonField> skills = entry.optional("skills");
    if (skills.isPresent()) {
      Map<String, Skill> spellings = spellings();
      List<String> allowed = List.copyOf(spellings.keySet());
      for (Map.Entry<String, JsonField> each : skills.get().fields(allowed).entrySet()) {
        Skill skill = Objects.requireNonNull(spellings.get(each.getKey()));
        double mean = each.getValue().number(-LARGEST_LOGIT, LARGEST_LOGIT);
        standing =
            standing.with(
                new SkillStanding(skill, mean, GIVEN_SD, Needs.ENOUGH_RALLIES, List.of()));
      }
    }
    return standing;
  }

  /** The skills by their words, and with hyphens as in drill files. */
  private static Map<String, Skill> spellings() {
    Map<String, Skill> spellings = new LinkedHashMap<>();
    for (Skill skill : Skill.values()) {
      spellings.put(skill.words(), skill);
      spellings.put(skill.words().replace(' ', '-'), skill);
    }
    return spellings;
  }

  private static Level level(JsonField field) {
    double value = field.number(-Double.MAX_VALUE, Double.MAX_VALUE);
    try {
      return new Level(value);
    } catch (IllegalArgumentException refusal) {
      throw field.refused(refusal);
    }
  }
}
