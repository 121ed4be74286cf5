package rallywright.web.page;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.core.Ordered;
import org.springframework.web.servlet.View;
import org.springframework.web.servlet.ViewResolver;

/** Shows a page by the name of its template; the templates were compiled by the build. */
public final class PrecompiledPages implements ViewResolver, Ordered {

  private final TemplateEngine templates =
      TemplateEngine.createPrecompiled(null, ContentType.Html, null, "rallywright.web.templates");

  @Override
  public @Nullable View resolveViewName(String name, Locale locale) {
    String template = name + ".jte";
    return templates.hasTemplate(template) ? new Page(templates, template) : null;
  }

  @Override
  public int getOrder() {
    return Ordered.HIGHEST_PRECEDENCE;
  }

  private record Page(TemplateEngine templates, String template) implements View {

    @Override
    public void render(
        @Nullable Map<String, ?> model, HttpServletRequest request, HttpServletResponse response)
        throws Exception {
      StringOutput html = new StringOutput();
      Map<String, Object> parameters = model == null ? new HashMap<>() : new HashMap<>(model);
      parameters.keySet().removeIf(key -> key.startsWith("org.springframework"));
      templates.render(template, parameters, html);
      response.setContentType("text/html;charset=UTF-8");
      response.getWriter().write(html.toString());
    }
  }
}
