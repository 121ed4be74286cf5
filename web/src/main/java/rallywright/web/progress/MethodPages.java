package rallywright.web.progress;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import java.util.Locale;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import rallywright.engine.practice.PracticeMinutes;
import rallywright.engine.skill.RallyCounts;
import rallywright.engine.skill.SkillPrior;
import rallywright.web.page.PageFrame;
import rallywright.web.page.PageFrames;

/** How every number is found, with the values that the model works with. */
@Controller
final class MethodPages {

  private static final String ASSUMED = "An assumption of this project to start with, no evidence.";

  private final PageFrames frames;

  MethodPages(PageFrames frames) {
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
    SkillPrior prior = SkillPrior.DEFAULT;
    return List.of(
        logits("How far players of one level differ in all skills together", prior.levelSd()),
        logits("How far a group of skills departs from its player", prior.groupSd()),
        logits("How far a single skill departs from its group", prior.skillSd()),
        logits("How far a skill wanders in one week", prior.weeklySd()),
        logits("What half a step of level is worth", prior.levelStep()),
        new ModelValue(
            "Rallies from which more is said than \"too early to tell\"",
            String.format(Locale.ROOT, "%.0f rallies", RallyCounts.ENOUGH),
            ASSUMED),
        new ModelValue(
            "Minutes after which one drill has brought most of what it can",
            String.format(Locale.ROOT, "%.0f min", PracticeMinutes.SATURATION_MINUTES),
            ASSUMED),
        new ModelValue(
            "After how many weeks half of a practice has faded",
            String.format(Locale.ROOT, "%.0f weeks", PracticeMinutes.HALF_LIFE_WEEKS),
            ASSUMED));
  }

  /** A step in log odds, told as what it makes of an even rally. */
  private static ModelValue logits(String words, double logits) {
    double share = 1 / (1 + Math.exp(-logits));
    return new ModelValue(
        words,
        String.format(Locale.ROOT, "%.0f rallies in 100 in place of 50", 100 * share),
        ASSUMED);
  }
}
