package rallywright.web.plan;

import jakarta.servlet.http.HttpServletRequest;
import java.util.Set;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import rallywright.engine.plan.BlockId;
import rallywright.engine.plan.PlanRepair;
import rallywright.engine.plan.PlannedBlock;
import rallywright.engine.plan.SessionPlan;
import rallywright.web.oncourt.OpenSession;
import rallywright.web.page.AllowedNumber;
import rallywright.web.page.Confirmation;
import rallywright.web.page.FormReader;

/** Mends a plan that breaks rules, and shortens one when less time is left. */
@Controller
final class PlanMending {

  private static final AllowedNumber MINUTES =
      new AllowedNumber(
          "The minutes that are left",
          SessionPlan.SHORTEST_MINUTES,
          SessionPlan.LONGEST_MINUTES,
          "Maybe 60.");

  private static final String MEANWHILE =
      "Somebody else changed this session meanwhile. Maybe look at it and try again.";

  private final PlanKeeper keeper;
  private final PlanView view;
  private final PlanDesk desk;

  PlanMending(PlanKeeper keeper, PlanView view, PlanDesk desk) {
    this.keeper = keeper;
    this.view = view;
    this.desk = desk;
  }

  @PostMapping("/sessions/{id}/plan/mend")
  String mend(@PathVariable String id, RedirectAttributes redirect) {
    OpenSession open = view.open(id);
    if (!PlanDesk.touched(open.progress()).isEmpty()) {
      Confirmation.say(
          redirect, "Some of this session was played already. Maybe change what is still to come.");
      return "redirect:/sessions/" + id + "/plan";
    }
    PlanRepair.Repaired mended = PlanRepair.of(desk.problem(open.session())).repair(open.plan());
    String done =
        mended.changes().isEmpty()
            ? "Nothing was changed: no single change makes this plan better."
            : "Changed: " + String.join(" ", mended.changes());
    Confirmation.say(redirect, kept(open, mended, done));
    return "redirect:/sessions/" + id + "/plan";
  }

  @PostMapping("/sessions/{id}/plan/shorten")
  String shorten(@PathVariable String id, HttpServletRequest request, RedirectAttributes redirect) {
    OpenSession open = view.open(id);
    FormReader in = FormReader.of(request);
    int minutes = in.neededWhole("left", MINUTES);
    if (in.failed()) {
      Confirmation.say(redirect, in.form().problem("left"));
      return "redirect:/sessions/" + id + "/plan";
    }
    PlanRepair.Repaired shorter =
        PlanRepair.of(desk.problem(open.session())).shorten(open.plan(), minutes, begun(open));
    String done =
        shorter.changes().isEmpty()
            ? "It fits %d minutes as it is.".formatted(minutes)
            : String.join(" ", shorter.changes());
    Confirmation.say(redirect, kept(open, shorter, done));
    return "redirect:/sessions/" + id + "/plan";
  }

  private String kept(OpenSession open, PlanRepair.Repaired changed, String done) {
    return keeper.keep(open, changed.plan()) == PlanKeeper.Kept.YES ? done : MEANWHILE;
  }

  /** How many blocks from the start stay: up to the last one that was begun. */
  private static int begun(OpenSession open) {
    Set<BlockId> touched = PlanDesk.touched(open.progress());
    int begun = 0;
    for (int place = 0; place < open.plan().blocks().size(); place++) {
      PlannedBlock block = open.plan().blocks().get(place);
      begun = touched.contains(block.id()) ? place + 1 : begun;
    }
    return begun;
  }
}
