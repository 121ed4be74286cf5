package rallywright.engine.score;

import java.util.Optional;
import java.util.OptionalInt;

/**
 * When a game is won.
 *
 * @param targets points that each side needs; equal but for a game with unequal targets, which is
 *     always won by one
 * @param winBy the lead needed at the target
 * @param cap where present, the number of points that wins whatever the lead
 */
public record Goal(BySide<Integer> targets, WinBy winBy, OptionalInt cap) {

  /** The largest target allowed (assumption of this project: no game is planned beyond it). */
  public static final int MAX_TARGET = 200;

  /** The largest cap allowed (assumption of this project). */
  public static final int MAX_CAP = 400;

  /** Checks ranges and that the parts fit together. */
  public Goal {
    for (Side side : Side.values()) {
      int target = targets.of(side);
      if (target < 1 || target > MAX_TARGET) {
        throw new IllegalArgumentException(
            "The target (%d) must lie from 1 to %d. Maybe 5, 11 or 15."
                .formatted(target, MAX_TARGET));
      }
    }
    if (!targets.a().equals(targets.b()) && (winBy == WinBy.TWO || cap.isPresent())) {
      throw new IllegalArgumentException(
          "Unequal targets (%d and %d) must go with win by 1 and no cap. Maybe give a head start."
              .formatted(targets.a(), targets.b()));
    }
    if (cap.isPresent() && (cap.getAsInt() < targets.a() || cap.getAsInt() > MAX_CAP)) {
      throw new IllegalArgumentException(
          "The cap (%d) must lie from the target (%d) to %d. Maybe leave the cap out."
              .formatted(cap.getAsInt(), targets.a(), MAX_CAP));
    }
  }

  /**
   * First to a number of points.
   *
   * @param target points, 1 to {@value #MAX_TARGET}
   * @return the goal, won by one
   * @throws IllegalArgumentException if the target lies outside
   */
  public static Goal firstTo(int target) {
    return new Goal(BySide.both(target), WinBy.ONE, OptionalInt.empty());
  }

  /**
   * A goal of its own for each side, won by one.
   *
   * @param a points that A needs
   * @param b points that B needs
   * @return the goal
   * @throws IllegalArgumentException if a target lies outside 1 to {@value #MAX_TARGET}
   */
  public static Goal unequal(int a, int b) {
    return new Goal(BySide.of(a, b), WinBy.ONE, OptionalInt.empty());
  }

  /**
   * A copy with another lead.
   *
   * @param lead the lead needed
   * @return the copy
   */
  public Goal withWinBy(WinBy lead) {
    return new Goal(targets, lead, cap);
  }

  /**
   * A copy with a cap.
   *
   * @param points the number of points that wins whatever the lead, at least the target
   * @return the copy
   * @throws IllegalArgumentException if the cap lies below the target or above {@value #MAX_CAP}
   */
  public Goal withCap(int points) {
    return new Goal(targets, winBy, OptionalInt.of(points));
  }

  /**
   * Whether the sides need different numbers of points.
   *
   * @return true for unequal targets
   */
  public boolean isUnequal() {
    return !targets.a().equals(targets.b());
  }

  /**
   * Who has won at a score.
   *
   * @param score any score
   * @return the winner, or empty while the game goes on or if the score cannot stand
   */
  public Optional<Side> winnerAt(Score score) {
    boolean unequal = isUnequal();
    for (Side side : Side.values()) {
      int points = score.of(side);
      boolean atTarget = points >= targets.of(side);
      boolean ahead = score.lead(side) >= winBy.points();
      boolean atCap = cap.isPresent() && points >= cap.getAsInt() && score.lead(side) > 0;
      if (atCap || (atTarget && (unequal || ahead))) {
        return Optional.of(side);
      }
    }
    return Optional.empty();
  }

  /**
   * Whether play goes on at a score.
   *
   * @param score any score
   * @return true if nobody has won and the score can stand in the middle of a game
   */
  public boolean isOpenAt(Score score) {
    if (winnerAt(score).isPresent()) {
      return false;
    }
    boolean someoneThere = score.a() >= targets.a() || score.b() >= targets.b();
    if (winBy == WinBy.ONE) {
      return !someoneThere;
    }
    return cap.isEmpty() || Math.max(score.a(), score.b()) < cap.getAsInt();
  }

  /**
   * The goal in words.
   *
   * @return for example "to 11, win by 2" or "A to 7, B to 5"
   */
  public String label() {
    if (isUnequal()) {
      return "A to %d, B to %d".formatted(targets.a(), targets.b());
    }
    String text = "to %d, win by %d".formatted(targets.a(), winBy.points());
    return cap.isPresent() ? text + ", first to " + cap.getAsInt() + " in any case" : text;
  }
}
