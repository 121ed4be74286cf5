package rallywright.paper.sheet;

import java.util.List;

/**
 * A sheet set in type: which block stands on which half of which page.
 *
 * @param density how closely it is set
 * @param leaves its pages
 */
public record Setting(Density density, List<Leaf> leaves) {

  /** Copies the list. */
  public Setting {
    leaves = List.copyOf(leaves);
  }
}
