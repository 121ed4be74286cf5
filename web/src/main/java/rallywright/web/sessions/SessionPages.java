package rallywright.web.sessions;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.net.URI;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import rallywright.engine.session.Session;
import rallywright.engine.session.SessionId;
import rallywright.paper.press.QrPicture;
import rallywright.web.notes.NoteLines;
import rallywright.web.oncourt.Arrivals;
import rallywright.web.oncourt.CourtAccess;
import rallywright.web.oncourt.OpenSession;
import rallywright.web.oncourt.SessionDesk;
import rallywright.web.page.Confirmation;
import rallywright.web.page.DayWords;
import rallywright.web.page.Form;
import rallywright.web.page.FormReader;
import rallywright.web.page.NotHere;
import rallywright.web.page.PageFrame;
import rallywright.web.page.PageFrames;
import rallywright.web.weather.WeatherWords;

/** The list of sessions, and one session: print, run, type in, look back. */
@Controller
final class SessionPages {

  private final SessionDesk desk;
  private final CourtAccess access;
  private final PhoneAddress address;
  private final PageFrames frames;
  private final Arrivals arrivals;

  SessionPages(
      SessionDesk desk,
      Arrivals arrivals,
      CourtAccess access,
      PhoneAddress address,
      PageFrames frames) {
    this.desk = desk;
    this.arrivals = arrivals;
    this.access = access;
    this.address = address;
    this.frames = frames;
  }

  @GetMapping("/sessions")
  String list(HttpServletRequest request, Model model) {
    String group = request.getParameter("group") == null ? "" : request.getParameter("group");
    List<SessionLine> lines =
        desk.all().stream()
            .filter(session -> group.isEmpty() || isFor(session, group))
            .map(
                session ->
                    new SessionLine(
                        session.id().value(), session.name(), when(session), state(session)))
            .toList();
    model.addAttribute("frame", frames.frame("Sessions", PageFrame.Part.SESSIONS, request));
    model.addAttribute("lines", lines);
    model.addAttribute("groups", desk.groups());
    model.addAttribute("group", group);
    return "sessions/list";
  }

  private static boolean isFor(Session session, String group) {
    return session.group() != null && session.group().value().equals(group);
  }

  @GetMapping("/sessions/{id}")
  String one(@PathVariable String id, HttpServletRequest request, Model model) {
    return show(open(id), null, Form.empty(), request, model);
  }

  /** Makes a code for phones; it is shown once, since only its hash is kept. */
  @PostMapping("/sessions/{id}/phones")
  String phones(@PathVariable String id, HttpServletRequest request, Model model) {
    OpenSession open = open(id);
    PhoneCode code = null;
    if (address.reason().isEmpty()) {
      String key = access.issue(open.session());
      URI whole = URI.create(address.base() + "/court#key=" + key);
      code = new PhoneCode(QrPicture.of(whole), address.base() + "/court", key);
    }
    return show(open, code, Form.empty(), request, model);
  }

  @PostMapping("/sessions/{id}/phones/take-back")
  String takeBack(@PathVariable String id, RedirectAttributes redirect) {
    OpenSession open = open(id);
    access.takeBackAll(open.session().id());
    Confirmation.say(
        redirect, "All codes of this session were taken back; no phone is let in with them.");
    return "redirect:/sessions/" + open.session().id();
  }

  /** Somebody turned up: a name is enough. */
  @PostMapping("/sessions/{id}/arrivals")
  String arrive(
      @PathVariable String id,
      HttpServletRequest request,
      HttpServletResponse response,
      RedirectAttributes redirect,
      Model model) {
    OpenSession open = open(id);
    FormReader in = FormReader.of(request);
    String name = in.raw("arrival").strip();
    arrivals
        .add(open.session().id(), desk.freshPlayerId(), name, Arrivals.Asker.COACH)
        .ifPresent(refusal -> in.problem("arrival", refusal));
    if (in.failed()) {
      response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
      return show(open, null, in.form(), request, model);
    }
    Confirmation.say(
        redirect, name + " is there and sits out until games are added or somebody swaps.");
    return "redirect:/sessions/" + open.session().id() + "#people";
  }

  @PostMapping("/sessions/{id}/remove")
  String remove(@PathVariable String id, RedirectAttributes redirect) {
    OpenSession open = open(id);
    Optional<String> refusal = desk.removePlanned(open.session().id());
    Confirmation.say(redirect, refusal.orElse(open.session().name() + " was removed."));
    return "redirect:/sessions" + (refusal.isPresent() ? "/" + open.session().id() : "");
  }

  private OpenSession open(String id) {
    if (id.isBlank() || id.length() > SessionId.LONGEST) {
      throw notHere();
    }
    return desk.find(new SessionId(id)).orElseThrow(SessionPages::notHere);
  }

  static NotHere notHere() {
    return new NotHere("There is no such session. Maybe it was removed; look under Sessions.");
  }

  private String show(
      OpenSession open,
      @Nullable PhoneCode code,
      Form arrival,
      HttpServletRequest request,
      Model model) {
    Session session = open.session();
    PageFrame frame = frames.frame(session.name(), PageFrame.Part.SESSIONS, request);
    model.addAttribute("frame", frame);
    model.addAttribute("session", session);
    model.addAttribute("when", when(session));
    model.addAttribute("state", state(session));
    model.addAttribute("blocks", BlockWords.of(open));
    model.addAttribute("who", open.names().listed(session.plan().present()));
    model.addAttribute("weather", open.isIndoors() ? List.of() : weather(open, frame));
    model.addAttribute("arrival", arrival);
    model.addAttribute("known", desk.namesBeside(session));
    model.addAttribute("notes", NoteLines.of(open));
    model.addAttribute("code", code);
    model.addAttribute("noCode", address.reason());
    return "sessions/one";
  }

  /** What was noted on court, else what is expected. */
  private List<WeatherWords> weather(OpenSession open, PageFrame frame) {
    WeatherWords words =
        open.progress()
            .conditions()
            .map(noted -> WeatherWords.of(noted, frame.units()))
            .orElseGet(
                () -> WeatherWords.of(desk.weather().of(open.session().id()), frame.units()));
    return words.isEmpty() ? List.of() : List.of(words);
  }

  private static String when(Session session) {
    return DayWords.of(session);
  }

  private static String state(Session session) {
    return session.state().name().toLowerCase(Locale.ROOT);
  }
}
