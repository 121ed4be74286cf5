package rallywright.web.board;

import jakarta.servlet.http.HttpServletRequest;
import java.time.Clock;
import java.util.function.Function;
import org.springframework.http.MediaType;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.method.annotation.SseEmitter;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import rallywright.engine.session.CourtEvent;
import rallywright.engine.session.SessionId;
import rallywright.web.notes.NoteLines;
import rallywright.web.oncourt.Arrivals;
import rallywright.web.oncourt.CoachAct;
import rallywright.web.oncourt.OpenSession;
import rallywright.web.oncourt.SessionDesk;
import rallywright.web.page.AllowedNumber;
import rallywright.web.page.Confirmation;
import rallywright.web.page.FormReader;
import rallywright.web.page.NotHere;
import rallywright.web.page.PageFrame;
import rallywright.web.page.PageFrames;
import rallywright.web.plan.SwapOnCourt;

/** The live board: seen by the coach and on a wall; from it the coach leads the session. */
@Controller
final class BoardPages {

  private static final AllowedNumber MINUTES =
      new AllowedNumber(
          "The minutes that are left", 0, CourtEvent.BlockLimited.LONGEST_MINUTES, "Maybe 5.");

  private final SessionDesk desk;
  private final Arrivals arrivals;
  private final SwapOnCourt swaps;
  private final PageFrames frames;
  private final BoardStream stream;
  private final Clock clock = Clock.systemUTC();

  BoardPages(
      SessionDesk desk,
      Arrivals arrivals,
      SwapOnCourt swaps,
      PageFrames frames,
      BoardStream stream) {
    this.desk = desk;
    this.arrivals = arrivals;
    this.swaps = swaps;
    this.frames = frames;
    this.stream = stream;
  }

  private OpenSession found(String id) {
    return desk.find(session(id)).orElseThrow(BoardPages::notHere);
  }

  private static SessionId session(String id) {
    if (id.isBlank() || id.length() > SessionId.LONGEST) {
      throw notHere();
    }
    return new SessionId(id);
  }

  private static NotHere notHere() {
    return new NotHere("There is no such session. Maybe it was removed; look under Sessions.");
  }

  /** The second address is for the script: a page that is fetched must not use up the sentence. */
  @GetMapping({"/sessions/{id}/board", "/sessions/{id}/board/now"})
  String board(@PathVariable String id, HttpServletRequest request, Model model) {
    return show("board/board", id, request, model);
  }

  @GetMapping("/sessions/{id}/wall")
  String wall(@PathVariable String id, HttpServletRequest request, Model model) {
    return show("board/wall", id, request, model);
  }

  private String show(String template, String id, HttpServletRequest request, Model model) {
    OpenSession open = found(id);
    model.addAttribute(
        "frame", frames.frame(open.session().name() + ": board", PageFrame.Part.SESSIONS, request));
    model.addAttribute("session", open.session());
    model.addAttribute("view", BoardView.of(open, clock.instant()));
    model.addAttribute("people", BoardView.people(open));
    model.addAttribute("known", desk.namesBeside(open));
    model.addAttribute("notes", NoteLines.of(open));
    return template;
  }

  @GetMapping(path = "/sessions/{id}/changes", produces = MediaType.TEXT_EVENT_STREAM_VALUE)
  SseEmitter changes(@PathVariable String id) {
    return stream.join(found(id).session().id());
  }

  /** Begins the block that the coach saw as the next one; phones follow. */
  @PostMapping("/sessions/{id}/board/next")
  String next(@PathVariable String id, HttpServletRequest request, RedirectAttributes redirect) {
    return act(id, redirect, acts -> acts.next(FormReader.of(request).raw("block")));
  }

  /** The block that is on ends sooner: in some minutes, or with the games that are on. */
  @PostMapping("/sessions/{id}/board/shorten")
  String shorten(@PathVariable String id, HttpServletRequest request, RedirectAttributes redirect) {
    FormReader in = FormReader.of(request);
    String block = in.raw("block");
    if (in.ticked("last")) {
      return act(id, redirect, acts -> acts.lastGames(block));
    }
    int minutes = in.neededWhole("minutes", MINUTES);
    return in.failed()
        ? said(found(id).session().id(), redirect, in.form().problem("minutes"))
        : act(id, redirect, acts -> acts.minutesLeft(block, minutes));
  }

  /** The block that is on ends as planned again. */
  @PostMapping("/sessions/{id}/board/as-planned")
  String asPlanned(
      @PathVariable String id, HttpServletRequest request, RedirectAttributes redirect) {
    return act(id, redirect, acts -> acts.asPlanned(FormReader.of(request).raw("block")));
  }

  /** Two people change places from the next game on. */
  @PostMapping("/sessions/{id}/board/swap")
  String swap(@PathVariable String id, HttpServletRequest request, RedirectAttributes redirect) {
    FormReader in = FormReader.of(request);
    SwapOnCourt.Present present =
        in.ticked("now") ? SwapOnCourt.Present.CHANGE : SwapOnCourt.Present.FINISH;
    SwapOnCourt.Wish wish = new SwapOnCourt.Wish(in.raw("one"), in.raw("other"), present);
    SessionId here = found(id).session().id();
    return said(here, redirect, swaps.fromNowOn(here, wish));
  }

  /** Somebody turned up: a name is enough. */
  @PostMapping("/sessions/{id}/board/arrival")
  String arrive(@PathVariable String id, HttpServletRequest request, RedirectAttributes redirect) {
    String name = FormReader.of(request).raw("arrival").strip();
    SessionId here = found(id).session().id();
    String said =
        arrivals
            .add(here, desk.freshPlayerId(), name, Arrivals.Asker.COACH)
            .orElse(name + " is there and waits until somebody changes places.");
    return said(here, redirect, said);
  }

  /** Ends the session for everybody. */
  @PostMapping("/sessions/{id}/board/end")
  String end(@PathVariable String id, RedirectAttributes redirect) {
    return act(id, redirect, BoardActs::end);
  }

  /** Takes the end back. */
  @PostMapping("/sessions/{id}/board/go-on")
  String goOn(@PathVariable String id, RedirectAttributes redirect) {
    return act(id, redirect, BoardActs::goOn);
  }

  private String act(String id, RedirectAttributes redirect, Function<BoardActs, CoachAct> act) {
    String said =
        desk.act(
                session(id),
                open -> act.apply(new BoardActs(open, clock.millis(), desk::freshEventId)))
            .orElseThrow(BoardPages::notHere);
    return said(session(id), redirect, said);
  }

  private static String said(SessionId here, RedirectAttributes redirect, String sentence) {
    Confirmation.say(redirect, sentence);
    redirect.addAttribute("session", here.value());
    return "redirect:/sessions/{session}/board";
  }
}
