package rallywright.web.plan;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.Optional;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import rallywright.web.page.Confirmation;
import rallywright.web.page.NotHere;
import rallywright.web.page.PageFrame;
import rallywright.web.page.PageFrames;

/** A plan while it is searched for: how far, the best so far, take that one or stop. */
@Controller
final class PlanRunPages {

  /**
   * A page that shows the progress is answered after this time, or as soon as the plan is there.
   */
  private static final long STEP_MILLIS = 400;

  private final PlanRuns runs;
  private final PageFrames frames;

  PlanRunPages(PlanRuns runs, PageFrames frames) {
    this.runs = runs;
    this.frames = frames;
  }

  @GetMapping("/planning/{run}")
  String page(
      @PathVariable String run,
      HttpServletRequest request,
      HttpServletResponse response,
      RedirectAttributes redirect,
      Model model) {
    PlanRun search = find(run);
    boolean part = "true".equals(request.getHeader("HX-Request"));
    Optional<WishPlanner.Outcome> outcome = search.outcome(part ? STEP_MILLIS : 0);
    if (outcome.isPresent() && !part) {
      return ended(search, outcome.get(), redirect);
    }
    if (outcome.isPresent()) {
      response.setHeader("HX-Refresh", "true");
    }
    model.addAttribute("frame", frames.frame("Making the plan", PageFrame.Part.SESSIONS, request));
    model.addAttribute("run", PlanRunView.of(search));
    return part ? "plan/progress" : "plan/planning";
  }

  private static String ended(
      PlanRun search, WishPlanner.Outcome outcome, RedirectAttributes redirect) {
    if (!outcome.refused().isEmpty()) {
      return "redirect:" + search.origin().page() + "?again=" + search.id();
    }
    Confirmation.say(redirect, search.origin().done());
    return "redirect:/sessions/" + outcome.session() + "/plan";
  }

  @PostMapping("/planning/{run}/enough")
  String enough(@PathVariable String run) {
    find(run).takeBest();
    return "redirect:/planning/" + run;
  }

  @PostMapping("/planning/{run}/stop")
  String stop(@PathVariable String run) {
    find(run).stop();
    return "redirect:/planning/" + run;
  }

  private PlanRun find(String run) {
    return runs.find(run)
        .orElseThrow(
            () ->
                new NotHere(
                    "This search for a plan is not remembered any more. Maybe look under Sessions"
                        + " for the plan that it made."));
  }
}
