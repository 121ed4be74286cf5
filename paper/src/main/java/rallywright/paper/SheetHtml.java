package rallywright.paper;

import java.util.Map;
import rallywright.paper.press.Templates;

/** The court sheet as a page for a browser: the same blocks in one column, to be looked over. */
public final class SheetHtml {

  private SheetHtml() {}

  /**
   * The sheet as a whole HTML page without inline styles and scripts.
   *
   * @param request the session and what belongs to it
   * @param stylesheet the address at which {@link #stylesheet()} is served
   * @return the page
   */
  public static String page(SheetRequest request, String stylesheet) {
    return Templates.fill(
        "sheet/preview", Map.of("view", SheetWriter.write(request), "stylesheet", stylesheet));
  }

  /**
   * The stylesheet that the page asks for.
   *
   * @return CSS
   */
  public static String stylesheet() {
    return Templates.stylesheet("sheet");
  }
}
