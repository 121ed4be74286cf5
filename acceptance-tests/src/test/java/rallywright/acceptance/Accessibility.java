package rallywright.acceptance;

import com.deque.html.axecore.args.AxeRunOptions;
import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Page;
import java.util.List;

/** What shuts somebody out of a page as it stands, by axe's rules. */
final class Accessibility {

  private Accessibility() {}

  /**
   * The faults of a page.
   *
   * @param page as it is drawn now
   * @return each rule that is broken and where; what is right is only counted, as listing it takes
   *     most of the time
   */
  static List<String> faults(Page page) {
    AxeRunOptions options = new AxeRunOptions();
    options.setResultTypes(List.of("violations"));
    return new AxeBuilder(page)
        .options(options).setLegacyMode(true).analyze().getViolations().stream()
            .map(each -> each.getId() + " " + each.getNodes())
            .toList();
  }
}
