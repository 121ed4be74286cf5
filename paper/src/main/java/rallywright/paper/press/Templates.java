package rallywright.paper.press;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;

/** The templates of all printed pages, compiled by the build. */
public final class Templates {

  private static final TemplateEngine ENGINE =
      TemplateEngine.createPrecompiled(null, ContentType.Html, null, "rallywright.paper.templates");

  private Templates() {}

  /**
   * A template filled in.
   *
   * @param name the template's name with its folder, without its ending
   * @param parameters what it is filled with
   * @return well-formed markup
   */
  public static String fill(String name, Map<String, Object> parameters) {
    StringOutput text = new StringOutput();
    ENGINE.render(name + ".jte", parameters, text);
    return text.toString();
  }

  /**
   * A stylesheet of this module.
   *
   * @param name the file's name without its ending
   * @return its text
   */
  public static String stylesheet(String name) {
    String path = "/rallywright/paper/" + name + ".css";
    try (InputStream file = Templates.class.getResourceAsStream(path)) {
      if (file == null) {
        throw new IllegalStateException("The stylesheet " + path + " is missing in the program.");
      }
      return new String(file.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException problem) {
      throw new UncheckedIOException("The stylesheet " + path + " could not be read.", problem);
    }
  }
}
