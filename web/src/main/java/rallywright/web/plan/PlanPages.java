package rallywright.web.plan;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import rallywright.engine.plan.PlanEdit;
import rallywright.web.oncourt.OpenSession;
import rallywright.web.page.FormReader;
import rallywright.web.page.NotHere;

/** A session's plan: see it, change it by hand. */
@Controller
final class PlanPages {

  private static final int UNPROCESSABLE = 422;

  private final PlanDesk desk;
  private final PlanKeeper keeper;
  private final PlanRuns runs;
  private final PlanView view;

  PlanPages(PlanDesk desk, PlanKeeper keeper, PlanRuns runs, PlanView view) {
    this.desk = desk;
    this.keeper = keeper;
    this.runs = runs;
    this.view = view;
  }

  @GetMapping("/sessions/{id}/plan")
  String page(@PathVariable String id, HttpServletRequest request, Model model) {
    String problem =
        runs.find(request.getParameter("again"))
            .map(run -> String.join(" ", run.refused()))
            .orElse("");
    return view.show(view.open(id), problem, request, model);
  }

  /** One change by hand; a page that asks for a part gets the board alone. */
  @PostMapping("/sessions/{id}/plan/change")
  String change(
      @PathVariable String id,
      HttpServletRequest request,
      HttpServletResponse response,
      Model model) {
    FormReader in = FormReader.of(request);
    PlanEdit answer = keeper.change(view.open(id).session().id(), open -> changed(open, in));
    boolean part = PlanView.isPart(request);
    if (answer instanceof PlanEdit.Refused refused) {
      response.setStatus(part ? 200 : UNPROCESSABLE);
      return view.show(view.open(id), refused.sentence(), request, model);
    }
    return part
        ? view.show(view.open(id), "", request, model)
        : "redirect:/sessions/" + id + "/plan";
  }

  private PlanEdit changed(OpenSession open, FormReader in) {
    PlanChange change = PlanChange.of(in, open, PlanDesk.touched(open.progress()));
    return desk.edit(open.session(), change::apply);
  }

  static NotHere notHere() {
    return new NotHere("There is no such session. Maybe it was removed; look under Sessions.");
  }
}
