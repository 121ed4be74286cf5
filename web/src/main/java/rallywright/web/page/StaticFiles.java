package rallywright.web.page;

import org.springframework.context.annotation.Configuration;
import org.springframework.http.CacheControl;
import org.springframework.web.servlet.config.annotation.ResourceHandlerRegistry;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;

/** Serves the library for partial updates at an address without its version. */
@Configuration
class StaticFiles implements WebMvcConfigurer {

  private static final String HTMX = "classpath:/META-INF/resources/webjars/htmx.org/2.0.10/dist/";

  @Override
  public void addResourceHandlers(ResourceHandlerRegistry files) {
    files
        .addResourceHandler("/js/library/**")
        .addResourceLocations(HTMX)
        .setCacheControl(CacheControl.noCache());
  }
}
