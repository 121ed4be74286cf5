package rallywright.web.progress;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import rallywright.engine.club.Player;
import rallywright.engine.drill.Skill;
import rallywright.engine.practice.Need;
import rallywright.engine.practice.SkillWorth;
import rallywright.engine.reading.ClubReading;

/**
 * Who gains from what: players down, skills across, a block in each cell as large as the need.
 *
 * @param skills the skills across
 * @param rows the players down
 * @param together for the skills that most of the group needs, who should work on them
 */
public record GainMatrix(List<String> skills, List<Row> rows, List<Together> together) {

  /** Half the side of the largest block, in a cell of 24 × 24. */
  private static final double LARGEST = 10;

  private static final int MOST_SKILLS = 4;
  private static final int MOST_NAMES = 4;
  private static final int RANKED = 3;

  /** Copies the lists. */
  public GainMatrix {
    skills = List.copyOf(skills);
    rows = List.copyOf(rows);
    together = List.copyOf(together);
  }

  /**
   * A player.
   *
   * @param id the player's id
   * @param name the full name
   * @param firstName the first name
   * @param cells one for each skill
   */
  public record Row(String id, String name, String firstName, List<Cell> cells) {}

  /**
   * A player and a skill.
   *
   * @param from where the block begins, to the right and down
   * @param side how long each side of the block is
   * @param known whether the block is solid; outlined where too few rallies speak of it
   * @param rank the player's first, second or third need, else empty
   * @param words the cell for those who do not see it
   */
  public record Cell(String from, String side, boolean known, String rank, String words) {}

  /**
   * A skill on which several should work.
   *
   * @param skill the skill
   * @param names who
   */
  public record Together(Skill skill, String names) {

    /** The skill as a heading. */
    public String heading() {
      return SkillWords.capital(skill.words());
    }
  }

  static GainMatrix of(List<Player> players, ClubReading reading, SkillWorth worth) {
    Map<Player, Map<Skill, Double>> shares = new LinkedHashMap<>();
    List<Row> rows = new ArrayList<>();
    double largest = 0;
    Map<Player, List<Need>> needs = new LinkedHashMap<>();
    players.forEach(player -> needs.put(player, PlayerNeeds.of(player, reading, worth)));
    for (Player player : players) {
      Map<Skill, Double> own = shares(needs.getOrDefault(player, List.of()));
      shares.put(player, own);
      for (double share : own.values()) {
        largest = Math.max(largest, share);
      }
    }
    for (Player player : players) {
      rows.add(row(player, needs.getOrDefault(player, List.of()), largest));
    }
    return new GainMatrix(
        Arrays.stream(Skill.values()).map(Skill::words).toList(), rows, together(shares));
  }

  private static Map<Skill, Double> shares(List<Need> needs) {
    double all = needs.stream().mapToDouble(Need::value).sum();
    Map<Skill, Double> shares = new EnumMap<>(Skill.class);
    needs.forEach(need -> shares.put(need.skill(), all > 0 ? need.value() / all : 0));
    return shares;
  }

  private static Row row(Player player, List<Need> needs, double largest) {
    double all = needs.stream().mapToDouble(Need::value).sum();
    List<Cell> cells = new ArrayList<>();
    for (Skill skill : Skill.values()) {
      for (int place = 0; place < needs.size(); place++) {
        if (needs.get(place).skill() == skill) {
          double size = all > 0 ? needs.get(place).value() / all / largest : 0;
          cells.add(cell(needs.get(place), place, size));
        }
      }
    }
    return new Row(player.id().value(), player.name(), player.firstName(), cells);
  }

  /** The area of the block, not its side, follows the need. */
  private static Cell cell(Need need, int place, double size) {
    double half = Math.max(1, LARGEST * Math.sqrt(size));
    boolean known = need.cause() != Need.Cause.TOO_EARLY_TO_TELL;
    String words =
        (place < RANKED ? "need " + (place + 1) : size > 0.4 ? "some" : "little")
            + (known ? "" : ", too early to tell");
    return new Cell(
        number(12 - half),
        number(2 * half),
        known,
        place < RANKED ? String.valueOf(place + 1) : "",
        words);
  }

  private static List<Together> together(Map<Player, Map<Skill, Double>> shares) {
    List<Together> all = new ArrayList<>();
    Map<Skill, Double> sums = new EnumMap<>(Skill.class);
    shares
        .values()
        .forEach(own -> own.forEach((skill, share) -> sums.merge(skill, share, Double::sum)));
    sums.entrySet().stream()
        .sorted(Map.Entry.<Skill, Double>comparingByValue().reversed())
        .limit(MOST_SKILLS)
        .forEach(each -> all.add(new Together(each.getKey(), names(each.getKey(), shares))));
    return all;
  }

  private static String names(Skill skill, Map<Player, Map<Skill, Double>> shares) {
    return String.join(
        ", ",
        shares.entrySet().stream()
            .sorted(Comparator.comparingDouble(each -> -each.getValue().getOrDefault(skill, 0.0)))
            .limit(MOST_NAMES)
            .map(each -> each.getKey().firstName())
            .toList());
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }
}
