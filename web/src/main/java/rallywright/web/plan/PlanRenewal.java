package rallywright.web.plan;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import rallywright.engine.club.Player;
import rallywright.store.ClubStore;
import rallywright.web.oncourt.OpenSession;
import rallywright.web.page.Confirmation;
import rallywright.web.page.Form;
import rallywright.web.page.FormReader;

/** A session's plan made anew, or kept as a template for others. */
@Controller
final class PlanRenewal {

  private static final int UNPROCESSABLE = 422;

  private final ClubStore store;
  private final WishPlanner planner;
  private final PlanRuns runs;
  private final PlanView view;

  PlanRenewal(ClubStore store, WishPlanner planner, PlanRuns runs, PlanView view) {
    this.store = store;
    this.planner = planner;
    this.runs = runs;
    this.view = view;
  }

  @PostMapping("/sessions/{id}/plan/anew")
  String anew(
      @PathVariable String id,
      HttpServletRequest request,
      HttpServletResponse response,
      Model model) {
    OpenSession open = view.open(id);
    if (!PlanDesk.touched(open.progress()).isEmpty()) {
      response.setStatus(UNPROCESSABLE);
      return view.show(
          open,
          "Some of this session was played already; a new plan would lose its place. Maybe change"
              + " the blocks that are still to come by hand.",
          request,
          model);
    }
    PlanRun run =
        runs.start(
            new PlanRun.Origin(
                "/sessions/" + id + "/plan",
                Form.empty(),
                "Planned anew from what is known today."),
            search -> planner.anew(open, search));
    List<String> refused = runs.soonRefused(run);
    if (!refused.isEmpty()) {
      response.setStatus(UNPROCESSABLE);
      return view.show(open, String.join(" ", refused), request, model);
    }
    return "redirect:/planning/" + run.id();
  }

  @PostMapping("/sessions/{id}/plan/template")
  String keep(
      @PathVariable String id,
      HttpServletRequest request,
      HttpServletResponse response,
      RedirectAttributes redirect,
      Model model) {
    OpenSession open = view.open(id);
    FormReader in = FormReader.of(request);
    String name = in.text("template", "The template's name", Player.LONGEST_NAME);
    if (!in.failed() && store.sessions().templates().containsKey(name)) {
      in.problem(
          "template",
          "There is already a template named \"%s\". Maybe add a number."
              .formatted(FormReader.echo(name)));
    }
    if (in.failed()) {
      response.setStatus(UNPROCESSABLE);
      return view.show(open, in.form().problem("template"), request, model);
    }
    store.sessions().saveTemplate(name, open.plan());
    Confirmation.say(redirect, "Kept as \"" + name + "\"; it is offered with the next session.");
    return "redirect:/sessions/" + id + "/plan";
  }

  @PostMapping("/sessions/{id}/plan/template/remove")
  String forget(@PathVariable String id, HttpServletRequest request, RedirectAttributes redirect) {
    OpenSession open = view.open(id);
    String name = FormReader.of(request).raw("template");
    store.sessions().removeTemplate(name);
    Confirmation.say(redirect, "The template \"" + FormReader.echo(name) + "\" is not kept now.");
    return "redirect:/sessions/" + open.session().id() + "/plan";
  }
}
