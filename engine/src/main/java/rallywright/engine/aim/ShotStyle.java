package rallywright.engine.aim;

import java.util.List;
import rallywright.engine.flight.Requirement;

/** What a shot must do beside clearing the net and landing where it should. */
public enum ShotStyle {
  /** Soft: the opponent cannot attack it, in the air or off the bounce. */
  SOFT(
      "cannot be attacked: where the opponent reaches it, it is below the net, and it bounces"
          + " no higher than the net") {
    @Override
    List<Requirement> requirements(double opponentX) {
      double reach = Math.max(NEAREST_REACH_M, opponentX - Requirement.NotAttackable.ARM_M);
      return List.of(
          new Requirement.NotAttackable(reach, NEED_SECONDS),
          new Requirement.StaysBelow(BOUNCE_TEST_M));
    }
  },
  /** Hard and low. */
  HARD("is at the opponent within 0.6 s, crossing the net no more than 2 ft (60 cm) above it") {
    @Override
    List<Requirement> requirements(double opponentX) {
      double reach = Math.max(NEAREST_REACH_M, opponentX - Requirement.NotAttackable.ARM_M);
      return List.of(
          new Requirement.ArrivesWithin(reach, HARD_SECONDS), new Requirement.LowOverNet(LOW_M));
    }
  },
  /** Deep on an ordinary arc. */
  DEEP("stays below 8 ft (2.4 m)") {
    @Override
    List<Requirement> requirements(double opponentX) {
      return List.of(new Requirement.StaysBelow(ARC_M));
    }
  },
  /** Over the opponent's head. */
  OVER("passes over the opponent higher than a paddle reaches, 9 ft (2.7 m)") {
    @Override
    List<Requirement> requirements(double opponentX) {
      return List.of(
          new Requirement.PassesOver(
              opponentX + Requirement.NotAttackable.ARM_M, OVERHEAD_REACH_M));
    }
  };

  /**
   * From no higher than this a ball is dropped in the rule book's bounce test, and it comes back 30
   * to 34 in: no higher than the net in the middle. So what stays below it cannot be attacked off
   * the bounce either. 78 in; source: rule book, section on the ball (2025).
   */
  public static final double BOUNCE_TEST_M = 78 * 0.0254;

  /** Time that an opponent at the line needs; see {@link Requirement.NotAttackable#AT_THE_LINE}. */
  private static final double NEED_SECONDS = Requirement.NotAttackable.AT_THE_LINE.needSeconds();

  private static final double NEAREST_REACH_M = 0.1;

  /** A drive at about 35 mph from the baseline: assumption of this project. */
  private static final double HARD_SECONDS = 0.6;

  /** Assumption of this project. */
  private static final double LOW_M = 0.6;

  /** An ordinary arc of a deep ball: assumption of this project. */
  private static final double ARC_M = 2.4;

  /** How high a raised paddle reaches: assumption of this project. */
  private static final double OVERHEAD_REACH_M = 2.7;

  private final String words;

  ShotStyle(String words) {
    this.words = words;
  }

  /**
   * What is asked, in a coach's words.
   *
   * @return part of a sentence
   */
  public String words() {
    return words;
  }

  /** What is asked when the opponent stands so far beyond the net. */
  abstract List<Requirement> requirements(double opponentX);
}
