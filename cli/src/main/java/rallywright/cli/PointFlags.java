package rallywright.cli;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import rallywright.cli.PointQuestion.Named;
import rallywright.engine.drill.Skill;
import rallywright.engine.point.FirstStages;
import rallywright.engine.point.SkillProfile;
import rallywright.engine.point.SkillWorths.Play;
import rallywright.engine.score.BySide;

/** The options of {@code point} as typed, turned into a question or refused in one sentence. */
final class PointFlags {

  private static final String NUMBER = "[-+]?(\\d+\\.?\\d*|\\.\\d+)";

  private PointFlags() {}

  static PointQuestion question(
      @Nullable String play, @Nullable String skills, @Nullable String against) {
    Play game = play(play == null ? "doubles" : play);
    double level = against == null ? 0 : number("--against", against, against);
    SkillProfile player = skills == null ? SkillProfile.flat(0) : skills(skills);
    Named one = new Named("player", player);
    Named other = new Named("other", SkillProfile.flat(level));
    boolean pairs = game == Play.DOUBLES;
    List<Named> a = pairs ? List.of(one, new Named("partner", other.skills())) : List.of(one);
    List<Named> b = pairs ? List.of(other, new Named("another", other.skills())) : List.of(other);
    return new PointQuestion(
        game,
        pairs ? FirstStages.DOUBLES : FirstStages.HALF_COURT,
        BySide.of(a, b),
        List.of(),
        List.of());
  }

  private static Play play(String typed) {
    return Arrays.stream(Play.values())
        .filter(play -> PointQuestion.nameOf(play).equals(typed))
        .findFirst()
        .orElseThrow(
            () ->
                new WrongInput(
                    "The game --play (%s) must be doubles or half-court. Maybe doubles."
                        .formatted(typed)));
  }

  private static SkillProfile skills(String typed) {
    SkillProfile profile = SkillProfile.flat(0);
    for (String part : typed.split(",", -1)) {
      String[] pair = part.strip().split("=", -1);
      if (pair.length != 2) {
        throw new WrongInput(
            "The skills --skills (%s) must be name=number, several with commas. Maybe drop=-0.4."
                .formatted(typed));
      }
      Skill skill = skill(pair[0].strip());
      profile = profile.with(skill, number("--skills", typed, pair[1].strip()));
    }
    return profile;
  }

  private static Skill skill(String name) {
    return Arrays.stream(Skill.values())
        .filter(skill -> PointQuestion.nameOf(skill).equals(name))
        .findFirst()
        .orElseThrow(
            () ->
                new WrongInput(
                    "The skill (%s) in --skills must be one of %s. Maybe drop."
                        .formatted(
                            name,
                            Arrays.stream(Skill.values())
                                .map(PointQuestion::nameOf)
                                .collect(Collectors.joining(", ")))));
  }

  private static double number(String option, String typed, String part) {
    double value = part.matches(NUMBER) ? Double.parseDouble(part) : Double.NaN;
    if (!(Math.abs(value) <= SkillProfile.LARGEST_LOGIT)) {
      throw new WrongInput(
          "The number in %s (%s) must lie from -20 to 20 in logits. Maybe 0.4, with a point."
              .formatted(option, typed));
    }
    return value;
  }
}
