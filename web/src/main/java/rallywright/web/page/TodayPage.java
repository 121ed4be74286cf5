package rallywright.web.page;

import jakarta.servlet.http.HttpServletRequest;
import java.util.Comparator;
import java.util.List;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import rallywright.engine.club.Standing;
import rallywright.engine.session.Session;
import rallywright.store.ClubStore;

/** The start page: what is on now, and what to do next as the club fills. */
@Controller
final class TodayPage {

  private static final int FEWEST_FOR_A_SESSION = 2;

  private final ClubStore store;
  private final PageFrames frames;

  TodayPage(ClubStore store, PageFrames frames) {
    this.store = store;
    this.frames = frames;
  }

  @GetMapping("/")
  String today(HttpServletRequest request, Model model) {
    List<Session> sessions = store.sessions().all();
    int players =
        (int)
            store.players().all().stream()
                .filter(
                    each ->
                        each.standing() == Standing.ACTIVE || each.standing() == Standing.WALK_IN)
                .count();
    model.addAttribute("frame", frames.frame("Today", PageFrame.Part.TODAY, request));
    model.addAttribute("players", players);
    model.addAttribute("enough", players >= FEWEST_FOR_A_SESSION);
    model.addAttribute("running", inState(sessions, Session.State.RUNNING));
    model.addAttribute("planned", inState(sessions, Session.State.PLANNED));
    model.addAttribute("played", inState(sessions, Session.State.DONE).size());
    return "page/today";
  }

  private static List<Session> inState(List<Session> sessions, Session.State state) {
    return sessions.stream()
        .filter(session -> session.state() == state)
        .sorted(Comparator.comparing(Session::date).thenComparing(Session::start))
        .toList();
  }
}
