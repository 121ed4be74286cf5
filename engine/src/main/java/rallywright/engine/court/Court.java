package rallywright.engine.court;

import rallywright.engine.quantity.Length;

/**
 * The measures of a court.
 *
 * <p>Rule numbers are those of the 2025 rule book of USA Pickleball; the 2026 edition was
 * renumbered. Perimeter and non-volley lines belong to the area they bound: measures run to their
 * outer edges (rule 2.A.2).
 */
public final class Court {

  /** Side line to side line, 20 ft. Source: rule 2.A.1 (2025). */
  public static final Length WIDTH = Length.feet(20);

  /** Baseline to baseline, 44 ft. Source: rule 2.A.1 (2025). */
  public static final Length LENGTH = Length.feet(44);

  /** Net to the outer edge of the non-volley line, 7 ft. Source: rule 2.B.3 (2025). */
  public static final Length KITCHEN_DEPTH = Length.feet(7);

  /** Width of every line, 2 in. Source: rule 2.A.2 (2025). */
  public static final Length LINE_WIDTH = Length.inches(2);

  /** The smallest playing surface, across: 30 ft. Source: rule 2.A.3 (2025). */
  public static final Length SURFACE_WIDTH = Length.feet(30);

  /** The smallest playing surface, along: 60 ft. Source: rule 2.A.3 (2025). */
  public static final Length SURFACE_LENGTH = Length.feet(60);

  /** Post to post, inside to inside: 22 ft. Source: net section of the rules, edition not named. */
  public static final Length BETWEEN_POSTS = Length.feet(22);

  /** Net height in the middle, 34 in. Source: net section of the rules, edition not named. */
  public static final Length NET_AT_CENTRE = Length.inches(34);

  /** Net height at the side lines, 36 in. Source: net section of the rules, edition not named. */
  public static final Length NET_AT_SIDELINE = Length.inches(36);

  /** Centre line to side line. */
  public static final Length HALF_WIDTH = WIDTH.times(0.5);

  /** Net to baseline. */
  public static final Length HALF_LENGTH = LENGTH.times(0.5);

  private Court() {}
}
