package rallywright.web.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rallywright.web.page.Form;

/**
 * A row of the form for what is wished for one player.
 *
 * @param number which row, from 1
 * @param who the name, or an empty text
 * @param comes when they come, or an empty text
 * @param leaves when they leave, or an empty text
 * @param counts how much their practice counts
 */
public record PlayerRow(int number, String who, String comes, String leaves, String counts) {

  private static final int SPARE_ROWS = 3;

  /** The rows that are filled in, and a few to fill in. */
  public static List<PlayerRow> of(Form form, Map<String, String> players) {
    List<String> names = form.values("oneWho");
    List<PlayerRow> rows = new ArrayList<>();
    for (int row = 0; row < names.size(); row++) {
      String comes = at(form, "oneComes", row);
      String leaves = at(form, "oneLeaves", row);
      if (!(names.get(row) + comes + leaves).isBlank()) {
        String name = players.getOrDefault(names.get(row), names.get(row));
        rows.add(new PlayerRow(rows.size() + 1, name, comes, leaves, at(form, "oneCounts", row)));
      }
    }
    for (int spare = 0; spare < SPARE_ROWS; spare++) {
      rows.add(new PlayerRow(rows.size() + 1, "", "", "", PlayerWish.Counts.USUAL.name()));
    }
    return rows;
  }

  private static String at(Form form, String field, int row) {
    List<String> texts = form.values(field);
    return row < texts.size() ? texts.get(row) : "";
  }

  /** Whether somebody is named. */
  public static boolean anyIn(Form form) {
    return form.values("oneWho").stream().anyMatch(each -> !each.isBlank())
        || !form.problem("oneWho").isEmpty();
  }

  /** How much a player's practice can count, in words. */
  public static Map<String, String> counting() {
    Map<String, String> words = new LinkedHashMap<>();
    for (PlayerWish.Counts each : PlayerWish.Counts.values()) {
      words.put(each.name(), each.words());
    }
    return words;
  }
}
