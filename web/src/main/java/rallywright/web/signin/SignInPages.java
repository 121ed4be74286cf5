package rallywright.web.signin;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.time.Duration;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import rallywright.web.page.Form;
import rallywright.web.page.FormReader;
import rallywright.web.page.PageFrames;

/**
 * Exchanges the printed key or the password for a session. The key stands in the fragment of the
 * address, which no server log sees.
 */
@Controller
final class SignInPages {

  private final StartKey startKey;
  private final CoachPassword password;
  private final Attempts attempts;
  private final SignedIn signedIn;

  SignInPages(StartKey startKey, CoachPassword password, Attempts attempts, SignedIn signedIn) {
    this.startKey = startKey;
    this.password = password;
    this.attempts = attempts;
    this.signedIn = signedIn;
  }

  @GetMapping("/sign-in")
  String form(HttpServletRequest request, Model model) {
    return show(Form.empty(), request, model);
  }

  @PostMapping("/sign-in")
  String signIn(HttpServletRequest request, HttpServletResponse response, Model model) {
    FormReader in = FormReader.of(request);
    String field = in.all("password").isEmpty() ? "key" : "password";
    if (in.raw(field).isBlank()) {
      in.problem(
          field,
          field.equals("key")
              ? "The key is empty. It stands in the address that was printed, after key=."
              : "The password is empty. Type it as it was set.");
      return refuse(HttpStatus.UNPROCESSABLE_CONTENT, in, response, request, model);
    }
    Duration wait = attempts.ask(request.getRemoteAddr());
    if (!wait.isZero()) {
      long seconds = wait.toSeconds() + 1;
      response.setHeader(HttpHeaders.RETRY_AFTER, String.valueOf(seconds));
      in.problem(
          field, "There were too many attempts. Wait " + words(seconds) + ", then try again.");
      return refuse(HttpStatus.TOO_MANY_REQUESTS, in, response, request, model);
    }
    if (!isRight(field, in)) {
      in.problem(field, wrong(field));
      return refuse(HttpStatus.FORBIDDEN, in, response, request, model);
    }
    attempts.succeeded(request.getRemoteAddr());
    signedIn.enter(new Visitor.Coach(), request, response);
    return "redirect:/";
  }

  private boolean isRight(String field, FormReader in) {
    return field.equals("key")
        ? startKey.take(in.raw("key").strip())
        : password.matches(in.raw("password"));
  }

  private static String wrong(String field) {
    return field.equals("key")
        ? "This key was used before or is not the one printed at the start. Maybe start Rallywright"
            + " again: it prints a fresh one."
        : "This is not the password. Maybe a capital letter, or set a new one where Rallywright"
            + " runs, with --set-password.";
  }

  private static String words(long seconds) {
    return seconds < 120 ? seconds + " seconds" : (seconds + 59) / 60 + " minutes";
  }

  private String refuse(
      HttpStatus status,
      FormReader in,
      HttpServletResponse response,
      HttpServletRequest request,
      Model model) {
    response.setStatus(status.value());
    return show(in.form(), request, model);
  }

  private String show(Form form, HttpServletRequest request, Model model) {
    model.addAttribute("form", form);
    model.addAttribute("passwordSet", password.isSet());
    model.addAttribute("left", request.getParameter("left") != null);
    model.addAttribute("csrf", PageFrames.csrf(request));
    return "signin/sign-in";
  }
}
