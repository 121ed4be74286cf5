package rallywright.engine.skill;

import java.util.Arrays;
import java.util.List;
import rallywright.engine.drill.Skill;
import rallywright.engine.drill.SkillGroup;

/**
 * The skills of the model, by number from 0, and the group that each belongs to. Skills of one
 * group tend to be good or poor together.
 *
 * @param groupOf the number of the group of each skill
 */
public record SkillGroups(List<Integer> groupOf) {
  /** Copies the list and checks that there is a skill. */
  public SkillGroups {
    groupOf = List.copyOf(groupOf);
    if (groupOf.isEmpty()) {
      throw new IllegalArgumentException("There are no skills (0). At least 1 is needed.");
    }
  }

  /**
   * The skills of the trade, numbered in the order of {@link Skill}.
   *
   * @return as many skills as there are of the trade, in their groups
   */
  public static SkillGroups ofTheTrade() {
    return new SkillGroups(
        Arrays.stream(Skill.values())
            .map(skill -> Arrays.asList(SkillGroup.values()).indexOf(skill.group()))
            .toList());
  }

  /**
   * The number of a skill of the trade.
   *
   * @param skill the skill
   * @return its place among {@link #ofTheTrade()}, from 0
   */
  public static int numberOf(Skill skill) {
    return Arrays.asList(Skill.values()).indexOf(skill);
  }

  /**
   * How many skills there are.
   *
   * @return 1 or more
   */
  public int skills() {
    return groupOf.size();
  }

  /**
   * Whether two skills belong to one group.
   *
   * @param skill number of a skill
   * @param other number of another, or the same
   * @return true if they do
   */
  public boolean together(int skill, int other) {
    return groupOf.get(skill).equals(groupOf.get(other));
  }
}
