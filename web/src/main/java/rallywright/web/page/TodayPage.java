package rallywright.web.page;

import jakarta.servlet.http.HttpServletRequest;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;

/** The start page: what to do next. */
@Controller
final class TodayPage {

  private final PageFrames frames;

  TodayPage(PageFrames frames) {
    this.frames = frames;
  }

  @GetMapping("/")
  String today(HttpServletRequest request, Model model) {
    model.addAttribute("frame", frames.frame("Today", PageFrame.Part.TODAY, request));
    return "page/today";
  }
}
