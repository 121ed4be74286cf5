package rallywright.web.page;

import jakarta.servlet.http.HttpServletRequest;
import java.util.Map;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import org.springframework.web.servlet.support.RequestContextUtils;

/** The sentence that the next page opens with: what was just done. */
public final class Confirmation {

  private static final String NAME = "done";

  private Confirmation() {}

  /** Lets the page that follows say what was done, for example "Ada was added." */
  public static void say(RedirectAttributes redirect, String sentence) {
    redirect.addFlashAttribute(NAME, sentence);
  }

  /** The sentence that was left for this page, or an empty text. */
  static String in(HttpServletRequest request) {
    Map<String, ?> left = RequestContextUtils.getInputFlashMap(request);
    return left != null && left.get(NAME) instanceof String sentence ? sentence : "";
  }
}
