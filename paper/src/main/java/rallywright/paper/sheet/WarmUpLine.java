package rallywright.paper.sheet;

import java.util.List;

/**
 * One warm-up.
 *
 * @param minutes how long, for example "5 min"
 * @param name its name
 * @param rule what to do
 * @param cues short cues
 */
public record WarmUpLine(String minutes, String name, String rule, List<String> cues) {

  /** Copies the list. */
  public WarmUpLine {
    cues = List.copyOf(cues);
  }
}
