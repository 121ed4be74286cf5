package rallywright.web.page;

import jakarta.servlet.RequestDispatcher;
import jakarta.servlet.http.HttpServletRequest;
import java.util.Map;
import org.springframework.boot.webmvc.error.ErrorController;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.RequestMapping;
import rallywright.store.StoreProblem;

/** What a person sees when a request fails: our words, never the inside of the program. */
@Controller
final class ErrorPages implements ErrorController {

  private static final int SERVER_ERROR = 500;

  @RequestMapping("/error")
  String page(HttpServletRequest request, Model model) {
    ErrorWords words = words(request);
    model.addAttribute("title", words.title());
    model.addAttribute("sentence", words.sentence());
    return "page/error";
  }

  @RequestMapping(path = "/error", produces = MediaType.APPLICATION_JSON_VALUE)
  ResponseEntity<Map<String, Object>> json(HttpServletRequest request) {
    int status = status(request);
    return ResponseEntity.status(status)
        .body(Map.of("status", status, "problem", words(request).sentence()));
  }

  private static ErrorWords words(HttpServletRequest request) {
    Object cause =
        request.getAttribute("org.springframework.web.servlet.DispatcherServlet.EXCEPTION");
    String said =
        cause instanceof NotHere gone && gone.getMessage() != null ? gone.getMessage() : "";
    return ErrorWords.of(status(request), said.isEmpty() ? troubleOfTheStore(request) : said);
  }

  /** A full disk is the coach's to mend: the store says what it is. */
  private static String troubleOfTheStore(HttpServletRequest request) {
    Object thrown = request.getAttribute(RequestDispatcher.ERROR_EXCEPTION);
    Throwable at = thrown instanceof Throwable problem ? problem : null;
    while (at != null && !(at instanceof StoreProblem)) {
      at = at.getCause();
    }
    return at == null ? "" : String.valueOf(at.getMessage());
  }

  private static int status(HttpServletRequest request) {
    return request.getAttribute(RequestDispatcher.ERROR_STATUS_CODE) instanceof Integer code
        ? code
        : SERVER_ERROR;
  }
}
