package rallywright.web.progress;

import jakarta.servlet.http.HttpServletRequest;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import rallywright.engine.practice.PracticeMinutes;
import rallywright.engine.skill.ClubTuning;
import rallywright.engine.skill.RallyCounts;
import rallywright.engine.skill.SkillPrior;
import rallywright.web.page.PageFrame;
import rallywright.web.page.PageFrames;

/** How every number is found, with the values that the model works with. */
@Controller
final class MethodPages {

  private static final String ASSUMED = "An assumption of this project, no evidence.";

  private static final String LEVEL = "How far players of one level differ in all skills together";
  private static final String GROUP = "How far a group of skills departs from its player";
  private static final String SINGLE = "How far a single skill departs from its group";
  private static final String WEEK = "How far a skill wanders in one week";
  private static final String STEP = "What half a step of level is worth";
  private static final String EFFECTS =
      "How far a role's advantage, or a yardstick's difficulty, may lie from what is assumed";
  private static final String GAINS = "How far drills may differ in what a minute brings";

  private final ClubReadings readings;
  private final PageFrames frames;

  MethodPages(ClubReadings readings, PageFrames frames) {
    this.readings = readings;
    this.frames = frames;
  }

  @GetMapping("/progress/method")
  String method(HttpServletRequest request, Model model) {
    model.addAttribute(
        "frame", frames.frame("How the numbers are found", PageFrame.Part.PROGRESS, request));
    model.addAttribute("values", values());
    return "progress/method";
  }

  /** The present values. */
  List<ModelValue> values() {
    ClubTuning.Tuned tuned = readings.now().tuning();
    String source = source(tuned);
    SkillPrior prior = tuned.values().prior();
    SkillPrior usual = SkillPrior.DEFAULT;
    List<ModelValue> values = new ArrayList<>();
    values.add(step(LEVEL, prior.levelSd(), usual.levelSd(), source));
    values.add(step(GROUP, prior.groupSd(), usual.groupSd(), source));
    values.add(step(SINGLE, prior.skillSd(), usual.skillSd(), source));
    values.add(step(WEEK, prior.weeklySd(), usual.weeklySd(), source));
    values.add(step(STEP, prior.levelStep(), usual.levelStep(), source));
    values.add(scale(EFFECTS, tuned.values().effectScale(), source));
    values.add(scale(GAINS, tuned.values().gainScale(), source));
    values.addAll(fixed());
    return values;
  }

  private static String source(ClubTuning.Tuned tuned) {
    return switch (tuned.basis()) {
      case OWN_SCORES ->
          String.format(
              Locale.ROOT,
              "Learned from this club's own %.0f rallies, held near the usual value.",
              tuned.rallies());
      case USUAL_VALUES ->
          String.format(
              Locale.ROOT,
              "The usual value: this club has %.0f rallies so far, and its own scores are asked"
                  + " from %d on.",
              tuned.rallies(),
              ClubTuning.ENOUGH_RALLIES);
    };
  }

  private static List<ModelValue> fixed() {
    return List.of(
        new ModelValue(
            "Rallies from which more is said than \"too early to tell\"",
            String.format(Locale.ROOT, "%.0f rallies", RallyCounts.ENOUGH),
            ASSUMED),
        new ModelValue(
            "Minutes after which one drill has brought 63 in 100 of what it can in a session",
            String.format(Locale.ROOT, "%.0f min", PracticeMinutes.SATURATION_MINUTES),
            ASSUMED),
        new ModelValue(
            "After how many weeks half of a practice has faded",
            String.format(Locale.ROOT, "%.0f weeks", PracticeMinutes.HALF_LIFE_WEEKS),
            ASSUMED));
  }

  /** A step in log odds, told as what it makes of an even rally. */
  private static ModelValue step(String words, double logits, double usual, String source) {
    return new ModelValue(
        words,
        String.format(Locale.ROOT, "%.0f of 100 (usual: %.0f)", hundred(logits), hundred(usual)),
        source);
  }

  private static double hundred(double logits) {
    return 100 / (1 + Math.exp(-logits));
  }

  private static ModelValue scale(String words, double times, String source) {
    return new ModelValue(words, String.format(Locale.ROOT, "%.2f times the usual", times), source);
  }
}
