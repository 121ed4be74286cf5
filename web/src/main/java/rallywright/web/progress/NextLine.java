package rallywright.web.progress;

import java.util.List;

/**
 * What to practise next and why.
 *
 * @param skill the skill in words
 * @param reason one sentence
 * @param drills drills that turn on it
 */
public record NextLine(String skill, String reason, List<DrillLink> drills) {

  /**
   * A drill with its page.
   *
   * @param key the drill's key
   * @param name its name
   */
  public record DrillLink(String key, String name) {}
}
