package rallywright.web.signin;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import org.springframework.http.HttpStatus;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.authority.SimpleGrantedAuthority;
import org.springframework.security.core.context.SecurityContext;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.web.context.HttpSessionSecurityContextRepository;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import rallywright.web.page.PageFrames;

/** Exchanges a key for a session. The key stands in the fragment, which no server log sees. */
@Controller
final class SignInPages {

  private final StartKey startKey;
  private final HttpSessionSecurityContextRepository sessions =
      new HttpSessionSecurityContextRepository();

  SignInPages(StartKey startKey) {
    this.startKey = startKey;
  }

  @GetMapping("/sign-in")
  String form(HttpServletRequest request, Model model) {
    return show("", request, model);
  }

  @PostMapping("/sign-in")
  String signIn(
      @RequestParam String key,
      HttpServletRequest request,
      HttpServletResponse response,
      Model model) {
    if (!startKey.take(key.strip())) {
      response.setStatus(HttpStatus.FORBIDDEN.value());
      return show(
          "This key was used before or is not the one printed at the start. Maybe start"
              + " Rallywright again: it prints a fresh one.",
          request,
          model);
    }
    SecurityContext context = SecurityContextHolder.createEmptyContext();
    context.setAuthentication(
        UsernamePasswordAuthenticationToken.authenticated(
            "coach", null, List.of(new SimpleGrantedAuthority("ROLE_COACH"))));
    request.changeSessionId();
    sessions.saveContext(context, request, response);
    return "redirect:/";
  }

  private static String show(String problem, HttpServletRequest request, Model model) {
    model.addAttribute("problem", problem);
    model.addAttribute("csrf", PageFrames.csrf(request));
    return "signin/sign-in";
  }
}
