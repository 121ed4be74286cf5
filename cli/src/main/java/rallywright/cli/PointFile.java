package rallywright.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import rallywright.cli.PointQuestion.Named;
import rallywright.cli.PointQuestion.Noted;
import rallywright.engine.drill.Skill;
import rallywright.engine.point.FirstStages;
import rallywright.engine.point.PointStages;
import rallywright.engine.point.SkillProfile;
import rallywright.engine.point.SkillWorths.Play;
import rallywright.engine.point.StageContest;
import rallywright.engine.score.BySide;
import rallywright.engine.score.Ending.Stage;
import rallywright.engine.score.Side;

/** Players, stages and noted endings as a JSON file. */
final class PointFile {

  private static final List<Skill> EVERY_SKILL = List.of(Skill.values());
  private static final List<Stage> EVERY_STAGE = List.of(Stage.values());
  private static final List<String> SKILLS =
      Arrays.stream(Skill.values()).map(PointQuestion::nameOf).toList();
  private static final List<String> STAGES =
      Arrays.stream(Stage.values()).map(PointQuestion::nameOf).toList();
  private static final List<String> SIDES = List.of("a", "b");
  private static final List<String> PLAYS = List.of("doubles", "half-court");
  private static final List<String> PARTS =
      List.of("play", "a", "b", "stages", "endings", "clubEndings");

  private PointFile() {}

  static PointQuestion read(JsonField root) {
    root.fields(PARTS);
    Play play =
        root.optional("play").map(field -> field.oneOf(PLAYS)).orElse("doubles").equals("doubles")
            ? Play.DOUBLES
            : Play.HALF_COURT;
    List<Named> a = players(root.field("a"), play);
    List<Named> b = players(root.field("b"), play);
    return new PointQuestion(
        play,
        stages(root, play == Play.DOUBLES ? FirstStages.DOUBLES : FirstStages.HALF_COURT),
        BySide.of(a, b),
        endings(root, "endings"),
        endings(root, "clubEndings"));
  }

  private static List<Named> players(JsonField field, Play play) {
    List<Named> players = new ArrayList<>();
    for (JsonField player : field.elements(play == Play.DOUBLES ? 2 : 1)) {
      player.fields(List.of("name", "skills"));
      SkillProfile profile = SkillProfile.flat(0);
      Map<String, JsonField> skills =
          player.optional("skills").map(each -> each.fields(SKILLS)).orElse(Map.of());
      for (Map.Entry<String, JsonField> skill : skills.entrySet()) {
        double most = SkillProfile.LARGEST_LOGIT;
        profile =
            profile.with(
                EVERY_SKILL.get(SKILLS.indexOf(skill.getKey())),
                skill.getValue().number(-most, most));
      }
      players.add(new Named(player.field("name").text(), profile));
    }
    return players;
  }

  private static PointStages stages(JsonField root, PointStages first) {
    PointStages stages = first;
    Map<String, JsonField> given =
        root.optional("stages").map(each -> each.fields(STAGES)).orElse(Map.of());
    for (Map.Entry<String, JsonField> each : given.entrySet()) {
      Stage stage = EVERY_STAGE.get(STAGES.indexOf(each.getKey()));
      stages = stages.with(stage, contest(each.getValue(), first.of(stage)));
    }
    return stages;
  }

  private static StageContest contest(JsonField field, StageContest first) {
    Map<String, JsonField> fields = field.fields(List.of("serverWins", "receiverWins", "again"));
    double again =
        fields.containsKey("again")
            ? Objects.requireNonNull(fields.get("again")).number(0, 1)
            : first.again();
    if (first.again() == 1 && again != 1) {
      throw field.wrong(
          "a stage in which a rally stays until it ends (\"again\": 1)", "leave again out");
    }
    try {
      return StageContest.betweenEquals(
          field.field("serverWins").number(0, 1),
          field.field("receiverWins").number(0, 1),
          again,
          first.server(),
          first.receiver());
    } catch (IllegalArgumentException refusal) {
      throw field.refused(refusal);
    }
  }

  private static List<Noted> endings(JsonField root, String name) {
    List<Noted> endings = new ArrayList<>();
    for (JsonField ending : root.list(name)) {
      ending.fields(List.of("server", "stage", "winner"));
      Stage stage = EVERY_STAGE.get(STAGES.indexOf(ending.field("stage").oneOf(STAGES)));
      endings.add(new Noted(side(ending, "server"), stage, side(ending, "winner")));
    }
    return endings;
  }

  private static Side side(JsonField ending, String name) {
    return ending.field(name).oneOf(SIDES).equals("a") ? Side.A : Side.B;
  }
}
